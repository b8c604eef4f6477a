/** A paper card as the verbs work on it: loaded, or loaded and locked, with the right to touch it checked. */
import { type Actor, mustHoldSeat, reachesShow } from '../../access/index.ts';
import type { CardContent } from '../../engine/sheets/card-types.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { type CardRecord, cardForWriting } from '../card-record.ts';
import * as statements from './paper-statements.ts';

export interface PaperCard {
  readonly id: string;
  readonly classId: string;
  readonly seatId: string;
  readonly cardId: string;
  readonly showId: string;
  /** Which revision of the card it becomes. */
  readonly revision: number;
  readonly previousHash: string | null;
  readonly reason: string | null;
  readonly status: 'open' | 'accepted' | 'withdrawn';
  readonly withdrawnWhy: string | null;
  readonly salt: string;
  readonly createdBy: string;
  readonly createdAt: Date;
  /** Open, and the card has got another revision since. */
  readonly overtaken: boolean;
}

/** What one account read off the paper. */
export interface PaperEntry {
  readonly accountId: string;
  readonly content: CardContent;
  readonly contentHash: string;
  readonly version: number;
  /** When she last saved it. */
  readonly enteredAt: Date;
}

/** For the office, and for the judge whose card it is. Throws not_found, other_show, other_seat. */
export async function paperCardForReading(tx: SqlTransaction, id: string, actor: Actor): Promise<PaperCard> {
  const paper = await tx.sql.row<PaperCard>(statements.readPaperCard, [id]);
  if (paper === undefined) throw problem('not_found', { detail: 'There is no such paper card.' });
  if (!reachesShow(actor, paper.showId)) throw problem('other_show');
  mustHoldSeat(actor, paper.seatId);
  return paper;
}

/** The same, locked until the transaction ends. */
export async function paperCardLocked(tx: SqlTransaction, id: string, actor: Actor): Promise<PaperCard> {
  await tx.sql.row(statements.lockPaperCard, [id]);
  return paperCardForReading(tx, id, actor);
}

export interface PaperOfCard {
  readonly paper: PaperCard;
  readonly card: CardRecord;
}

/**
 * The paper card and the card that it is to become, both locked, so that a signature on the phone comes before or
 * after but not between. Throws not_found, other_show, seat_withdrawn, class_not_open.
 */
export async function paperCardForEntering(
  tx: SqlTransaction,
  id: string,
  actor: Actor,
): Promise<PaperOfCard> {
  const { cardId } = await paperCardForReading(tx, id, actor);
  const card = await cardForWriting(tx, cardId, actor);
  return { card, paper: await paperCardLocked(tx, id, actor) };
}

/** Throws paper_card_closed. */
export function mustBeOpen({ status }: PaperCard): void {
  if (status !== 'open') throw problem('paper_card_closed', { detail: `It is ${status}.` });
}

/** Who saved last comes last. */
export const paperEntriesOf = (tx: SqlTransaction, { id }: PaperCard): Promise<PaperEntry[]> =>
  tx.sql.rows<PaperEntry>(statements.readPaperEntries, [id]);
