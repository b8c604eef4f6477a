/** All that is on record about a class, as tabulating, posting and reading need it. */
import { type SignedCard, signedCards } from '../cards/index.ts';
import type { TieDecision } from '../engine/placing/types.ts';
import type { LedgerHead } from '../evidence/index.ts';
import {
  type LoadedClass,
  type LoadedSeat,
  loadClass,
  lockOpenClass,
  type PublicEntry,
  publicEntries,
} from '../office/index.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { PostingBody } from './posting-body.ts';
import { readLastPosting, readMark, readRulings } from './statements.ts';

export interface ClassRecords {
  readonly ofClass: LoadedClass;
  /** Names in the form that is public. */
  readonly entries: readonly PublicEntry[];
  readonly rulings: readonly RulingOnRecord[];
  readonly lastPosting: PostingOnRecord | undefined;
}

/** With what a tabulation is made of; what was posted has its own cards. */
export interface RecordsWithCards extends ClassRecords {
  /** The last signed card of each judge who has not withdrawn. */
  readonly signed: readonly SignedCard[];
}

export interface RulingOnRecord {
  readonly id: string;
  readonly kind: TieDecision['kind'];
  readonly decision: { readonly order: readonly (readonly string[])[] };
  readonly decidedBy: string;
  readonly why: string;
  readonly ruledAt: Date;
}

export interface PostingSummary {
  readonly id: string;
  readonly classId: string;
  readonly version: number;
  readonly state: 'provisional' | 'official' | 'corrected';
  readonly reason: string | null;
  readonly postedAt: Date;
  readonly bodyHash: string;
  readonly ruleHash: string;
  /** Head of the show's ledger when it was posted. */
  readonly ledger: LedgerHead;
  /** As the service signed it. */
  readonly jws: string;
}

export interface PostingOnRecord extends PostingSummary {
  readonly body: PostingBody;
}

/** What can be read from: the database itself, or a transaction. */
export type Reader = Pick<Transaction, 'prisma' | 'sql'>;

/** Throws not_found. */
export async function loadClassRecords(reader: Reader, classId: string): Promise<ClassRecords> {
  const ofClass = await loadClass(reader, classId);
  if (ofClass === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  return {
    ofClass,
    entries: await publicEntries(reader, classId),
    rulings: await reader.sql.rows<RulingOnRecord>(readRulings, [classId]),
    lastPosting: await reader.sql.row<PostingOnRecord>(readLastPosting, [classId]),
  };
}

/** The same with the signed cards. Throws not_found. */
export async function loadWithCards(reader: Reader, classId: string): Promise<RecordsWithCards> {
  const records = await loadClassRecords(reader, classId);
  return { ...records, signed: (await signedCards(reader, classId)).signed };
}

/**
 * The records of an open class with its signed cards, which nobody else changes until the transaction ends.
 * Throws not_found, class_not_open.
 */
export async function takeClassRecords(tx: Transaction, classId: string): Promise<RecordsWithCards> {
  const found = await tx.sql.row<{ showId: string }>(readMark, [classId]);
  if (found === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  await lockOpenClass(tx, found.showId, classId);
  return loadWithCards(tx, classId);
}

/** The judges whose cards count, in the order of the panel. */
export const sittingJudges = ({ ofClass }: ClassRecords): LoadedSeat[] =>
  ofClass.seats.filter(({ withdrawn }) => !withdrawn);
