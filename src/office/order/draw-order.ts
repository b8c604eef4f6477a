import { drawOrder } from '../../engine/order-of-go/draw.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { OrderDraw } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { lockOpenClass, mustHaveNoSignedCard } from '../store/locks.ts';
import { goersOf, isDrawn, setOrder } from './set-order.ts';

interface Asked {
  readonly showId: string;
  readonly classId: string;
  readonly reason: string | null;
  readonly enoughGap: number | null;
}

/**
 * Draws the order of go from the class's stored seed; a redraw needs a reason and draws from the same seed with
 * its number behind it ("<seed>:2"), so that nobody can draw until the order pleases without it being seen.
 * Throws not_found, class_not_open, no_entries, order_already_drawn, class_under_way.
 */
export async function drawOrderOfGo(parts: AppParts, tx: Transaction, asked: Asked): Promise<OrderDraw> {
  const { showId, classId, reason, enoughGap } = asked;
  const showClass = await lockOpenClass(tx, showId, classId);
  await mustHaveNoSignedCard(tx, classId);
  const redrawn = await isDrawn(tx, classId);
  if (redrawn && reason === null) {
    throw problem('order_already_drawn', {
      errors: [{ field: '/reason', message: 'a redraw needs a reason' }],
    });
  }
  const goers = await goersOf(tx, classId);
  if (goers.length === 0) throw problem('no_entries');
  const number = (await tx.prisma.orderDraw.count({ where: { classId } })) + 1;
  const seed = redrawn ? `${showClass.drawSeed}:${number}` : showClass.drawSeed;
  const entries = goers.map(({ id, backNumber, rider }) => ({ id, rider, lotName: String(backNumber) }));
  const { order } = drawOrder({ seed, entries, ...(enoughGap === null ? {} : { enough: enoughGap }) });
  const kind = redrawn ? 'redrawn' : 'drawn';
  return setOrder(parts, tx, { showClass, goers, order, kind, seed, enoughGap, reason });
}

interface ByHand {
  readonly showId: string;
  readonly classId: string;
  readonly order: readonly string[];
  readonly reason: string;
}

/**
 * Sets the order of go by hand. Throws not_found, class_not_open, order_not_drawn, order_incomplete.
 * Also while the class is being judged: who is not ready goes later, and marks do not depend on it.
 */
export async function reorderByHand(parts: AppParts, tx: Transaction, asked: ByHand): Promise<OrderDraw> {
  const { showId, classId, order, reason } = asked;
  const showClass = await lockOpenClass(tx, showId, classId);
  if (!(await isDrawn(tx, classId))) throw problem('order_not_drawn');
  const goers = await goersOf(tx, classId);
  mustHoldEachOnce(
    order,
    goers.map(({ id }) => id),
  );
  return setOrder(parts, tx, {
    showClass,
    goers,
    order,
    reason,
    kind: 'by-hand',
    seed: null,
    enoughGap: null,
  });
}

function mustHoldEachOnce(order: readonly string[], going: readonly string[]): void {
  const goes = new Set(going);
  const errors = order.flatMap((id, index) => {
    const field = `/order/${index}`;
    if (!goes.has(id)) return [{ field, message: 'it does not go in this class' }];
    return order.indexOf(id) === index ? [] : [{ field, message: 'it stands in the order already' }];
  });
  const left = going.filter((id) => !order.includes(id));
  if (errors.length === 0 && left.length === 0) return;
  throw problem('order_incomplete', { errors, more: { missing: left } });
}
