/** Who is entered in a youth class of the show: of unknown age, such a one is taken for a minor everywhere. */
import type { Transaction } from '../../platform/database.ts';

/** Of the exhibitors asked for those who ever were entered in a youth class; a scratch makes nobody older. */
export async function inYouthClasses(
  { prisma }: Pick<Transaction, 'prisma'>,
  exhibitorIds: readonly string[],
): Promise<ReadonlySet<string>> {
  if (exhibitorIds.length === 0) return new Set();
  const rows = await prisma.entry.findMany({
    where: {
      exhibitorId: { in: [...exhibitorIds] },
      classEntries: { some: { showClass: { youth: true } } },
    },
    select: { exhibitorId: true },
  });
  return new Set(rows.map(({ exhibitorId }) => exhibitorId));
}
