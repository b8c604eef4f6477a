import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { ShowClass } from '../../platform/generated/prisma/client.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { type FieldFault, problem } from '../../platform/problems/index.ts';
import { ruleOf } from '../classes/class-of.ts';
import { mustFit } from '../classes/fit.ts';
import { findManeuvers } from '../classes/references.ts';
import { definitionOf } from '../sheets/sheet-schemas.ts';
import { cardsOf, lockOpenClass } from '../store/locks.ts';
import type { NewPanel, PanelBody } from './panel-schemas.ts';
import { readPanel } from './read-panel.ts';
import { seatedNow } from './seats.ts';

interface Asked {
  readonly showId: string;
  readonly classId: string;
  readonly versionRead: number;
  readonly panel: NewPanel;
}

/**
 * Puts the panel anew, until a card is opened. Whoever stays keeps her seat, which her phone and her cards know by its id.
 * Throws not_found, class_not_open, stale_version, panel_locked, seat_taken, unknown_reference, rule_invalid.
 */
export async function seatPanel(
  parts: AppParts,
  tx: Transaction,
  { showId, classId, versionRead, panel }: Asked,
): Promise<PanelBody> {
  mustBeOnce(panel);
  const at = parts.clock.now();
  const before = await lockOpenClass(tx, showId, classId);
  mustBeCurrent(before.version, versionRead);
  if ((await cardsOf(tx, classId)).opened > 0) throw problem('panel_locked');
  await mustBePeopleOf(tx, showId, panel);
  const seatIds = await writeSeats(tx, { parts, before, panel, at });
  await mustFitPanel(tx, before);
  const { version } = await tx.prisma.showClass.update({
    where: { id: classId },
    data: { version: { increment: 1 } },
  });
  await appendLine(parts, tx, { showId, type: 'panel.changed', body: { classId, seatIds, version }, at });
  return readPanel(tx, { id: classId, version });
}

/** Nobody sits twice, and no two hold one place in an order. */
function mustBeOnce({ seats }: NewPanel): void {
  const errors: FieldFault[] = [];
  for (const field of ['personId', 'callOrder', 'tieOrder'] as const) {
    seats.forEach((seat, index) => {
      const first = seats.findIndex((other) => other[field] === seat[field]);
      if (seat[field] === null || first === index) return;
      errors.push({ field: `/seats/${index}/${field}`, message: `seat ${first + 1} has it already` });
    });
  }
  if (errors.length > 0) throw problem('seat_taken', { errors });
}

async function mustBePeopleOf(tx: Transaction, showId: string, { seats }: NewPanel): Promise<void> {
  const found = await tx.prisma.person.findMany({
    where: { showId, id: { in: seats.map(({ personId }) => personId) } },
    select: { id: true },
  });
  const known = new Set(found.map(({ id }) => id));
  const errors = seats.flatMap(({ personId }, index) =>
    known.has(personId)
      ? []
      : [{ field: `/seats/${index}/personId`, message: 'there is no such person in this show' }],
  );
  if (errors.length > 0) throw problem('unknown_reference', { errors });
}

interface Seating {
  readonly parts: AppParts;
  readonly before: ShowClass;
  readonly panel: NewPanel;
  readonly at: Date;
}

/** Orders are checked when the transaction ends, so seats may trade places; withdrawn seats move behind. */
async function writeSeats(tx: Transaction, { parts, before, panel, at }: Seating): Promise<string[]> {
  const { id: classId, showId } = before;
  const seatOf = new Map((await seatedNow(tx, classId)).map((seat) => [seat.personId, seat.id]));
  const seatIds: string[] = [];
  for (const [index, { personId, ...place }] of panel.seats.entries()) {
    const id = seatOf.get(personId) ?? parts.ids.next();
    const placed = { ...place, seatOrder: index + 1 };
    await tx.prisma.panelSeat.upsert({
      where: { id },
      update: placed,
      create: { id, showId, classId, personId, ...placed, createdAt: at },
    });
    seatOf.delete(personId);
    seatIds.push(id);
  }
  await removeSeats(tx, [...seatOf.values()]);
  const gone = await tx.prisma.panelSeat.findMany({
    where: { classId, withdrawnAt: { not: null } },
    orderBy: { seatOrder: 'asc' },
  });
  for (const [index, { id }] of gone.entries()) {
    await tx.prisma.panelSeat.update({ where: { id }, data: { seatOrder: panel.seats.length + index + 1 } });
  }
  return seatIds;
}

/** No card was opened on them. */
async function removeSeats(tx: Transaction, ids: readonly string[]): Promise<void> {
  await tx.prisma.panelSeat.deleteMany({ where: { id: { in: [...ids] } } });
}

/** Does the rule of the class still fit who sits there now? An empty panel is not asked. */
export async function mustFitPanel(tx: Transaction, showClass: ShowClass): Promise<void> {
  const seats = await seatedNow(tx, showClass.id);
  if (seats.length === 0) return;
  const sheet = await tx.prisma.scoreSheet.findUniqueOrThrow({ where: { id: showClass.sheetId } });
  const maneuvers = await findManeuvers(tx, { showId: showClass.showId, id: showClass.patternId });
  const { drawSeed } = showClass;
  mustFit({ sheet: definitionOf(sheet), maneuvers, rule: ruleOf(showClass), drawSeed, seats });
}
