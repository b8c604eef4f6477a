import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { settleOrder } from '../order/set-order.ts';
import { lockOpenClass, lockShow, mustHaveNoCard, mustHaveNoSignedCard } from '../store/locks.ts';
import { moveEntries } from './move-entries.ts';
import { type NewCombination, type RelationBody, relationOf } from './relation-schemas.ts';

interface Asked extends NewCombination {
  readonly showId: string;
  readonly classId: string;
}

/**
 * Classes join this one before a card is signed (in those that join: before one is written). It keeps its sheet,
 * rule and panel; where its order of go is drawn, those who join go last until it is drawn again.
 * Throws not_found, class_not_open, class_under_way, unknown_reference.
 */
export async function combineClasses(
  parts: AppParts,
  tx: Transaction,
  asked: Asked,
): Promise<RelationBody[]> {
  const { showId, classId, classIds, reason } = asked;
  const at = parts.clock.now();
  mustBeOthers(asked);
  await lockShow(tx, showId);
  const to = await lockOpenClass(tx, showId, classId);
  await mustHaveNoSignedCard(tx, classId);
  const relations = [];
  for (const id of classIds) {
    const from = await lockOpenClass(tx, showId, id);
    await mustHaveNoCard(tx, id);
    const rows = await tx.prisma.classEntry.findMany({ where: { classId: id, status: { not: 'moved' } } });
    relations.push(await moveEntries(parts, tx, { kind: 'combined', from, to, rows, reason }));
    await tx.prisma.showClass.update({
      where: { id },
      data: { status: 'combined', version: { increment: 1 } },
    });
    await appendLine(parts, tx, {
      showId,
      type: 'class.combined',
      body: { classId: id, intoClassId: classId },
      at,
    });
  }
  await settleOrder(parts, tx, { showClass: to, kind: 'by-hand', reason });
  return relations.map(relationOf);
}

function mustBeOthers({ classId, classIds }: Asked): void {
  const errors = classIds.flatMap((id, index) => {
    const field = `/classIds/${index}`;
    if (id === classId) return [{ field, message: 'a class cannot join itself' }];
    return classIds.indexOf(id) < index ? [{ field, message: 'it is named before' }] : [];
  });
  if (errors.length > 0) throw problem('unknown_reference', { errors });
}
