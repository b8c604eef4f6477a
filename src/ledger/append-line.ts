/** One line per change of a show's records, in the same transaction as the change. */

import type { SqlTransaction } from '../platform/database.ts';
import { json, type Statement } from '../platform/sql.ts';
import type { LineType } from './event-catalogue.ts';

export interface NewLine {
  readonly showId: string;
  readonly type: LineType;
  /** Ids and numbers, never names. */
  readonly body: Readonly<Record<string, unknown>>;
  /** When it happened, by the service's clock. */
  readonly at: Date;
}

/** Locks the show's head until the transaction ends, so that numbers have no gap and follow the commits. */
const append: Statement = {
  name: 'ledger.append',
  text: `
    WITH head AS (
      INSERT INTO ledger_head (show_id, sequence) VALUES ($1::uuid, 1)
      ON CONFLICT (show_id) DO UPDATE SET sequence = ledger_head.sequence + 1
      RETURNING sequence
    ), line AS (
      INSERT INTO ledger_line (show_id, sequence, type, body, at)
      SELECT $1::uuid, sequence, $2, $3::jsonb, $4 FROM head
      RETURNING sequence
    )
    SELECT sequence, pg_notify('ledger_line', $1::uuid || ' ' || sequence) FROM line`,
};

/** Appends the next line of the show's ledger and returns its number. Take it as the last step: it locks. */
export async function appendLine(tx: SqlTransaction, line: NewLine): Promise<number> {
  const { showId, type, body, at } = line;
  const appended = await tx.sql.row<{ sequence: number }>(append, [showId, type, json(body), at]);
  if (appended === undefined) throw new Error('the ledger did not take the line');
  return appended.sequence;
}
