/** What a family wrote to the office about a result is personal, and goes with an erasure. */
import type { SqlTransaction } from '../../platform/database.ts';
import { forgetAnswers } from '../../platform/http/answer-once.ts';
import type { Statement } from '../../platform/sql.ts';

const takeOutQueries: Statement = {
  name: 'office.take-out-query-words',
  text: `
    UPDATE query SET words = NULL, reached_by = NULL, erased_at = $2,
                     state = CASE state WHEN 'open' THEN 'withdrawn' ELSE state END
    WHERE id = ANY ($1::uuid[]) AND erased_at IS NULL RETURNING id`,
};
const takeOutAnswers: Statement = {
  name: 'office.take-out-answer-words',
  text: 'UPDATE query_answer SET words = NULL WHERE query_id = ANY ($1::uuid[]) RETURNING id',
};
const findQueries: Statement = {
  name: 'office.find-queries-of-exhibitor',
  text: `
    SELECT query.id FROM query JOIN entry ON entry.id = query.entry_id
    WHERE entry.exhibitor_id = $1::uuid AND query.erased_at IS NULL`,
};

interface Erasing {
  readonly queryIds: readonly string[];
  readonly at: Date;
}

/** The words of queries and of their answers, also where they are kept for a request sent twice; open ones are closed. */
export async function eraseQueryWords(tx: SqlTransaction, { queryIds, at }: Erasing): Promise<number> {
  const erased = await tx.sql.rows<{ id: string }>(takeOutQueries, [queryIds, at]);
  const answers = await tx.sql.rows<{ id: string }>(takeOutAnswers, [queryIds]);
  await forgetAnswers(
    tx,
    [...erased, ...answers].map(({ id }) => id),
  );
  return erased.length;
}

/** Of queries that name a back number of the exhibitor. Returns how many there were. */
export async function eraseQueriesOf(
  tx: SqlTransaction,
  { exhibitorId, at }: { readonly exhibitorId: string; readonly at: Date },
): Promise<number> {
  const found = await tx.sql.rows<{ id: string }>(findQueries, [exhibitorId]);
  return eraseQueryWords(tx, { queryIds: found.map(({ id }) => id), at });
}
