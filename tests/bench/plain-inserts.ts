/** The yardstick of everything that goes to a ledger: the same rows by plain prepared `pg`, with nothing computed. */
import { randomBytes } from 'node:crypto';
import type pg from 'pg';
import { addRevision } from '../../src/cards/card-statements.ts';
import { takeHead } from '../../src/ledger/index.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { json, type Statement, sqlOver } from '../../src/platform/sql.ts';

/** As the service writes it; only the work before it is missing. */
const insertLine: Statement = {
  name: 'bench.insert-line',
  text: `
    WITH head AS (
      UPDATE ledger_head SET sequence = $2, hash = $7 WHERE ledger_id = $1::uuid
    )
    INSERT INTO ledger_line (ledger_id, sequence, type, body, actor, at, hash, previous_hash, seal)
    VALUES ($1::uuid, $2, $3, $4::jsonb, $5::jsonb, $6, $7, $8, $9)
    RETURNING pg_notify('ledger_line', $1::uuid || ' ' || $2)`,
};

export interface PlainLine {
  /** Of a ledger that nobody reads: its lines are as long as real ones, and prove nothing. */
  readonly ledgerId: string;
  readonly type: string;
  readonly body: Readonly<Record<string, unknown>>;
}

export interface PlainRevision {
  readonly cardId: string;
  readonly seatId: string;
  readonly phoneId: string;
  readonly text: string;
  readonly contentHash: string;
  readonly jws: string;
}

const actor = { as: 'judge', phone: randomIds.next(), person: randomIds.next() };
const someHash = randomBytes(32).toString('hex');
/** As long as a seal: header with `alg`, `kid` and `typ`, signature of 64 bytes. */
const someSeal = `${randomBytes(75).toString('base64url')}..${randomBytes(64).toString('base64url')}`;

export function insertPlainLine(client: pg.Client, line: PlainLine): Promise<void> {
  return inOneTransaction(client, () => addLine(client, line));
}

export function insertPlainRevision(
  client: pg.Client,
  { revision, line }: { readonly revision: PlainRevision; readonly line: PlainLine },
): Promise<void> {
  const { cardId, seatId, phoneId, text, contentHash, jws } = revision;
  const at = new Date();
  return inOneTransaction(client, async () => {
    await sqlOver(client).rows(addRevision, [
      ...[randomIds.next(), cardId, 1, text, contentHash, null, seatId, at, at, null],
      ...[jws, phoneId, null],
    ]);
    await addLine(client, line);
  });
}

async function addLine(client: pg.Client, { ledgerId, type, body }: PlainLine): Promise<void> {
  const sql = sqlOver(client);
  const { sequence, hash } = await takeHead({ sql }, ledgerId);
  const stored = [json(body), json(actor), new Date(), someHash, hash, someSeal];
  await sql.rows(insertLine, [ledgerId, sequence + 1, type, ...stored]);
}

export async function inOneTransaction(client: pg.Client, work: () => Promise<unknown>): Promise<void> {
  await client.query('BEGIN');
  await work();
  await client.query('COMMIT');
}
