/** Reading a ledger from any line on. */
import type { LedgerHead } from '../evidence/index.ts';
import type { Sql, Statement } from '../platform/sql.ts';
import type { SealedLine } from './chain.ts';

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
    WHERE ledger_id = $1::uuid AND sequence > $2 ORDER BY sequence LIMIT $3`,
};
const sealedAfter: Statement = {
  name: 'ledger.sealed-lines-after',
  text: `
    SELECT ledger_id AS "ledgerId", sequence, type, body, actor, at, previous_hash AS "previousHash", hash, seal
    FROM ledger_line WHERE ledger_id = $1::uuid AND sequence > $2 ORDER BY sequence LIMIT $3`,
};
const head: Statement = {
  name: 'ledger.head',
  text: 'SELECT sequence, hash FROM ledger_head WHERE ledger_id = $1::uuid AND sequence > 0',
};

interface Stretch {
  /** Or `ofTheService`. */
  readonly showId: string;
  /** 0: from the first line. */
  readonly after: number;
  readonly limit: number;
}

export function readLines(sql: Sql, { showId, after, limit }: Stretch): Promise<LedgerLine[]> {
  return sql.rows<LedgerLine>(linesAfter, [showId, after, limit]);
}

/** As they are hashed and sealed. */
export async function readSealedLines(sql: Sql, { showId, after, limit }: Stretch): Promise<SealedLine[]> {
  const rows = await sql.rows<Omit<SealedLine, 'at'> & { at: Date }>(sealedAfter, [showId, after, limit]);
  return rows.map((row) => ({ ...row, at: row.at.toISOString() }));
}

/** The last line; `undefined` where there is none. */
export const headOf = (sql: Sql, ledgerId: string): Promise<LedgerHead | undefined> =>
  sql.row<LedgerHead>(head, [ledgerId]);

/** Number of the last line; 0 where there is none. */
export const lastLineOf = async (sql: Sql, showId: string): Promise<number> =>
  (await headOf(sql, showId))?.sequence ?? 0;
