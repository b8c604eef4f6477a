/**
 * Who changes a show's records takes its row first, and who changes a class the class's: changes queue up, and
 * what was checked still holds when it is written. Reading and references to the row are not held up.
 */
import type { Transaction } from '../../platform/database.ts';
import type { Show, ShowClass } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';

const lockShowRow: Statement = {
  name: 'office.lock-show',
  text: 'SELECT id FROM show WHERE id = $1 FOR NO KEY UPDATE',
};
const lockClassRow: Statement = {
  name: 'office.lock-class',
  text: 'SELECT id FROM show_class WHERE id = $1 AND show_id = $2 FOR NO KEY UPDATE',
};

/** The show, locked for a change. Throws not_found. */
export async function lockShow(tx: Transaction, showId: string): Promise<Show> {
  await tx.sql.row(lockShowRow, [showId]);
  const show = await tx.prisma.show.findUnique({ where: { id: showId } });
  if (show === null) throw problem('not_found', { detail: 'There is no such show.' });
  return show;
}

/** The class, locked for a change. A class of another show is not there: throws not_found. */
export async function lockClass(tx: Transaction, showId: string, classId: string): Promise<ShowClass> {
  await tx.sql.row(lockClassRow, [classId, showId]);
  const found = await tx.prisma.showClass.findFirst({ where: { id: classId, showId } });
  if (found === null) throw problem('not_found', { detail: 'There is no such class in this show.' });
  return found;
}

/** The same, for what can be done only while the class is neither cancelled nor combined. Throws class_not_open. */
export async function lockOpenClass(tx: Transaction, showId: string, classId: string): Promise<ShowClass> {
  const found = await lockClass(tx, showId, classId);
  if (found.status !== 'open') throw problem('class_not_open', { detail: `The class is ${found.status}.` });
  return found;
}

/** How many cards of the class were opened, and how many of those are signed. */
export async function cardsOf(tx: Transaction, classId: string): Promise<{ opened: number; signed: number }> {
  const opened = await tx.prisma.card.count({ where: { classId } });
  const signed = await tx.prisma.card.count({ where: { classId, revisions: { some: {} } } });
  return { opened, signed };
}

/** Throws class_under_way once a card of the class was opened. */
export async function mustHaveNoCard(tx: Transaction, classId: string): Promise<void> {
  if ((await cardsOf(tx, classId)).opened > 0) throw problem('class_under_way');
}

/** Throws class_under_way once a card of the class was signed. */
export async function mustHaveNoSignedCard(tx: Transaction, classId: string): Promise<void> {
  const { signed } = await cardsOf(tx, classId);
  if (signed > 0) throw problem('class_under_way', { detail: `Cards signed so far: ${signed}.` });
}
