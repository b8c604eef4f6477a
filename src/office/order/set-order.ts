/** Writes an order of go: the positions, the record of how it came about, and the ledger line. */
import { leastGapOf } from '../../engine/order-of-go/draw.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { OrderDraw, ShowClass } from '../../platform/generated/prisma/client.ts';
import type { Statement } from '../../platform/sql.ts';
import { isGoing } from '../class-entries/status.ts';

export interface Goer {
  /** Class entry. */
  readonly id: string;
  readonly backNumber: number;
  readonly rider: string;
  readonly goPosition: number | null;
}

/** Who goes in the class, in the present order; who has no place in it yet comes last, by back number. */
export async function goersOf(tx: Pick<Transaction, 'prisma'>, classId: string): Promise<Goer[]> {
  const rows = await tx.prisma.classEntry.findMany({
    where: { classId },
    include: { entry: { select: { backNumber: true, exhibitorId: true } } },
    orderBy: [{ goPosition: { sort: 'asc', nulls: 'last' } }, { entry: { backNumber: 'asc' } }],
  });
  return rows
    .filter(({ status }) => isGoing(status))
    .map(({ id, goPosition, entry }) => ({
      ...{ id, goPosition },
      backNumber: entry.backNumber,
      rider: entry.exhibitorId,
    }));
}

export interface NewOrder {
  readonly showClass: ShowClass;
  readonly goers: readonly Goer[];
  /** All goers' ids in their order. */
  readonly order: readonly string[];
  readonly kind: 'drawn' | 'redrawn' | 'by-hand' | 'late-add';
  readonly seed: string | null;
  readonly enoughGap: number | null;
  readonly reason: string | null;
}

/** Positions are checked for doubles when the transaction ends. Whoever does not go has no place in the order. */
const placeAll: Statement = {
  name: 'office.place-order-of-go',
  text: `UPDATE class_entry SET go_position = placed.position, changed_at = $3
         FROM class_entry AS row
         LEFT JOIN unnest($2::uuid[]) WITH ORDINALITY AS placed (id, position) ON placed.id = row.id
         WHERE class_entry.id = row.id AND row.class_id = $1
           AND class_entry.go_position IS DISTINCT FROM placed.position`,
};

export async function setOrder(parts: AppParts, tx: Transaction, asked: NewOrder): Promise<OrderDraw> {
  const { showClass, goers, order, kind, seed, enoughGap, reason } = asked;
  const { id: classId, showId } = showClass;
  const at = parts.clock.now();
  await tx.sql.rows(placeAll, [classId, order, at]);
  const riderOf = new Map(goers.map(({ id, rider }) => [id, rider]));
  const draw = await tx.prisma.orderDraw.create({
    data: {
      ...{ classId, kind, seed, enoughGap, reason },
      id: parts.ids.next(),
      number: (await tx.prisma.orderDraw.count({ where: { classId } })) + 1,
      leastGap: leastGapOf(order.map((id) => riderOf.get(id) ?? id)),
      classEntryIds: [...order],
      drawnAt: at,
    },
  });
  await appendLine(parts, tx, {
    showId,
    type: 'order.drawn',
    body: { classId, orderDrawId: draw.id, kind },
    at,
  });
  return draw;
}

/** Closes the gaps that leavers left in an order of go, and puts joiners last; nothing where none was drawn. */
export async function settleOrder(
  parts: AppParts,
  tx: Transaction,
  { showClass, kind, reason }: Pick<NewOrder, 'showClass' | 'kind' | 'reason'>,
): Promise<void> {
  if (!(await isDrawn(tx, showClass.id))) return;
  const goers = await goersOf(tx, showClass.id);
  const order = goers.map(({ id }) => id);
  await setOrder(parts, tx, { showClass, goers, order, kind, reason, seed: null, enoughGap: null });
}

/** Was an order of go ever drawn or set? */
export async function isDrawn(tx: Transaction, classId: string): Promise<boolean> {
  return (await tx.prisma.orderDraw.count({ where: { classId } })) > 0;
}
