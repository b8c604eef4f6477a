/** A judge signs her card: from then on it is evidence. */
import type { Actor } from '../access/index.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { type Fingerprinted, fingerprinted } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { type CardRecord, cardForWriting, draftGoesOf, draftOrderOf, entriesOf } from './card-record.ts';
import { mustBeSignable } from './check-content.ts';
import { contentFromDrafts, differencesFromDraft } from './draft-content.ts';
import { openTiesOn } from './open-ties.ts';
import { revisionOf, type SignedRevision, writeRevision } from './revisions.ts';

export interface Signature {
  readonly cardId: string;
  readonly actor: Actor;
  /** By the judge's phone. */
  readonly signedAt: Date;
  /** What she saw when she signed; where it is not what is signed, nothing is. */
  readonly contentHash?: string;
  /** The whole card; left out: as it stands in the drafts. */
  readonly content?: CardContent;
}

export interface Signed {
  readonly card: CardRecord;
  readonly revision: SignedRevision;
  /** Ties on her card that she has left open, by class entry. */
  readonly openTies: readonly (readonly string[])[];
}

/**
 * Keeps revision 1 of the card, or answers with it where the same was signed before.
 * Throws card_already_signed, card_differs_from_draft, and what `mustBeSignable` throws.
 */
export async function signCard(parts: AppParts, tx: SqlTransaction, signature: Signature): Promise<Signed> {
  const card = await cardForWriting(tx, signature.cardId, signature.actor);
  if (card.revision !== null) return signedBefore(tx, card, signature);
  const entries = await entriesOf(tx, card);
  const goes = await draftGoesOf(tx, card);
  const draft = contentFromDrafts({ entries, goes, order: await draftOrderOf(tx, card) });
  const signed = contentToSign(draft, signature);
  const { content } = signed;
  const openTies = mustBeSignable({
    card,
    entries,
    content,
    under: signature.content === undefined ? '' : '/content',
  });
  const added = { signed, signedAt: signature.signedAt, previous: null, reason: null };
  return { card, openTies, revision: await writeRevision(parts, tx, { card, added }) };
}

function contentToSign(draft: CardContent, { content, contentHash }: Signature): Fingerprinted<CardContent> {
  const differences = content === undefined ? [] : differencesFromDraft(draft, content);
  if (differences.length > 0) {
    const detail = `Differences between the draft and what was sent: ${differences.length}.`;
    throw problem('card_differs_from_draft', { detail, more: { differences } });
  }
  const signed = fingerprinted(content ?? draft);
  const { hash } = signed;
  if (contentHash !== undefined && contentHash !== hash) {
    const detail = 'The fingerprint of what the judge saw is not that of the card.';
    throw problem('card_differs_from_draft', { detail, more: { contentHash: hash, sentHash: contentHash } });
  }
  return signed;
}

/** The answer to a signature that came in before got lost: the phone asks again, and hears the same. */
async function signedBefore(tx: SqlTransaction, card: CardRecord, signature: Signature): Promise<Signed> {
  const revision = await revisionOf(tx, card, 1);
  if (revision === undefined) throw new Error('a signed card without its first revision');
  if (isSame(revision, signature)) return { card, revision, openTies: openTiesOn(card, revision.content) };
  const { contentHash, signedAt } = revision;
  const more = { revision: card.revision, contentHash, signedAt: signedAt.toISOString() };
  throw problem('card_already_signed', { more });
}

function isSame(revision: SignedRevision, { content, contentHash, signedAt }: Signature): boolean {
  if (content !== undefined) return fingerprinted(content).hash === revision.contentHash;
  if (contentHash !== undefined) return contentHash === revision.contentHash;
  return signedAt.getTime() === revision.signedAt.getTime();
}
