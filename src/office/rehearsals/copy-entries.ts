/** Back numbers of a show, copied into its rehearsal: whoever wears them has no name there, and neither has the horse. */
import { type Copy, copyOf, type NewIds, newIdsFor } from './copy-ground.ts';

export async function copyEntries(copy: Copy): Promise<NewIds> {
  const { tx, from, to, at } = copy;
  const rows = await tx.prisma.entry.findMany({ where: { showId: from }, orderBy: { backNumber: 'asc' } });
  const ids = newIdsFor(copy, rows);
  const exhibitors = namelessBy(copy, rows, ({ exhibitorId }) => exhibitorId);
  const horses = namelessBy(copy, rows, ({ horseId }) => horseId);
  const common = { showId: to, createdAt: at };
  await tx.prisma.exhibitor.createMany({
    data: exhibitors.map(({ id, backNumber }) => ({ ...common, id, name: `Rehearsal ${backNumber}` })),
  });
  await tx.prisma.horse.createMany({
    data: horses.map(({ id, backNumber }) => ({ ...common, id, name: `Rehearsal horse ${backNumber}` })),
  });
  const idOf = (made: readonly Nameless[]) => new Map(made.map(({ of, id }) => [of, id]));
  const [exhibitorIds, horseIds] = [idOf(exhibitors), idOf(horses)];
  await tx.prisma.entry.createMany({
    data: rows.map(({ id, backNumber, exhibitorId, horseId }) => ({
      ...common,
      id: copyOf(ids, id),
      backNumber,
      exhibitorId: copyOf(exhibitorIds, exhibitorId),
      horseId: copyOf(horseIds, horseId),
    })),
  });
  return ids;
}

interface Nameless {
  /** Id of whoever it stands for in the show that is rehearsed. */
  readonly of: string;
  readonly id: string;
  /** The lowest, where there are several. */
  readonly backNumber: number;
}

interface Numbered {
  readonly backNumber: number;
  readonly exhibitorId: string;
  readonly horseId: string;
}

/** One for each, since the order of go keeps the goes of one rider apart. `rows` are by back number. */
function namelessBy({ parts }: Copy, rows: readonly Numbered[], of: (row: Numbered) => string): Nameless[] {
  const made = new Map<string, Nameless>();
  for (const row of rows) {
    const known = of(row);
    if (!made.has(known)) made.set(known, { of: known, id: parts.ids.next(), backNumber: row.backNumber });
  }
  return [...made.values()];
}
