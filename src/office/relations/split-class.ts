import type { PlacingRule } from '../../engine/placing/types.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { ClassEntry, Prisma, ShowClass } from '../../platform/generated/prisma/client.ts';
import { type FieldFault, problem } from '../../platform/problems/index.ts';
import { ruleOf } from '../classes/class-of.ts';
import { mustBeFreeNumber } from '../classes/references.ts';
import { settleOrder } from '../order/set-order.ts';
import { lockOpenClass, lockShow, mustHaveNoSignedCard } from '../store/locks.ts';
import { moveEntries } from './move-entries.ts';
import { type NewSplit, type RelationBody, relationOf } from './relation-schemas.ts';

interface Asked extends NewSplit {
  readonly showId: string;
  readonly classId: string;
}

/**
 * Splits a class before a card is signed: each new class has the sheet, pattern, rule and panel of the old one, a
 * seed of its own, and is drawn anew. Throws not_found, class_not_open, class_under_way, class_number_taken,
 * unknown_reference, already_entered for an entry that is named twice.
 */
export async function splitClass(parts: AppParts, tx: Transaction, asked: Asked): Promise<RelationBody[]> {
  const { showId, classId, into, reason } = asked;
  await lockShow(tx, showId);
  const from = await lockOpenClass(tx, showId, classId);
  await mustHaveNoSignedCard(tx, classId);
  const rows = await tx.prisma.classEntry.findMany({ where: { classId, status: { not: 'moved' } } });
  mustBeEntriesOnce(asked, rows);
  const relations = [];
  for (const part of into) {
    const to = await addLikeClass(parts, tx, { from, part });
    const moving = rows.filter(({ id }) => part.classEntryIds.includes(id));
    relations.push(await moveEntries(parts, tx, { kind: 'split', from, to, rows: moving, reason }));
  }
  await settleOrder(parts, tx, { showClass: from, kind: 'by-hand', reason });
  const intoClassIds = relations.map(({ toClassId }) => toClassId);
  await appendLine(parts, tx, {
    showId,
    type: 'class.split',
    body: { classId, intoClassIds },
    at: parts.clock.now(),
  });
  return relations.map(relationOf);
}

function mustBeEntriesOnce({ into }: NewSplit, rows: readonly ClassEntry[]): void {
  const known = new Set(rows.map(({ id }) => id));
  const named = into.flatMap(({ classEntryIds }, part) =>
    classEntryIds.map((id, index) => ({ id, field: `/into/${part}/classEntryIds/${index}` })),
  );
  const unknown: FieldFault[] = named
    .filter(({ id }) => !known.has(id))
    .map(({ field }) => ({ field, message: 'there is no such entry in this class' }));
  if (unknown.length > 0) throw problem('unknown_reference', { errors: unknown });
  const twice: FieldFault[] = named
    .filter(({ id }, index) => named.findIndex((other) => other.id === id) < index)
    .map(({ field }) => ({ field, message: 'it is named before' }));
  if (twice.length > 0) throw problem('already_entered', { errors: twice });
}

interface LikeClass {
  readonly from: ShowClass;
  readonly part: NewSplit['into'][number];
}

/** Named tie judges of the rule are seats of the old panel: they become the seats of the same people. */
async function addLikeClass(parts: AppParts, tx: Transaction, { from, part }: LikeClass): Promise<ShowClass> {
  const { showId } = from;
  const { number, name, division } = part;
  await mustBeFreeNumber(tx, { showId, number });
  const at = parts.clock.now();
  const id = parts.ids.next();
  const seats = await tx.prisma.panelSeat.findMany({ where: { classId: from.id, withdrawnAt: null } });
  const seatIds = new Map(seats.map((seat) => [seat.id, parts.ids.next()]));
  const { createdAt: _, calledAt: __, openedAt: ___, version: ____, ...same } = from;
  const row = await tx.prisma.showClass.create({
    data: {
      ...{ ...same, id, number, name, division },
      placingRule: withSeats(ruleOf(from), seatIds),
      drawSeed: parts.ids.seed(),
      createdAt: at,
    },
  });
  await tx.prisma.panelSeat.createMany({
    data: seats.map((seat) => ({
      ...seat,
      id: seatIds.get(seat.id) ?? seat.id,
      classId: id,
      replacesId: null,
      createdAt: at,
    })),
  });
  await appendLine(parts, tx, { showId, type: 'class.created', body: { classId: id, number }, at });
  return row;
}

/** The rule with its named tie judges as other seats. */
export function withSeats(rule: PlacingRule, seatIds: ReadonlyMap<string, string>): Prisma.InputJsonObject {
  const ties = rule.ties.map((tie) =>
    tie.code === 'tie-judge' ? { ...tie, judges: tie.judges.map((seat) => seatIds.get(seat) ?? seat) } : tie,
  );
  // A rule is plain JSON; only its lists are read-only in our types.
  return { ...rule, ties } as unknown as Prisma.InputJsonObject;
}
