/** Signed revisions of a card: written once, each naming the one before, and never changed. */
import type { CardContent } from '../engine/sheets/card-types.ts';
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { Fingerprinted } from '../platform/canonical-json.ts';
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
}

export interface SignedRevision extends RevisionHead {
  readonly content: CardContent;
}

interface NewRevision {
  readonly signed: Fingerprinted<CardContent>;
  readonly signedAt: Date;
  readonly previous: { readonly revision: number; readonly contentHash: string } | null;
  readonly reason: string | null;
}

/** Keeps the revision and its ledger line, which tells everyone who listens. Call it last: the ledger locks. */
export async function writeRevision(
  parts: Pick<AppParts, 'clock' | 'ids'>,
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
    content,
  };
  await tx.sql.rows(statements.addRevision, [
    ...[written.id, card.id, written.revision, text, written.contentHash, written.previousHash],
    ...[card.seatId, written.signedAt, written.receivedAt, written.reason],
  ]);
  await appendLine(tx, { showId: card.showId, ...lineOf(card, written), at: written.receivedAt });
  return written;
}

/** Without the fingerprint: everyone hears the line, and of a short ranking it could be guessed from that. */
function lineOf({ id: cardId, classId, seatId }: CardRecord, { id: revisionId, revision }: SignedRevision) {
  const body = { classId, seatId, cardId, revisionId };
  if (revision === 1) return { type: 'card.signed' as const, body };
  return { type: 'card.amended' as const, body: { ...body, revision } };
}

export const revisionOf = (
  tx: SqlTransaction,
  { id }: CardRecord,
  revision: number,
): Promise<SignedRevision | undefined> => tx.sql.row<SignedRevision>(statements.readRevision, [id, revision]);

export const revisionsOf = (tx: SqlTransaction, { id }: CardRecord): Promise<RevisionHead[]> =>
  tx.sql.rows<RevisionHead>(statements.readRevisions, [id]);
