import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { isDrawn, settleOrder } from '../order/set-order.ts';
import { lockOpenClass, mustHaveNoSignedCard } from '../store/locks.ts';
import { type ClassEntryBody, classEntryOf, withEntry } from './class-entry-schemas.ts';

interface Asked {
  readonly showId: string;
  readonly classId: string;
  readonly entryId: string;
  readonly reason: string | null;
}

/**
 * Enters an entry in a class, until a card is signed. Once the order of go is drawn it is a late add: it needs a
 * reason and goes last (common practice, no source). Throws not_found, class_not_open, class_under_way,
 * unknown_reference, already_entered, reason_needed.
 */
export async function addClassEntry(parts: AppParts, tx: Transaction, asked: Asked): Promise<ClassEntryBody> {
  const { showId, classId, entryId, reason } = asked;
  const at = parts.clock.now();
  const showClass = await lockOpenClass(tx, showId, classId);
  await mustHaveNoSignedCard(tx, classId);
  await mustBeNew(tx, asked);
  const late = await isDrawn(tx, classId);
  if (late && reason === null) {
    throw problem('reason_needed', { errors: [{ field: '/reason', message: 'a late add needs a reason' }] });
  }
  const data = {
    showId,
    classId,
    entryId,
    addedLate: late,
    createdAt: at,
    changedAt: at,
    statusReason: reason,
  };
  const { id } = await tx.prisma.classEntry.create({ data: { ...data, id: parts.ids.next() } });
  if (late) await settleOrder(parts, tx, { showClass, kind: 'late-add', reason });
  const row = await tx.prisma.classEntry.findUniqueOrThrow({ where: { id }, include: withEntry });
  const { backNumber } = row.entry;
  await appendLine(parts, tx, {
    showId,
    type: 'class-entry.added',
    body: { classId, classEntryId: id, entryId, backNumber },
    at,
  });
  return classEntryOf(row);
}

async function mustBeNew(tx: Transaction, { showId, classId, entryId }: Asked): Promise<void> {
  const field = '/entryId';
  if ((await tx.prisma.entry.count({ where: { id: entryId, showId } })) === 0) {
    throw problem('unknown_reference', {
      errors: [{ field, message: 'there is no such entry in this show' }],
    });
  }
  const there = await tx.prisma.classEntry.findUnique({ where: { classId_entryId: { classId, entryId } } });
  if (there === null) return;
  const message = `it is in the class as ${there.status}`;
  throw problem('already_entered', { errors: [{ field, message }], more: { classEntryId: there.id } });
}
