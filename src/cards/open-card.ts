/** The card of a seat is opened once; whoever opens it again finds it there. */
import { type Actor, mustHoldSeat, reachesShow } from '../access/index.ts';
import { cardIdOf } from '../evidence/index.ts';
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import * as statements from './card-statements.ts';
import { holdUnopened, openClass } from './open-class.ts';

interface SeatOfClass {
  readonly showId: string;
  readonly withdrawnAt: Date | null;
  readonly classStatus: string;
}

export interface Opened {
  readonly cardId: string;
  readonly isNew: boolean;
}

/**
 * The first card of a class opens the class. Throws not_found, other_show, other_seat, seat_withdrawn, class_not_open,
 * class_not_empty.
 */
export async function openCard(
  parts: AppParts,
  tx: SqlTransaction,
  { classId, seatId, actor }: { readonly classId: string; readonly seatId: string; readonly actor: Actor },
): Promise<Opened> {
  mustHoldSeat(actor, seatId);
  const isFirst = await holdUnopened(tx, classId);
  const seat = await tx.sql.row<SeatOfClass>(statements.findSeat, [seatId, classId]);
  if (seat === undefined)
    throw problem('not_found', { detail: 'There is no such seat on the panel of this class.' });
  const { showId, withdrawnAt, classStatus } = seat;
  if (!reachesShow(actor, showId)) throw problem('other_show');
  if (withdrawnAt !== null) throw problem('seat_withdrawn');
  if (classStatus !== 'open') throw problem('class_not_open', { detail: `The class is ${classStatus}.` });
  if (isFirst) await openClass(parts, tx, { classId, showId });
  const at = parts.clock.now();
  const opened = await tx.sql.row<{ id: string }>(statements.openCard, [
    cardIdOf(seatId),
    classId,
    seatId,
    at,
  ]);
  if (opened === undefined) return { cardId: await cardOfSeat(tx, seatId), isNew: false };
  const body = { classId, seatId, cardId: opened.id };
  await appendLine(parts, tx, { showId, type: 'card.opened', body, at });
  return { cardId: opened.id, isNew: true };
}

async function cardOfSeat(tx: SqlTransaction, seatId: string): Promise<string> {
  const found = await tx.sql.row<{ id: string }>(statements.findCardOfSeat, [seatId]);
  if (found === undefined) throw new Error('a seat has neither a card nor room for one');
  return found.id;
}
