import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { ClassEntry, ClassRelation, ShowClass } from '../../platform/generated/prisma/client.ts';

export interface Move {
  readonly kind: 'split' | 'combined';
  readonly from: ShowClass;
  readonly to: ShowClass;
  readonly rows: readonly ClassEntry[];
  readonly reason: string;
}

/**
 * Moves class entries: the old row stays as `moved`, a new one stands in the other class with the status that the
 * old one had. An entry that is in both classes already has its row there.
 */
export async function moveEntries(parts: AppParts, tx: Transaction, move: Move): Promise<ClassRelation> {
  const { kind, from, to, rows, reason } = move;
  const at = parts.clock.now();
  const there = await tx.prisma.classEntry.findMany({ where: { classId: to.id }, select: { entryId: true } });
  const known = new Set(there.map(({ entryId }) => entryId));
  const joining = rows.filter(({ entryId }) => !known.has(entryId));
  await tx.prisma.classEntry.createMany({
    data: joining.map(({ showId, entryId, status, statusReason, addedLate, videoUrl }) => ({
      ...{ showId, entryId, status, statusReason, addedLate, videoUrl },
      id: parts.ids.next(),
      classId: to.id,
      createdAt: at,
      changedAt: at,
    })),
  });
  const ids = rows.map(({ id }) => id);
  await tx.prisma.classEntry.updateMany({
    where: { id: { in: ids } },
    data: { status: 'moved', statusReason: reason, goPosition: null, changedAt: at },
  });
  const { showId } = from;
  return tx.prisma.classRelation.create({
    data: {
      ...{ id: parts.ids.next(), showId, kind, reason, relatedAt: at },
      fromClassId: from.id,
      toClassId: to.id,
      classEntryIds: ids,
    },
  });
}
