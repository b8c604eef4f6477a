import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Show, ShowClass } from '../../platform/generated/prisma/client.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { seatedNow } from '../panel/seats.ts';
import { withoutUndefined } from '../schemas/common.ts';
import { definitionOf } from '../sheets/sheet-schemas.ts';
import { dayText } from '../show-time.ts';
import { cardsOf, lockOpenClass, lockShow } from '../store/locks.ts';
import { classOf, ruleOf, withSheetAndShow } from './class-of.ts';
import type { ClassBody, ClassChange } from './class-schemas.ts';
import { mustFit } from './fit.ts';
import { findManeuvers, findSheet, mustBeFreeNumber, mustBeRing } from './references.ts';
import { whenOf } from './when.ts';

interface Change {
  readonly showId: string;
  readonly classId: string;
  readonly versionRead: number;
  readonly change: ClassChange;
}

/**
 * Changes a class. Sheet and pattern stay once a card was opened, the placing rule and the number of places
 * once one was signed. Throws not_found, class_not_open, stale_version, class_under_way and what `createClass` throws.
 */
export async function changeClass(
  parts: AppParts,
  tx: Transaction,
  { showId, classId, versionRead, change }: Change,
): Promise<ClassBody> {
  const at = parts.clock.now();
  const show = await lockShow(tx, showId);
  const before = await lockOpenClass(tx, showId, classId);
  mustBeCurrent(before.version, versionRead);
  await mustStillBeOpenTo(tx, before, change);
  if (change.number !== undefined && change.number !== before.number) {
    await mustBeFreeNumber(tx, { showId, number: change.number });
  }
  await mustBeRing(tx, { showId, id: change.ringId ?? null });
  const sheetId = await fittingSheet(tx, before, change);
  const { sheet: _, day: __, scheduledAt: ___, ...rest } = withoutUndefined(change);
  const row = await tx.prisma.showClass.update({
    where: { id: classId },
    data: { ...rest, ...timeChange(before, change, show), sheetId, version: { increment: 1 } },
    include: withSheetAndShow,
  });
  await appendLine(parts, tx, { showId, type: 'class.changed', body: { classId, version: row.version }, at });
  return classOf(row);
}

async function mustStillBeOpenTo(tx: Transaction, { id }: ShowClass, change: ClassChange): Promise<void> {
  const { opened, signed } = await cardsOf(tx, id);
  const judgedBy = change.sheet !== undefined || change.patternId !== undefined;
  if (judgedBy && opened > 0) {
    throw problem('class_under_way', {
      detail: 'A card was written, so sheet and pattern stay as they are.',
    });
  }
  const placedBy = change.placingRule !== undefined || change.placesGiven !== undefined;
  if (placedBy && signed > 0) {
    throw problem('class_under_way', { detail: 'A card was signed, so the placing rule stays as it is.' });
  }
}

/** The sheet after the change, once sheet, pattern, rule and panel are seen to fit together. */
async function fittingSheet(tx: Transaction, before: ShowClass, change: ClassChange): Promise<string> {
  const sheet =
    change.sheet === undefined
      ? await tx.prisma.scoreSheet.findUniqueOrThrow({ where: { id: before.sheetId } })
      : await findSheet(tx, change.sheet);
  const patternId = change.patternId === undefined ? before.patternId : change.patternId;
  const seats = await seatedNow(tx, before.id);
  mustFit({
    sheet: definitionOf(sheet),
    maneuvers: await findManeuvers(tx, { showId: before.showId, id: patternId }),
    rule: change.placingRule ?? ruleOf(before),
    drawSeed: before.drawSeed,
    seats: seats.length === 0 ? undefined : seats,
  });
  return sheet.id;
}

/** A new day leaves the old time behind, and a new time brings its day. */
function timeChange(before: ShowClass, { day, scheduledAt }: ClassChange, show: Show) {
  if (day === undefined && scheduledAt === undefined) return {};
  const dayBefore = before.day === null ? null : dayText(before.day);
  const onlyTimeDropped = day === undefined && scheduledAt === null;
  return whenOf({ day: onlyTimeDropped ? dayBefore : (day ?? null), scheduledAt: scheduledAt ?? null }, show);
}
