/** How far the cards of a class are: what the office chases and the gate waits for. Counts only, never a mark. */

import { z } from 'zod';
import { type Actor, reachesShow } from '../access/index.ts';
import type { SheetKind } from '../engine/sheets/types.ts';
import { isGoing } from '../office/index.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { type EntryRecord, entriesOf } from './card-record.ts';
import * as statements from './card-statements.ts';

const signedProgressSchema = z.strictObject({
  revisionId: z.string(),
  revision: z.int(),
  origin: z.enum(['phone', 'paper']),
  signedAt: z.string().describe("By the judge's phone; from paper: when it was accepted."),
  receivedAt: z.string().describe('By the service.'),
  entriesToAdd: z
    .array(z.string())
    .describe(
      'Class entries that go and that the signed card does not know, added or taken back in since: amend it.',
    ),
});

export const seatProgressSchema = z
  .strictObject({
    seatId: z.string(),
    seatOrder: z.int(),
    role: z.enum(['judge', 'referee']),
    withdrawn: z.boolean().describe('The judge left the panel: her card counts no more.'),
    cardId: z.string().nullable().describe('null: not opened yet.'),
    goesWritten: z.int().describe('In the draft, or on the signed card; rail classes: entries ranked.'),
    goesExpected: z.int(),
    signed: signedProgressSchema.nullable().describe('null: not signed yet.'),
  })
  .meta({ id: 'CardProgress' });
export type SeatProgress = z.output<typeof seatProgressSchema>;
type SignedProgress = z.output<typeof signedProgressSchema>;

interface ProgressRow {
  readonly seatId: string;
  readonly seatOrder: number;
  readonly role: 'judge' | 'referee';
  readonly withdrawn: boolean;
  readonly cardId: string | null;
  readonly sheetKind: SheetKind;
  readonly ranksFirst: number | null;
  readonly goesWritten: number;
  readonly ranking: Ranking | null;
  readonly revisionId: string | null;
  readonly revision: number;
  readonly onPaper: boolean;
  readonly signedAt: Date;
  readonly receivedAt: Date;
  readonly signedGoes: readonly string[] | null;
  readonly signedRanking: Ranking | null;
}
type Ranking = readonly (readonly string[])[];

/** A judge or scribe hears of her own seat only. Throws not_found, other_show. */
export async function classProgress(
  tx: SqlTransaction,
  { classId, actor }: { readonly classId: string; readonly actor: Actor },
): Promise<SeatProgress[]> {
  const found = await tx.sql.row<{ showId: string }>(statements.findClass, [classId]);
  if (found === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  if (!reachesShow(actor, found.showId)) throw problem('other_show');
  const rows = await tx.sql.rows<ProgressRow>(statements.readProgress, [classId]);
  const entries = await entriesOf(tx, { classId });
  const own = 'seatIds' in actor ? rows.filter(({ seatId }) => actor.seatIds.has(seatId)) : rows;
  return own.map((row) =>
    seatProgress(
      row,
      entries.filter(({ status }) => isGoing(status)),
    ),
  );
}

function seatProgress(row: ProgressRow, going: readonly EntryRecord[]): SeatProgress {
  const { seatId, seatOrder, role, withdrawn, cardId } = row;
  const signed = signedProgress(row, going);
  return {
    ...{ seatId, seatOrder, role, withdrawn, cardId, signed },
    goesWritten: goesWritten(row),
    goesExpected: Math.min(row.ranksFirst ?? going.length, going.length),
  };
}

function goesWritten({ sheetKind, revisionId, ...row }: ProgressRow): number {
  const isSigned = revisionId !== null;
  if (sheetKind === 'places') return ((isSigned ? row.signedRanking : row.ranking) ?? []).flat().length;
  return isSigned ? (row.signedGoes?.length ?? 0) : row.goesWritten;
}

function signedProgress(row: ProgressRow, going: readonly EntryRecord[]): SignedProgress | null {
  const { revisionId, revision, signedAt, receivedAt } = row;
  if (revisionId === null) return null;
  return {
    ...{ revisionId, revision },
    origin: row.onPaper ? 'paper' : 'phone',
    signedAt: signedAt.toISOString(),
    receivedAt: receivedAt.toISOString(),
    entriesToAdd: going.filter((entry) => isNewTo(row, entry)).map(({ id }) => id),
  };
}

/** A ranking names the first few only: there an entry is new if it came in after the card did. */
function isNewTo(
  { sheetKind, signedGoes, signedRanking, receivedAt }: ProgressRow,
  entry: EntryRecord,
): boolean {
  if ((signedGoes ?? []).includes(entry.id)) return false;
  if (sheetKind !== 'places') return true;
  return entry.changedAt > receivedAt && !(signedRanking ?? []).flat().includes(entry.id);
}
