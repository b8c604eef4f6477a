/** The office answers, and takes words out that must not stay. */
import { appendLine } from '../ledger/index.ts';
import { eraseQueryWords } from '../office/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { answerOf } from './query-record.ts';
import type { AnswerBody, NewAnswer } from './query-schemas.ts';

const takeQuery: Statement = {
  name: 'queries.take',
  text: `
    SELECT show_id AS "showId", class_id AS "classId", state, erased_at AS "erasedAt" FROM query
    WHERE id = $1::uuid FOR NO KEY UPDATE`,
};

interface TakenQuery {
  readonly showId: string;
  readonly classId: string;
  readonly state: string;
  readonly erasedAt: Date | null;
}

async function take(tx: Transaction, queryId: string): Promise<TakenQuery> {
  const found = await tx.sql.row<TakenQuery>(takeQuery, [queryId]);
  if (found === undefined) throw problem('not_found', { detail: 'There is no such query.' });
  return found;
}

interface Answering {
  readonly queryId: string;
  readonly answer: NewAnswer;
  /** The office account. */
  readonly answeredBy: string;
}

/** A further answer may follow the first. Throws not_found, query_closed once it was withdrawn or erased. */
export async function answerQuery(
  parts: AppParts,
  tx: Transaction,
  { queryId, answer, answeredBy }: Answering,
): Promise<AnswerBody> {
  const { showId, state, erasedAt } = await take(tx, queryId);
  if (state === 'withdrawn' || erasedAt !== null) throw problem('query_closed');
  const at = parts.clock.now();
  const row = await tx.prisma.queryAnswer.create({
    data: { id: parts.ids.next(), queryId, ...answer, answeredBy, answeredAt: at },
  });
  await tx.prisma.classQuery.update({ where: { id: queryId }, data: { state: 'answered' } });
  await appendLine(parts, tx, {
    ...{ showId, type: 'query.answered', at },
    body: { queryId, answerId: row.id },
  });
  return { ...answerOf(row), queryId };
}

/** Erased twice it is erased once. Throws not_found. */
export async function eraseQuery(
  parts: AppParts,
  tx: Transaction,
  queryId: string,
): Promise<{ id: string; erasedAt: string }> {
  const { showId, classId, erasedAt } = await take(tx, queryId);
  const at = erasedAt ?? parts.clock.now();
  if (erasedAt === null) {
    await eraseQueryWords(tx, { queryIds: [queryId], at });
    await appendLine(parts, tx, { showId, type: 'query.erased', body: { queryId, classId }, at });
  }
  return { id: queryId, erasedAt: at.toISOString() };
}
