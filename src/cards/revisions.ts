/** Signed revisions of a card: written once, each naming the one before, and never changed. */
import type { CardContent } from '../engine/sheets/card-types.ts';
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { type Fingerprinted, hashOfText } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import type { CardRecord } from './card-record.ts';
import * as statements from './card-statements.ts';

export interface RevisionHead {
  readonly id: string;
  readonly revision: number;
  readonly contentHash: string;
  /** Of the revision that it amends; `null`: the first. */
  readonly previousHash: string | null;
  readonly signedAt: Date;
  readonly receivedAt: Date;
  /** Why it was amended; `null`: the first. */
  readonly reason: string | null;
  /** `null`: the judge signed it on her phone. */
  readonly paperCardId: string | null;
  /** Of a paper card: who entered it, then who checked it. */
  readonly paperAccountIds: readonly string[] | null;
}

export interface SignedRevision extends RevisionHead {
  readonly content: CardContent;
  /** As the phone signed it; `null`: from paper. */
  readonly jws: string | null;
  readonly phoneId: string | null;
}

interface Added {
  readonly signed: Fingerprinted<CardContent>;
  readonly signedAt: Date;
  readonly previous: { readonly revision: number; readonly contentHash: string } | null;
  readonly reason: string | null;
}

/** What vouches for the card: the signature of the judge's phone, or two people who read it off paper. */
export type NewRevision = Added & ({ readonly phone: PhoneSignature } | { readonly paper: AcceptedPaper });

export interface PhoneSignature {
  readonly phoneId: string;
  /** As it came. */
  readonly jws: string;
}

export interface AcceptedPaper {
  readonly paperCardId: string;
  /** Office accounts; two different ones. */
  readonly enteredBy: string;
  readonly checkedBy: string;
  /** Fingerprint of content and salt. */
  readonly saltedHash: string;
}

/** Keeps the revision and its ledger line, which tells everyone who listens. Call it last: the ledger locks. */
export async function writeRevision(
  parts: Pick<AppParts, 'clock' | 'ids' | 'keys'>,
  tx: SqlTransaction,
  { card, added }: { readonly card: CardRecord; readonly added: NewRevision },
): Promise<SignedRevision> {
  const { content, text, hash } = added.signed;
  const written: SignedRevision = {
    id: parts.ids.next(),
    revision: (added.previous?.revision ?? 0) + 1,
    contentHash: hash,
    previousHash: added.previous?.contentHash ?? null,
    signedAt: added.signedAt,
    receivedAt: parts.clock.now(),
    reason: added.reason,
    ...originOf(added),
    content,
  };
  await tx.sql.rows(statements.addRevision, [
    ...[written.id, card.id, written.revision, text, written.contentHash, written.previousHash],
    ...[card.seatId, written.signedAt, written.receivedAt, written.reason],
    ...[written.jws, written.phoneId, written.paperCardId],
  ]);
  const line = lineOf(card, { written, added });
  await appendLine(parts, tx, { showId: card.showId, ...line, at: written.receivedAt });
  return written;
}

type Origin = Pick<SignedRevision, 'jws' | 'phoneId' | 'paperCardId' | 'paperAccountIds'>;

function originOf(added: NewRevision): Origin {
  if ('phone' in added) return { ...added.phone, paperCardId: null, paperAccountIds: null };
  const { paperCardId, enteredBy, checkedBy } = added.paper;
  return { jws: null, phoneId: null, paperCardId, paperAccountIds: [enteredBy, checkedBy] };
}

/**
 * Everyone hears the line, so it holds no fingerprint of the content, from which a short ranking could be guessed.
 * That of the whole JWS tells nothing: each ES256 signature is another one (RFC 7518, section 3.4).
 */
function lineOf(
  { id: cardId, classId, seatId }: CardRecord,
  { written, added }: { readonly written: SignedRevision; readonly added: NewRevision },
) {
  const { id: revisionId, revision } = written;
  const body = { classId, seatId, cardId, revisionId, revision };
  if ('paper' in added) {
    const { enteredBy, checkedBy, saltedHash, paperCardId } = added.paper;
    return {
      type: 'card.paper-accepted' as const,
      body: { ...body, paperCardId, enteredBy, checkedBy, saltedHash },
    };
  }
  const type = revision === 1 ? ('card.signed' as const) : ('card.amended' as const);
  return { type, body: { ...body, phoneId: added.phone.phoneId, jwsHash: hashOfText(added.phone.jws) } };
}

export const revisionOf = (
  tx: SqlTransaction,
  { id }: CardRecord,
  revision: number,
): Promise<SignedRevision | undefined> => tx.sql.row<SignedRevision>(statements.readRevision, [id, revision]);

export const revisionsOf = (tx: SqlTransaction, { id }: CardRecord): Promise<RevisionHead[]> =>
  tx.sql.rows<RevisionHead>(statements.readRevisions, [id]);
