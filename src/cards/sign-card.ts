/** A judge signs her card: from then on it is evidence. */
import type { Actor } from '../access/index.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { SignedCard } from '../evidence/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { fingerprint, fingerprinted } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { type CardRecord, cardForWriting, draftGoesOf, draftOrderOf, entriesOf } from './card-record.ts';
import { mustBeSignable } from './check-content.ts';
import { contentFromDrafts, differencesFromDraft } from './draft-content.ts';
import { openTiesOn } from './open-ties.ts';
import { readSignature } from './read-signature.ts';
import { revisionOf, type SignedRevision, writeRevision } from './revisions.ts';

export interface Signature {
  readonly cardId: string;
  readonly actor: Actor;
  /** The card as the judge's phone signed it. */
  readonly jws: string;
}

export interface Signed {
  readonly card: CardRecord;
  readonly revision: SignedRevision;
  /** Ties on her card that she has left open, by class entry. */
  readonly openTies: readonly (readonly string[])[];
}

/**
 * Keeps revision 1 of the card, or answers with it where the same was signed before. Throws card_already_signed,
 * card_differs_from_draft, and what `readSignature` and `mustBeSignable` throw.
 */
export async function signCard(parts: AppParts, tx: SqlTransaction, signature: Signature): Promise<Signed> {
  const card = await cardForWriting(tx, signature.cardId, signature.actor);
  const { statement, phone } = await readSignature(tx, { ...signature, card });
  mustBeFirst(statement);
  const { content } = statement;
  if (card.revision !== null) return signedBefore(tx, card, content);
  const entries = await entriesOf(tx, card);
  const goes = await draftGoesOf(tx, card);
  mustAgree(contentFromDrafts({ entries, goes, order: await draftOrderOf(tx, card) }), content);
  const openTies = mustBeSignable({ card, entries, content, under: '/content' });
  const signed = fingerprinted(content);
  const added = { signed, signedAt: new Date(statement.signedAt), previous: null, reason: null, phone };
  return { card, openTies, revision: await writeRevision(parts, tx, { card, added }) };
}

function mustBeFirst({ revision, previousHash, reason }: SignedCard): void {
  if (revision === 1 && previousHash === null && reason === null) return;
  const message = 'a first signature has revision 1, and neither previousHash nor reason';
  throw problem('signature_of_other_card', { errors: [{ field: '/revision', message }] });
}

/** The judge signs what she saw. What her scribe saved since must be looked at first. */
function mustAgree(draft: CardContent, content: CardContent): void {
  const differences = differencesFromDraft(draft, content);
  if (differences.length === 0) return;
  const detail = `Differences between the draft and what was signed: ${differences.length}.`;
  throw problem('card_differs_from_draft', { detail, more: { differences } });
}

/** The answer to a signature that came in before got lost: the phone asks again, and hears the same. */
async function signedBefore(tx: SqlTransaction, card: CardRecord, content: CardContent): Promise<Signed> {
  const revision = await revisionOf(tx, card, 1);
  if (revision === undefined) throw new Error('a signed card without its first revision');
  if (revision.jws !== null && fingerprint(content) === revision.contentHash)
    return { card, revision, openTies: openTiesOn(card, revision.content) };
  const { contentHash, signedAt } = revision;
  const more = { revision: card.revision, contentHash, signedAt: signedAt.toISOString() };
  throw problem('card_already_signed', { more });
}
