/**
 * The service as it runs in production, in a process of its own, on a database of its own. Its secret and its signing
 * keys are drawn for this run, and gone after it.
 */
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { openSession } from '../../src/access/index.ts';
import { type Api, apiAt, bare, type Sends } from '../../src/commands/demo/api.ts';
import { randomIds, systemClock } from '../../src/platform/app-parts.ts';
import { type Database, inSqlTransaction, openDatabase } from '../../src/platform/database.ts';
import { startPostgres } from '../../src/platform/postgres/embedded-postgres.ts';
import { serviceUrl } from '../../src/platform/postgres/service-role.ts';
import { ensureSigningKey, type ServiceKeys, serviceKeys } from '../../src/platform/service-keys.ts';
import { freePort, ready, startProcess, stopProcess } from './processes.ts';

export interface BenchService {
  readonly address: string;
  readonly api: Api;
  /** A manager of the whole service. */
  readonly office: Sends;
  /** Token of her session. */
  readonly session: string;
  /** For the yardstick: the same database as its owner, without the service. */
  readonly db: Database;
  /** What the service seals with. */
  readonly keys: ServiceKeys;
  /** Lets go of everything, and leaves nothing behind but the embedded PostgreSQL. */
  readonly stop: () => Promise<void>;
}

export const say = (line: string) => console.error(`[bench] ${line}`);

export async function startBenchService(): Promise<BenchService> {
  const undo: (() => unknown)[] = [];
  let stopping: Promise<void> | undefined;
  const stop = () => {
    stopping ??= undoAll(undo);
    return stopping;
  };
  try {
    return { ...(await start(undo)), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

async function undoAll(undo: readonly (() => unknown)[]): Promise<void> {
  for (const step of [...undo].reverse()) await step();
}

/** What must be undone, the last first, is added to `undo` as it is done. */
async function start(undo: (() => unknown)[]): Promise<Omit<BenchService, 'stop'>> {
  const folder = mkdtempSync(join(tmpdir(), 'ringledger-bench-'));
  undo.push(() => rmSync(folder, { recursive: true }));
  const secret = randomBytes(36).toString('base64');
  const signingKeys = join(folder, 'signing-keys.json');
  const keys = await serviceKeys(await ensureSigningKey(signingKeys));
  const server = process.env.DATABASE_URL
    ? { url: process.env.DATABASE_URL, stop: async () => undefined }
    : await startPostgres({ folder: '.ringledger/bench-postgres', say });
  undo.push(server.stop);
  const url = databaseBeside(server.url);
  undo.push(() => dropAll(server.url, { url, secret }));
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const environment = { ...quiet, DATABASE_URL: url, PORT: String(port), TOKEN_SECRET: secret };
  const service = startProcess('src/main.ts', {
    environment: { ...environment, SIGNING_KEYS_FILE: signingKeys, RINGLEDGER_FOLDER: folder },
  });
  undo.push(() => stopProcess(service));
  await ready(service, `${address}/health/ready`);
  const db = openDatabase(url, { connections: 2 });
  undo.push(db.close);
  const session = await sessionOfManager(db);
  return { address, api: apiAt(address), office: bare(address, session), session, db, keys };
}

/** No limits, no words, and nothing of the settings of whoever starts the bench. An empty setting counts as none. */
const quiet = {
  ...{ LOG_LEVEL: 'error', BROWSABLE_DOCS: 'no', HOST: '127.0.0.1' },
  ...{ REQUESTS_PER_MINUTE: '0', SENDER_REQUESTS_PER_MINUTE: '0', SIGN_INS_PER_MINUTE: '0' },
  ...{ SERVICE_DATABASE_URL: '', PUBLIC_ADDRESS: '', TRUSTED_PROXIES: '' },
};

/** Straight into the database, because a sign-in is slow on purpose and is not what is measured. */
async function sessionOfManager(db: Database): Promise<string> {
  const parts = { clock: systemClock, ids: randomIds };
  const accountId = parts.ids.next();
  const account = { id: accountId, name: 'Office of the bench', signIn: 'bench', duty: 'manager' };
  await db.prisma.account.create({ data: { ...account, wholeService: true, createdAt: parts.clock.now() } });
  return (await inSqlTransaction(db, (tx) => openSession(parts, tx, accountId))).token;
}

function databaseBeside(serverUrl: string): string {
  const url = new URL(serverUrl);
  url.pathname = `/ringledger_bench_${randomBytes(4).toString('hex')}`;
  return url.href;
}

/** The role that the service made for itself belongs to the whole server, so it does not go with the database. */
async function dropAll(
  serverUrl: string,
  { url, secret }: { readonly url: string; readonly secret: string },
): Promise<void> {
  const database = new URL(url).pathname.slice(1);
  const role = new URL(serviceUrl(url, new TextEncoder().encode(secret))).username;
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  await client.query(`DROP DATABASE IF EXISTS ${database} WITH (FORCE)`);
  await client.query(`DROP ROLE IF EXISTS ${role}`);
  await client.end();
}
