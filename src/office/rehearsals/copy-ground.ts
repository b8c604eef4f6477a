/** Rings, people of the panels and patterns of a show, copied into its rehearsal under ids of their own. */
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { Prisma } from '../../platform/generated/prisma/client.ts';

export interface Copy {
  readonly parts: AppParts;
  readonly tx: Transaction;
  /** The show that is rehearsed. */
  readonly from: string;
  /** Its practice show. */
  readonly to: string;
  readonly at: Date;
}

/** New ids by the old ones. */
export type NewIds = ReadonlyMap<string, string>;

export const newIdsFor = ({ parts }: Copy, rows: readonly { readonly id: string }[]): NewIds =>
  new Map(rows.map(({ id }) => [id, parts.ids.next()]));

/** Throws where something refers to what was not copied. */
export function copyOf(ids: NewIds, id: string): string {
  const copied = ids.get(id);
  if (copied === undefined) throw new Error('a copy would refer to the show that it is copied from');
  return copied;
}

export async function copyRings(copy: Copy): Promise<NewIds> {
  const { tx, from, to, at } = copy;
  const rows = await tx.prisma.ring.findMany({ where: { showId: from } });
  const ids = newIdsFor(copy, rows);
  await tx.prisma.ring.createMany({
    data: rows.map(({ id, name }) => ({ id: copyOf(ids, id), showId: to, name, createdAt: at })),
  });
  return ids;
}

export async function copyPeople(copy: Copy): Promise<NewIds> {
  const { tx, from, to, at } = copy;
  const rows = await tx.prisma.person.findMany({ where: { showId: from } });
  const ids = newIdsFor(copy, rows);
  await tx.prisma.person.createMany({
    data: rows.map(({ id, name }) => ({ id: copyOf(ids, id), showId: to, name, createdAt: at })),
  });
  return ids;
}

export async function copyPatterns(copy: Copy): Promise<NewIds> {
  const { tx, from, to, at } = copy;
  const rows = await tx.prisma.pattern.findMany({ where: { showId: from }, include: { maneuvers: true } });
  const ids = newIdsFor(copy, rows);
  await tx.prisma.pattern.createMany({
    data: rows.map(({ id, name, drawing }) => ({
      ...{ id: copyOf(ids, id), showId: to, name, createdAt: at },
      drawing: drawing ?? Prisma.DbNull,
    })),
  });
  await tx.prisma.patternManeuver.createMany({
    data: rows.flatMap(({ maneuvers }) =>
      maneuvers.map((maneuver) => ({ ...maneuver, patternId: copyOf(ids, maneuver.patternId) })),
    ),
  });
  return ids;
}
