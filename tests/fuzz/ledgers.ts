/** Every ledger of a database, from its first line: is the chain whole, and does it end where the head says? */
import { type CryptoKey, importJWK } from 'jose';
import type pg from 'pg';
import { firstBreak, type KnownKeys, readSealedLines, type SealedLine } from '../../src/ledger/index.ts';
import type { AppParts } from '../../src/platform/app-parts.ts';
import { type Sql, sqlOver } from '../../src/platform/sql.ts';

interface Head {
  readonly ledgerId: string;
  readonly sequence: number;
  readonly hash: string | null;
}

export interface CheckedLedgers {
  readonly ledgers: number;
  readonly lines: number;
  readonly faults: readonly string[];
}

/** As of one moment: the service may still be writing down whom it refused last. */
export async function checkLedgers({ db, keys }: Pick<AppParts, 'db' | 'keys'>): Promise<CheckedLedgers> {
  const connection = await db.pool.connect();
  try {
    await connection.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    return await check(connection, await knownKeys(keys));
  } finally {
    await connection.query('ROLLBACK');
    connection.release();
  }
}

async function check(connection: pg.PoolClient, known: KnownKeys): Promise<CheckedLedgers> {
  const { rows: heads } = await connection.query<Head>(
    'SELECT ledger_id AS "ledgerId", sequence, hash FROM ledger_head WHERE sequence > 0',
  );
  const { rows: headless } = await connection.query<{ id: string }>(
    'SELECT ledger_id AS id FROM ledger_line EXCEPT SELECT ledger_id FROM ledger_head',
  );
  const faults = headless.map(({ id }) => `the ledger ${id} has no head`);
  let lines = 0;
  for (const head of heads) {
    const read = await allLines(sqlOver(connection), head.ledgerId);
    lines += read.length;
    const broken = await firstBreak(read, known);
    if (broken !== undefined)
      faults.push(`ledger ${head.ledgerId}, line ${broken.sequence}: ${broken.fault}`);
    const last = read.at(-1);
    if (last?.sequence !== head.sequence || last.hash !== head.hash) {
      faults.push(`ledger ${head.ledgerId}: its head is not its last line`);
    }
  }
  return { ledgers: heads.length, lines, faults };
}

async function knownKeys({ publicKeys }: AppParts['keys']): Promise<KnownKeys> {
  const imported = publicKeys.map(
    async ({ kid, jwk }) => [kid, (await importJWK(jwk, 'ES256')) as CryptoKey] as const,
  );
  return new Map(await Promise.all(imported));
}

async function allLines(sql: Sql, showId: string): Promise<SealedLine[]> {
  const lines: SealedLine[] = [];
  for (;;) {
    const page = await readSealedLines(sql, { showId, after: lines.length, limit: 1_000 });
    lines.push(...page);
    if (page.length < 1_000) return lines;
  }
}
