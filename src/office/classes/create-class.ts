import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { definitionOf } from '../sheets/sheet-schemas.ts';
import { lockShow } from '../store/locks.ts';
import { classOf, withSheetAndShow } from './class-of.ts';
import type { ClassBody, NewClass } from './class-schemas.ts';
import { mustFit } from './fit.ts';
import { findManeuvers, findSheet, mustBeFreeNumber, mustBeRing } from './references.ts';
import { whenOf } from './when.ts';

/**
 * Adds a class to the program and stores the seed that its lots are drawn from. Throws not_found,
 * class_number_taken, unknown_reference, pattern_needed, rule_invalid, invalid_local_time, day_outside_show.
 */
export async function createClass(
  parts: AppParts,
  tx: Transaction,
  asked: NewClass & { showId: string },
): Promise<ClassBody> {
  const at = parts.clock.now();
  const { sheet: sheetAsked, day: _, scheduledAt: __, ...rest } = asked;
  const { showId, number, patternId, placingRule } = asked;
  const show = await lockShow(tx, showId);
  await mustBeFreeNumber(tx, { showId, number });
  const sheet = await findSheet(tx, sheetAsked);
  const maneuvers = await findManeuvers(tx, { showId, id: patternId });
  await mustBeRing(tx, { showId, id: asked.ringId });
  const drawSeed = parts.ids.seed();
  mustFit({ sheet: definitionOf(sheet), maneuvers, rule: placingRule, drawSeed, seats: undefined });
  const row = await tx.prisma.showClass.create({
    data: {
      ...rest,
      ...whenOf(asked, show),
      id: parts.ids.next(),
      sheetId: sheet.id,
      drawSeed,
      createdAt: at,
    },
    include: withSheetAndShow,
  });
  await appendLine(parts, tx, { showId, type: 'class.created', body: { classId: row.id, number }, at });
  return classOf(row);
}
