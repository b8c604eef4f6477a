/** One line per change of a show's records, in the same transaction as the change: chained, sealed, never changed. */
import type { LedgerHead } from '../evidence/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { json, type Statement } from '../platform/sql.ts';
import { sealLine } from './chain.ts';
import type { LineType } from './event-catalogue.ts';
import { senderNow } from './sender.ts';

export interface NewLine {
  /** The show whose ledger it goes to, or `ofTheService`. */
  readonly showId: string;
  readonly type: LineType;
  /** Ids and numbers, never names. */
  readonly body: Readonly<Record<string, unknown>>;
  /** When it happened, by the service's clock. */
  readonly at: Date;
}

/** Locks the head until the transaction ends, so that numbers have no gap and follow the commits. */
const take: Statement = {
  name: 'ledger.take-head',
  text: `
    INSERT INTO ledger_head (ledger_id, sequence) VALUES ($1::uuid, 0)
    ON CONFLICT (ledger_id) DO UPDATE SET sequence = ledger_head.sequence
    RETURNING sequence, hash`,
};

const append: Statement = {
  name: 'ledger.append',
  text: `
    WITH head AS (
      UPDATE ledger_head SET sequence = $2, hash = $7 WHERE ledger_id = $1::uuid
    )
    INSERT INTO ledger_line (ledger_id, sequence, type, body, actor, at, hash, previous_hash, seal)
    VALUES ($1::uuid, $2, $3, $4::jsonb, $5::jsonb, $6, $7, $8, $9)
    RETURNING pg_notify('ledger_line', $1::uuid || ' ' || $2)`,
};

/**
 * The head of a ledger, which nobody else moves until the transaction ends. `sequence` 0 and `hash` null: no line yet.
 */
export async function takeHead(
  tx: SqlTransaction,
  ledgerId: string,
): Promise<{ readonly sequence: number; readonly hash: string | null }> {
  const head = await tx.sql.row<{ sequence: number; hash: string | null }>(take, [ledgerId]);
  if (head === undefined) throw new Error('the ledger has no head');
  return head;
}

/** Appends the next line and returns its number and hash. Take it as the last step: it locks the ledger. */
export async function appendLine(
  { keys }: Pick<AppParts, 'keys'>,
  tx: SqlTransaction,
  { showId: ledgerId, type, body, at }: NewLine,
): Promise<LedgerHead> {
  const before = await takeHead(tx, ledgerId);
  const line = await sealLine(keys, {
    ...{ ledgerId, type, body: plain(body), actor: senderNow() },
    ...{ sequence: before.sequence + 1, at: at.toISOString(), previousHash: before.hash },
  });
  const { sequence, hash, actor, previousHash, seal } = line;
  const stored = [json(line.body), json(actor), at, hash, previousHash, seal];
  await tx.sql.rows(append, [ledgerId, sequence, type, ...stored]);
  return { sequence, hash };
}

/** As it will be read again: without members that are `undefined`. */
const plain = (body: NewLine['body']): NewLine['body'] => JSON.parse(json(body));
