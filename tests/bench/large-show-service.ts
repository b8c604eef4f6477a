/** The service as it runs, in a process of its own, on a database of its own, with a large show set up on it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { type LargeShow, largeShow } from '../../seed/large-show/large-show.ts';
import { issueToken } from '../../src/access/index.ts';
import { type Api, apiAt } from '../../src/commands/demo/api.ts';
import type { DemoClass } from '../../src/commands/demo/demo-files.ts';
import { type ReadyClass, setUpClass } from '../../src/commands/demo/set-up-class.ts';
import { type ShowGround, setUpShow } from '../../src/commands/demo/set-up-show.ts';
import { randomIds, systemClock } from '../../src/platform/app-parts.ts';
import { type Database, inSqlTransaction, openDatabase } from '../../src/platform/database.ts';
import { startPostgres } from '../../src/platform/postgres/embedded-postgres.ts';

const secret = 'a secret for the bench that is long enough to be one';

export interface BenchService {
  readonly address: string;
  readonly api: Api;
  /** For the yardstick: the same database, without the service. */
  readonly db: Database;
  readonly ground: ShowGround;
  readonly classes: readonly { readonly demoClass: DemoClass; readonly ready: ReadyClass }[];
  readonly stop: () => Promise<void>;
}

export async function serveLargeShow(size: LargeShow): Promise<BenchService> {
  const say = (line: string) => console.error(`[bench] ${line}`);
  const server = process.env.DATABASE_URL
    ? { url: process.env.DATABASE_URL, stop: async () => undefined }
    : await startPostgres({ folder: '.ringledger/bench-postgres', say });
  const database = `ringledger_bench_${randomBytes(4).toString('hex')}`;
  const url = new URL(server.url);
  url.pathname = `/${database}`;
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const service = startProcess('src/main.ts', {
    DATABASE_URL: url.href,
    PORT: String(port),
    TOKEN_SECRET: secret,
  });
  await ready(service, `${address}/health/ready`);
  const db = openDatabase(url.href, { connections: 2 });
  say('setting up a large show through the API ...');
  const api = apiAt(address);
  const demo = largeShow(size);
  const ground = await setUpShow(api, await servicePass(db), demo);
  const classes = [];
  for (const demoClass of demo.classes)
    classes.push({ demoClass, ready: await setUpClass(ground, demoClass) });
  const stop = async () => {
    await stopProcess(service);
    await db.close();
    await dropDatabase(server.url, database);
    await server.stop();
  };
  return { address, api, db, ground, classes, stop };
}

/** `file` runs as a script of its own, quiet and without a limit of requests. */
export function startProcess(file: string, environment: NodeJS.ProcessEnv): ChildProcess {
  const settings = {
    LOG_LEVEL: 'error',
    REQUESTS_PER_MINUTE: '0',
    BROWSABLE_DOCS: 'no',
    NODE_ENV: 'production',
  };
  return spawn(process.execPath, ['--import', 'tsx', file], {
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
    env: { ...process.env, ...settings, ...environment },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

export async function stopProcess(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const exited = once(child, 'exit');
  child.kill('SIGTERM');
  await exited;
}

export async function ready(child: ChildProcess, address: string, tries = 300): Promise<void> {
  if (child.exitCode !== null) throw new Error('the process to be measured has ended');
  const answer = await fetch(address).catch(() => undefined);
  if (answer?.ok) return;
  if (tries <= 1) throw new Error(`nothing answers at ${address}`);
  await new Promise((done) => setTimeout(done, 200));
  await ready(child, address, tries - 1);
}

export function freePort(): Promise<number> {
  return new Promise((done) => {
    const probe = createServer();
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

async function servicePass(db: Database): Promise<string> {
  const parts = { clock: systemClock, ids: randomIds, tokenKey: new TextEncoder().encode(secret) };
  const expiresAt = new Date(Date.now() + 3_600_000);
  const asked = { role: 'office', showId: null, seatId: null, label: 'bench', expiresAt } as const;
  return (await inSqlTransaction(db, (tx) => issueToken(parts, tx, asked))).token;
}

async function dropDatabase(serverUrl: string, database: string): Promise<void> {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  await client.query(`DROP DATABASE IF EXISTS ${database} WITH (FORCE)`);
  await client.end();
}
