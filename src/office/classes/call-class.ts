import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { cardsOf, lockClass, lockOpenClass } from '../store/locks.ts';
import { classOf, withSheetAndShow } from './class-of.ts';
import type { ClassBody } from './class-schemas.ts';

interface Where {
  readonly showId: string;
  readonly classId: string;
}

/** The class is called to the ring; again, when it is called again. Throws not_found, class_not_open. */
export async function callClass(
  parts: AppParts,
  tx: Transaction,
  { showId, classId }: Where,
): Promise<ClassBody> {
  const at = parts.clock.now();
  await lockOpenClass(tx, showId, classId);
  const row = await tx.prisma.showClass.update({
    where: { id: classId },
    data: { calledAt: at },
    include: withSheetAndShow,
  });
  const ring = row.ringId === null ? {} : { ringId: row.ringId };
  await appendLine(parts, tx, { showId, type: 'class.called', body: { classId, ...ring }, at });
  return classOf(row);
}

/** The class is not held; cancelling twice changes nothing. Throws not_found, class_not_open, class_under_way. */
export async function cancelClass(
  parts: AppParts,
  tx: Transaction,
  { showId, classId }: Where,
): Promise<ClassBody> {
  const at = parts.clock.now();
  const { status } = await lockClass(tx, showId, classId);
  if (status === 'combined') throw problem('class_not_open');
  if ((await cardsOf(tx, classId)).signed > 0) throw problem('class_under_way');
  const row = await tx.prisma.showClass.update({
    where: { id: classId },
    data: { status: 'cancelled', version: { increment: status === 'open' ? 1 : 0 } },
    include: withSheetAndShow,
  });
  if (status === 'open')
    await appendLine(parts, tx, { showId, type: 'class.cancelled', body: { classId }, at });
  return classOf(row);
}
