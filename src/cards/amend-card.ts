/** A signed card is amended: a new revision, with a reason, that names the one before. The old one stays readable. */
import type { Actor } from '../access/index.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { fingerprinted } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { cardForWriting, entriesOf } from './card-record.ts';
import { mustBeSignable } from './check-content.ts';
import { openTiesOn } from './open-ties.ts';
import { revisionOf, type SignedRevision, writeRevision } from './revisions.ts';
import type { Signed } from './sign-card.ts';

export interface Amendment {
  readonly cardId: string;
  readonly actor: Actor;
  readonly signedAt: Date;
  /** Why; others will read it. */
  readonly reason: string | undefined;
  readonly content: CardContent;
  /** Fingerprint of the revision that is amended. */
  readonly previousHash: string;
}

/**
 * Keeps the next revision, or answers with the last one where the same amendment came in before. It is allowed
 * after the result was posted, too: then that posting is out of date, and a correction is due.
 * Throws reason_missing, card_not_signed, stale_revision, amendment_changes_nothing, and what `mustBeSignable` throws.
 */
export async function amendCard(parts: AppParts, tx: SqlTransaction, amendment: Amendment): Promise<Signed> {
  const { content, previousHash, signedAt } = amendment;
  const signed = fingerprinted(content);
  const reason = reasonOf(amendment);
  const card = await cardForWriting(tx, amendment.cardId, amendment.actor);
  if (card.revision === null) throw problem('card_not_signed');
  const last = await revisionOf(tx, card, card.revision);
  if (last === undefined) throw new Error('a signed card without its last revision');
  if (isSame(last, { previousHash, reason, contentHash: signed.hash })) {
    return { card, revision: last, openTies: openTiesOn(card, last.content) };
  }
  mustFollow(last, { previousHash, contentHash: signed.hash });
  const entries = await entriesOf(tx, card);
  const openTies = mustBeSignable({ card, entries, content, under: '/content' });
  const previous = { revision: last.revision, contentHash: previousHash };
  const added = { signed, signedAt, previous, reason };
  return { card, openTies, revision: await writeRevision(parts, tx, { card, added }) };
}

function reasonOf({ reason }: Amendment): string {
  const given = reason?.trim() ?? '';
  if (given !== '') return given;
  throw problem('reason_missing', { errors: [{ field: '/reason', message: 'say why the card changes' }] });
}

interface Sent {
  readonly previousHash: string;
  readonly contentHash: string;
}

function isSame(
  last: SignedRevision,
  { previousHash, reason, contentHash }: Sent & { reason: string },
): boolean {
  return last.previousHash === previousHash && last.reason === reason && last.contentHash === contentHash;
}

function mustFollow(last: SignedRevision, { previousHash, contentHash }: Sent): void {
  if (last.contentHash !== previousHash) {
    throw problem('stale_revision', {
      detail: `The last revision is number ${last.revision}.`,
      more: { revision: last.revision, contentHash: last.contentHash },
    });
  }
  if (last.contentHash === contentHash) throw problem('amendment_changes_nothing');
}
