/** Postings and rulings as they were recorded. */
import { isPractice } from '../office/index.ts';
import { problem } from '../platform/problems/index.ts';
import type { Sql } from '../platform/sql.ts';
import type { PostingOnRecord, PostingSummary, RulingOnRecord } from './class-records.ts';
import { readKind, readMark, readPosting, readPostings, readRulings } from './statements.ts';

/** First version first. Throws not_found. */
export async function listPostings(sql: Sql, classId: string): Promise<PostingSummary[]> {
  await mustExist(sql, classId);
  return sql.rows<PostingSummary>(readPostings, [classId]);
}

/** Is the class one of a practice show? Throws not_found. */
export async function isOfPractice(sql: Sql, classId: string): Promise<boolean> {
  const kind = await sql.row<{ kind: string }>(readKind, [classId]);
  if (kind === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  return isPractice(kind);
}

/** In the order in which they were recorded. */
export function listRulings(sql: Sql, classId: string): Promise<RulingOnRecord[]> {
  return sql.rows<RulingOnRecord>(readRulings, [classId]);
}

/** Throws not_found. */
export async function readOnePosting(sql: Sql, postingId: string): Promise<PostingOnRecord> {
  const posting = await sql.row<PostingOnRecord>(readPosting, [postingId]);
  if (posting === undefined) throw problem('not_found', { detail: 'There is no such posting.' });
  return posting;
}

async function mustExist(sql: Sql, classId: string): Promise<void> {
  const mark = await sql.row(readMark, [classId]);
  if (mark === undefined) throw problem('not_found', { detail: 'There is no such class.' });
}
