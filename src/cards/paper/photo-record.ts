/** The photo of a paper card, stored and read. */
import { type Actor, officeOf } from '../../access/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { type ProblemCode, problem } from '../../platform/problems/index.ts';
import { type PaperCard, paperCardForReading, paperCardLocked } from './paper-record.ts';
import type { PaperCardView } from './paper-schemas.ts';
import * as statements from './paper-statements.ts';
import { type Photo, type PhotoFault, type PhotoType, readPhoto } from './photo.ts';

export type PhotoHead = NonNullable<PaperCardView['photo']>;

interface Row extends Omit<PhotoHead, 'paperCardId' | 'storedAt'> {
  readonly storedAt: Date;
}

export async function photoHeadOf(tx: SqlTransaction, paperCardId: string): Promise<PhotoHead | null> {
  const row = await tx.sql.row<Row>(statements.readPhotoHead, [paperCardId]);
  return row === undefined ? null : { paperCardId, ...row, storedAt: row.storedAt.toISOString() };
}

/** Made before the transaction: nobody waits for it with a lock. Throws photo_of_another_kind and its kin. */
export async function photoOutOf(bytes: Uint8Array, type: PhotoType): Promise<Photo> {
  const read = await readPhoto(bytes, type);
  if (read.ok) return read.photo;
  throw problem(refusals[read.fault]);
}

const refusals = {
  'another-kind': 'photo_of_another_kind',
  'too-many-pixels': 'photo_too_many_pixels',
  moves: 'photo_moves',
  unreadable: 'photo_unreadable',
} as const satisfies Record<PhotoFault, ProblemCode>;

interface Storing {
  readonly paperCardId: string;
  readonly actor: Actor;
  readonly photo: Photo;
}

/**
 * The same photo again is stored once. A better one takes the place of the one before, until the card is accepted.
 * Throws not_found, other_show, paper_card_closed.
 */
export async function storePhoto(
  parts: AppParts,
  tx: SqlTransaction,
  { paperCardId, actor, photo }: Storing,
): Promise<void> {
  const paper = await paperCardLocked(tx, paperCardId, actor);
  mustTakePhotos(paper);
  const before = await photoHeadOf(tx, paperCardId);
  if (before?.hash === photo.hash) return;
  if (before !== null && paper.status === 'accepted') {
    throw problem('paper_card_closed', { detail: 'It is accepted, and its photo stays.' });
  }
  const { bytes, mediaType, hash, width, height } = photo;
  const at = parts.clock.now();
  await tx.sql.rows(statements.savePhoto, [
    ...[paperCardId, bytes, mediaType, hash, width, height],
    ...[officeOf(actor).accountId, at],
  ]);
  const { classId, seatId, cardId, showId } = paper;
  const body = { classId, seatId, cardId, paperCardId, hash };
  await appendLine(parts, tx, { showId, type: 'card.photo-stored', body, at });
}

/** Also of a paper card that was accepted: the paper is often photographed last. */
export function mustTakePhotos({ status }: PaperCard): void {
  if (status === 'withdrawn') throw problem('paper_card_closed', { detail: 'It is withdrawn.' });
}

interface StoredBytes {
  readonly bytes: Buffer;
  readonly hash: string;
}

/** Throws not_found, other_show, other_seat. */
export async function photoBytesOf(
  tx: SqlTransaction,
  paperCardId: string,
  actor: Actor,
): Promise<StoredBytes> {
  await paperCardForReading(tx, paperCardId, actor);
  const row = await tx.sql.row<StoredBytes>(statements.readPhotoBytes, [paperCardId]);
  if (row === undefined) throw problem('not_found', { detail: 'There is no photo of this paper card.' });
  return row;
}
