/** The office takes up a card that came in on paper: two people will enter it. */
import { type Actor, officeOf } from '../../access/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { type CardRecord, cardForWriting } from '../card-record.ts';
import { openCard } from '../open-card.ts';
import type { PaperCard } from './paper-record.ts';
import * as statements from './paper-statements.ts';

interface TakingUp {
  readonly classId: string;
  readonly seatId: string;
  readonly actor: Actor;
  /** Why the signed card changes, or why the first one comes on paper. */
  readonly reason?: string;
  /** Fingerprint of the revision that the paper amends. */
  readonly previousHash?: string;
}

export interface TakenUp {
  readonly paperCardId: string;
  readonly isNew: boolean;
}

/**
 * A seat has one open paper card: taken up again it is the same one. What the judge has on her phone is not touched.
 * Throws not_found, other_show, seat_withdrawn, class_not_open, class_not_empty, card_already_signed, card_not_signed,
 * reason_missing, stale_revision, paper_card_overtaken.
 */
export async function takeUpPaperCard(
  parts: AppParts,
  tx: SqlTransaction,
  asked: TakingUp,
): Promise<TakenUp> {
  const { classId, seatId, actor } = asked;
  const { cardId } = await openCard(parts, tx, { classId, seatId, actor });
  const card = await cardForWriting(tx, cardId, actor);
  const { revision, previousHash, reason } = follows(card, asked);
  const open = await tx.sql.row<PaperCard>(statements.readOpenPaperCard, [seatId]);
  if (open?.overtaken) throw problem('paper_card_overtaken', { more: { paperCardId: open.id } });
  if (open !== undefined) return { paperCardId: open.id, isNew: false };
  const [paperCardId, at] = [parts.ids.next(), parts.clock.now()];
  await tx.sql.rows(statements.addPaperCard, [
    ...[paperCardId, classId, seatId, revision, previousHash, reason],
    ...[parts.ids.seed(), officeOf(actor).accountId, at],
  ]);
  const body = { classId, seatId, cardId, paperCardId, revision };
  await appendLine(parts, tx, { showId: card.showId, type: 'card.paper-opened', body, at });
  return { paperCardId, isNew: true };
}

type Place = Pick<PaperCard, 'revision' | 'previousHash' | 'reason'>;

/** Which revision it becomes: the first, or the one after the revision that it says it amends. */
function follows({ revision, contentHash }: CardRecord, { reason, previousHash }: TakingUp): Place {
  if (revision === null || contentHash === null) {
    if (previousHash !== undefined) throw problem('card_not_signed');
    return { revision: 1, previousHash: null, reason: reason ?? null };
  }
  if (previousHash === undefined) throw problem('card_already_signed', { more: { revision } });
  if (reason === undefined) {
    throw problem('reason_missing', { errors: [{ field: '/reason', message: 'say why the card changes' }] });
  }
  if (previousHash !== contentHash) {
    const detail = `The last revision is number ${revision}.`;
    throw problem('stale_revision', { detail, more: { revision, contentHash } });
  }
  return { revision: revision + 1, previousHash, reason };
}
