/** Whoever asked reads her query by its code, and may take it back while it is open. */
import { appendLine } from '../ledger/index.ts';
import { eraseQueryWords, isPractice, shownName } from '../office/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { hashOfFollowCode } from './follow-code.ts';
import { answerOf, queryOf, type Reader, withAll } from './query-record.ts';
import type { FollowedBody } from './query-schemas.ts';

/** Throws follow_code_unknown. */
export async function readFollowed({ prisma }: Reader, code: string): Promise<FollowedBody> {
  const row = await prisma.classQuery.findUnique({
    where: { followHash: hashOfFollowCode(code) },
    include: { ...withAll, show: { select: { id: true, name: true, timeZone: true, kind: true } } },
  });
  if (row === null) throw problem('follow_code_unknown');
  const { id, timeZone } = row.show;
  const show = { id, timeZone, name: shownName(row.show), practice: isPractice(row.show) };
  return { show, ...queryOf(row), answers: row.answers.map(answerOf) };
}

const takeQuery: Statement = {
  name: 'queries.take-by-follow-hash',
  text: `
    SELECT id, show_id AS "showId", class_id AS "classId", state FROM query
    WHERE follow_hash = $1 FOR NO KEY UPDATE`,
};

/**
 * Its words go at once; that there was a query stays. Withdrawn twice it is withdrawn once. Throws
 * follow_code_unknown, query_closed where it was answered.
 */
export async function withdrawQuery(parts: AppParts, tx: Transaction, code: string): Promise<FollowedBody> {
  const found = await tx.sql.row<{ id: string; showId: string; classId: string; state: string }>(takeQuery, [
    hashOfFollowCode(code),
  ]);
  if (found === undefined) throw problem('follow_code_unknown');
  const { id, showId, classId, state } = found;
  if (state === 'answered') throw problem('query_closed');
  if (state === 'open') {
    const at = parts.clock.now();
    await eraseQueryWords(tx, { queryIds: [id], at });
    await tx.prisma.classQuery.update({ where: { id }, data: { withdrawnAt: at } });
    const body = { queryId: id, classId };
    await appendLine(parts, tx, { showId, type: 'query.withdrawn', body, at });
  }
  return readFollowed(tx, code);
}
