/** A signed card is amended: a new revision, with a reason, that names the one before. The old one stays readable. */
import type { Actor } from '../access/index.ts';
import type { SignedCard } from '../evidence/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { fingerprinted } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { cardForWriting, entriesOf } from './card-record.ts';
import { mustBeSignable } from './check-content.ts';
import { openTiesOn } from './open-ties.ts';
import { readSignature } from './read-signature.ts';
import { revisionOf, type SignedRevision, writeRevision } from './revisions.ts';
import type { Signed } from './sign-card.ts';

export interface Amendment {
  readonly cardId: string;
  readonly actor: Actor;
  /** The amended card as the judge's phone signed it. */
  readonly jws: string;
}

/**
 * Keeps the next revision, or answers with the last one where the same amendment came in before. It is allowed
 * after the result was posted, too: then that posting is out of date, and a correction is due. Throws
 * reason_missing, card_not_signed, stale_revision, amendment_changes_nothing, and what `readSignature` and
 * `mustBeSignable` throw.
 */
export async function amendCard(parts: AppParts, tx: SqlTransaction, amendment: Amendment): Promise<Signed> {
  const card = await cardForWriting(tx, amendment.cardId, amendment.actor);
  const { statement, phone } = await readSignature(tx, { ...amendment, card });
  const { content } = statement;
  const reason = reasonOf(statement);
  if (card.revision === null) throw problem('card_not_signed');
  const last = await revisionOf(tx, card, card.revision);
  if (last === undefined) throw new Error('a signed card without its last revision');
  const signed = fingerprinted(content);
  const sent = { ...statement, contentHash: signed.hash };
  if (isSame(last, sent)) return { card, revision: last, openTies: openTiesOn(card, last.content) };
  mustFollow(last, sent);
  const entries = await entriesOf(tx, card);
  const openTies = mustBeSignable({ card, entries, content, under: '/content' });
  const previous = { revision: last.revision, contentHash: last.contentHash };
  const added = { signed, signedAt: new Date(statement.signedAt), previous, reason, phone };
  return { card, openTies, revision: await writeRevision(parts, tx, { card, added }) };
}

function reasonOf({ reason }: SignedCard): string {
  if (reason !== null && reason.trim() !== '') return reason;
  throw problem('reason_missing', { errors: [{ field: '/reason', message: 'say why the card changes' }] });
}

type Sent = Pick<SignedCard, 'revision' | 'previousHash' | 'reason'> & { readonly contentHash: string };

function isSame(last: SignedRevision, sent: Sent): boolean {
  return (
    last.revision === sent.revision &&
    last.previousHash === sent.previousHash &&
    last.reason === sent.reason &&
    last.contentHash === sent.contentHash
  );
}

function mustFollow(last: SignedRevision, { revision, previousHash, contentHash }: Sent): void {
  if (last.contentHash !== previousHash || revision !== last.revision + 1) {
    throw problem('stale_revision', {
      detail: `The last revision is number ${last.revision}.`,
      more: { revision: last.revision, contentHash: last.contentHash },
    });
  }
  if (last.contentHash === contentHash) throw problem('amendment_changes_nothing');
}
