import { problem } from '../platform/problems/index.ts';
import type { Sql, Statement } from '../platform/sql.ts';

const findShow: Statement = {
  name: 'ledger.find-show',
  text: 'SELECT 1 AS found FROM show WHERE id = $1::uuid',
};

/** Throws not_found. */
export async function mustBeShow(sql: Sql, showId: string): Promise<void> {
  if ((await sql.row(findShow, [showId])) === undefined) throw problem('not_found');
}
