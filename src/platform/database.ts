/** The database of the service: Prisma for ordinary queries, prepared `pg` for hot paths, one pool under both. */
import { AsyncLocalStorage } from 'node:async_hooks';
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { type Prisma, PrismaClient } from './generated/prisma/client.ts';
import { type Sql, sqlOver } from './sql.ts';

export interface Database {
  /** Connection address; for whoever needs a connection of its own (LISTEN). */
  readonly url: string;
  readonly prisma: PrismaClient;
  readonly pool: pg.Pool;
  /** Prepared statements, each in a transaction of its own. */
  readonly sql: Sql;
  readonly close: () => Promise<void>;
}

/** What takes part in a transaction by prepared statements only. */
export interface SqlTransaction {
  readonly sql: Sql;
}

/** Prisma queries and prepared statements of one and the same transaction. */
export interface Transaction extends SqlTransaction {
  readonly prisma: Prisma.TransactionClient;
}

/** The connection that Prisma took for the transaction that is being opened. */
const opening = new AsyncLocalStorage<{ connection?: pg.PoolClient }>();

class NotedPool extends pg.Pool {
  override connect(): Promise<pg.PoolClient>;
  override connect(callback: Parameters<pg.Pool['connect']>[0]): void;
  override connect(callback?: Parameters<pg.Pool['connect']>[0]): Promise<pg.PoolClient> | undefined {
    if (callback !== undefined) {
      super.connect(callback);
      return undefined;
    }
    return super.connect().then((connection) => {
      const noted = opening.getStore();
      if (noted !== undefined) noted.connection ??= connection;
      return connection;
    });
  }
}

export interface DatabaseSettings {
  /** Connections at most; 10 where nothing is said. */
  readonly connections?: number;
  /** What is done about a connection that breaks while nobody uses it. */
  readonly onIdleError?: (error: Error) => void;
}

export function openDatabase(url: string, settings: DatabaseSettings = {}): Database {
  const pool = new NotedPool({
    connectionString: url,
    max: settings.connections ?? 10,
    connectionTimeoutMillis: 10_000,
    application_name: 'ringledger',
  });
  pool.on('error', settings.onIdleError ?? (() => undefined));
  // A connection that breaks in the middle of a transaction says so twice: the statement fails, which is answered,
  // and the connection emits an error, which would end the process if nobody listened.
  pool.on('connect', (connection) => connection.on('error', () => undefined));
  const prisma = new PrismaClient({ adapter: new PrismaPg(pool) });
  const close = async () => {
    await prisma.$disconnect();
    if (!pool.ended) await pool.end();
  };
  return { url, prisma, pool, sql: sqlOver(pool), close };
}

/**
 * Runs `work` in one transaction: it commits when `work` returns and rolls back when it throws.
 * `tx.prisma` and `tx.sql` see each other's changes. A deadlock or a serialization failure runs `work` again,
 * so `work` must change nothing but the database.
 */
export function inTransaction<T>(db: Database, work: (tx: Transaction) => Promise<T>): Promise<T> {
  return patiently(() => {
    const noted: { connection?: pg.PoolClient } = {};
    return opening.run(noted, () =>
      db.prisma.$transaction(
        (prisma) => {
          if (noted.connection === undefined) throw new Error('the transaction has no connection');
          return work({ prisma, sql: sqlOver(noted.connection) });
        },
        { maxWait: 10_000, timeout: 30_000 },
      ),
    );
  });
}

/** The same by prepared statements only: for the hot paths. */
export function inSqlTransaction<T>(db: Database, work: (tx: SqlTransaction) => Promise<T>): Promise<T> {
  return patiently(async () => {
    const connection = await db.pool.connect();
    let broken: Error | undefined;
    try {
      await connection.query('BEGIN');
      const result = await work({ sql: sqlOver(connection) });
      await connection.query('COMMIT');
      return result;
    } catch (error) {
      await connection.query('ROLLBACK').catch((lost: Error) => {
        broken = lost;
      });
      throw error;
    } finally {
      connection.release(broken);
    }
  });
}

async function patiently<T>(attempt: () => Promise<T>, tries = 3): Promise<T> {
  try {
    return await attempt();
  } catch (error) {
    if (tries <= 1 || !mayBeTriedAgain(error)) throw error;
    return patiently(attempt, tries - 1);
  }
}

/** 40001 serialization failure, 40P01 deadlock (PostgreSQL, appendix A); P2034 is Prisma's word for both. */
const mayBeTriedAgain = (error: unknown) => ['40001', '40P01', 'P2034'].includes(codeOf(error) ?? '');

const codeOf = (error: unknown): string | undefined =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string'
    ? error.code
    : undefined;
