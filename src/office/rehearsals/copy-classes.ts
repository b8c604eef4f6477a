/** Open classes of a show with their panels and entries, copied into its rehearsal as they were before anybody went. */
import type { PanelSeat, ShowClass } from '../../platform/generated/prisma/client.ts';
import { ruleOf } from '../classes/class-of.ts';
import { goersOf, setOrder } from '../order/set-order.ts';
import { withSeats } from '../relations/split-class.ts';
import { type Copy, copyOf, type NewIds, newIdsFor } from './copy-ground.ts';

interface Copied {
  readonly rings: NewIds;
  readonly people: NewIds;
  readonly patterns: NewIds;
  readonly entries: NewIds;
}

export async function copyClasses(copy: Copy, copied: Copied): Promise<NewIds> {
  const { tx, from } = copy;
  const classes = await tx.prisma.showClass.findMany({
    where: { showId: from, status: 'open' },
    include: { draws: { select: { id: true }, take: 1 } },
    orderBy: { number: 'asc' },
  });
  const ids = newIdsFor(copy, classes);
  const seats = await tx.prisma.panelSeat.findMany({
    where: { classId: { in: [...ids.keys()] }, withdrawnAt: null },
  });
  const seatIds = newIdsFor(copy, seats);
  const rows = classes.map(({ draws: _, ...row }) => classLike(copy, row, { ...copied, ids, seatIds }));
  await tx.prisma.showClass.createMany({ data: rows });
  await tx.prisma.panelSeat.createMany({
    data: seats.map((seat) => seatLike(copy, seat, { ...copied, ids, seatIds })),
  });
  await copyClassEntries(copy, ids, copied);
  for (const { id, draws } of classes) if (draws.length > 0) await takeOverOrder(copy, copyOf(ids, id));
  return ids;
}

interface Renamed extends Copied {
  /** Of the classes. */
  readonly ids: NewIds;
  readonly seatIds: NewIds;
}

/** The seed of its lots comes along: then the order of go is that of the day. */
function classLike({ to, at }: Copy, row: ShowClass, { ids, seatIds, rings, patterns }: Renamed) {
  const { calledAt: _, openedAt: __, version: ___, ...same } = row;
  return {
    ...same,
    id: copyOf(ids, row.id),
    showId: to,
    placingRule: withSeats(ruleOf(row), seatIds),
    ringId: row.ringId === null ? null : copyOf(rings, row.ringId),
    patternId: row.patternId === null ? null : copyOf(patterns, row.patternId),
    createdAt: at,
  };
}

function seatLike({ to, at }: Copy, seat: PanelSeat, { ids, seatIds, people }: Renamed) {
  return {
    ...seat,
    id: copyOf(seatIds, seat.id),
    showId: to,
    classId: copyOf(ids, seat.classId),
    personId: copyOf(people, seat.personId),
    replacesId: null,
    createdAt: at,
  };
}

/** Everyone is entered again, whatever became of her go; reasons, which may hold names, stay behind. */
async function copyClassEntries(copy: Copy, ids: NewIds, { entries }: Copied): Promise<void> {
  const { parts, tx, to, at } = copy;
  const rows = await tx.prisma.classEntry.findMany({
    where: { classId: { in: [...ids.keys()] }, status: { not: 'moved' } },
    orderBy: { id: 'asc' },
  });
  await tx.prisma.classEntry.createMany({
    data: rows.map(({ classId, entryId, goPosition }) => ({
      ...{ id: parts.ids.next(), showId: to, goPosition, createdAt: at, changedAt: at },
      classId: copyOf(ids, classId),
      entryId: copyOf(entries, entryId),
    })),
  });
}

/** Who was scratched at the show, and has no place in its order, goes last here. */
async function takeOverOrder({ parts, tx }: Copy, classId: string): Promise<void> {
  const goers = await goersOf(tx, classId);
  if (goers.length === 0) return;
  await setOrder(parts, tx, {
    showClass: await tx.prisma.showClass.findUniqueOrThrow({ where: { id: classId } }),
    goers,
    order: goers.map(({ id }) => id),
    ...{ kind: 'by-hand', seed: null, enoughGap: null },
    reason: 'Taken over from the show that is rehearsed',
  });
}
