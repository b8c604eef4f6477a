/** Reading a show's ledger from any line on. */
import type { Sql, Statement } from '../platform/sql.ts';

export interface LedgerLine {
  /** 1, 2, 3 ... of the show, without a gap. */
  readonly sequence: number;
  readonly type: string;
  readonly body: Readonly<Record<string, unknown>>;
  readonly at: Date;
}

const linesAfter: Statement = {
  name: 'ledger.lines-after',
  text: `
    SELECT sequence, type, body, at FROM ledger_line
    WHERE show_id = $1::uuid AND sequence > $2 ORDER BY sequence LIMIT $3`,
};
const lastSequence: Statement = {
  name: 'ledger.last-sequence',
  text: 'SELECT sequence FROM ledger_head WHERE show_id = $1::uuid',
};

interface Stretch {
  readonly showId: string;
  /** 0: from the first line. */
  readonly after: number;
  readonly limit: number;
}

export function readLines(sql: Sql, { showId, after, limit }: Stretch): Promise<LedgerLine[]> {
  return sql.rows<LedgerLine>(linesAfter, [showId, after, limit]);
}

/** Number of the show's last line; 0 where it has none. */
export async function lastLineOf(sql: Sql, showId: string): Promise<number> {
  return (await sql.row<{ sequence: number }>(lastSequence, [showId]))?.sequence ?? 0;
}
