import { sheetFaultSentence } from '../../engine/sentences/sheet-fault-sentences.ts';
import { checkSheet } from '../../engine/sheets/check-sheet.ts';
import type { ScoreSheet } from '../../engine/sheets/types.ts';
import { told } from '../../language/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { fingerprint } from '../../platform/canonical-json.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Prisma } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { type ScoreSheetBody, scoreSheetOf } from './sheet-schemas.ts';

interface NewSheet {
  readonly sheet: ScoreSheet;
  readonly origin: 'bundled' | 'added';
}

/**
 * Adds a sheet, or the next version of one. A sheet that is there already with the same content is answered as
 * it stands, so that adding twice does no harm. Throws sheet_invalid, sheet_version_taken.
 */
export async function addScoreSheet(
  parts: Pick<AppParts, 'clock' | 'ids'>,
  tx: Transaction,
  { sheet, origin }: NewSheet,
): Promise<ScoreSheetBody> {
  const { code, version } = sheet;
  mustMakeSense(sheet);
  const hash = fingerprint(sheet);
  const there = await tx.prisma.scoreSheet.findUnique({ where: { code_version: { code, version } } });
  if (there?.hash === hash) return scoreSheetOf(there);
  if (there !== null) await refuseVersion(tx, code);
  const row = await tx.prisma.scoreSheet.create({
    data: {
      ...{ code, version, hash, origin },
      id: parts.ids.next(),
      // A sheet is plain JSON; only its lists are read-only in our types.
      definition: sheet as unknown as Prisma.InputJsonObject,
      createdAt: parts.clock.now(),
    },
  });
  return scoreSheetOf(row);
}

function mustMakeSense(sheet: ScoreSheet): void {
  const errors = checkSheet(sheet).map((fault) => ({
    field: fault.at,
    message: told((speech) => sheetFaultSentence(fault, speech)),
  }));
  if (errors.length > 0) throw problem('sheet_invalid', { errors });
}

async function refuseVersion(tx: Transaction, code: string): Promise<never> {
  const { _max } = await tx.prisma.scoreSheet.aggregate({ where: { code }, _max: { version: true } });
  const message = `the last version of ${code} is ${_max.version ?? 0}`;
  throw problem('sheet_version_taken', { errors: [{ field: '/version', message }] });
}
