/**
 * A real PostgreSQL out of npm packages, for whoever has none running: its data lies in one folder and stays.
 * It is started here and not by the packages' own class, because that one stops the database at the first signal,
 * before the service has answered what it had begun.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { chownSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createServer, Socket } from 'node:net';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { dataFolder, type Programs, passwordFile, postgresPrograms } from './postgres-files.ts';
import { type UnixUser, userForPostgres } from './unprivileged-user.ts';

export interface RunningPostgres {
  /** Connection address of the maintenance database `postgres`. */
  readonly url: string;
  /** Stops it, unless another process still uses it. */
  readonly stop: () => Promise<void>;
}

export interface Place {
  /** Folder of the data; made where it is missing. */
  readonly folder: string;
  /** Progress in plain words. */
  readonly say: (line: string) => void;
  /** More settings of PostgreSQL, e.g. `fsync=off`. */
  readonly settings?: readonly string[];
}

interface Cluster {
  readonly data: string;
  readonly programs: Programs;
  readonly user: UnixUser | undefined;
  readonly place: Place;
}

const account = 'ringledger';

const addressOf = (data: string, port: number) =>
  `postgresql://${account}:${readFileSync(passwordFile(data), 'utf8').trim()}@127.0.0.1:${port}/postgres`;

/**
 * Starts PostgreSQL over `folder`, or takes up the one that an earlier run left running there.
 * Throws when it cannot be started within some seconds.
 */
export async function startPostgres(place: Place): Promise<RunningPostgres> {
  const user = userForPostgres(place.say);
  const seeker = { user, say: place.say };
  const data = dataFolder(place.folder, seeker);
  const cluster = { data, programs: postgresPrograms(seeker), user, place };
  return (await takeUp(cluster)) ?? (await startPatiently(cluster));
}

async function takeUp({ data, place }: Cluster): Promise<RunningPostgres | undefined> {
  const left = await runningIn(data);
  if (left === undefined) return undefined;
  place.say(`PostgreSQL is running already on port ${left.port}: using it.`);
  return hold(left.pid, addressOf(data, left.port), place);
}

/** After a crash the old lock may take a moment to go, and another process may be starting the same folder. */
async function startPatiently(cluster: Cluster, tries = 8): Promise<RunningPostgres> {
  try {
    return await start(cluster);
  } catch (error) {
    if (tries <= 1) throw error;
    await pause(1_000);
    return (await takeUp(cluster)) ?? (await startPatiently(cluster, tries - 1));
  }
}

async function start(cluster: Cluster): Promise<RunningPostgres> {
  const { data, place, programs } = cluster;
  if (!existsSync(data)) await setUp(cluster);
  const port = await freePort();
  place.say(`Starting PostgreSQL on port ${port} ...`);
  const settings = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', 'max_connections=200'];
  const flags = [...settings, ...(place.settings ?? [])].flatMap((setting) => ['-c', setting]);
  const server = run(cluster, programs.postgres, ['-D', data, '-p', String(port), ...flags]);
  await listening(server);
  const pid = server.pid ?? 0;
  const onExit = () => void (isAlive(pid) && process.kill(pid, 'SIGINT'));
  process.once('exit', onExit);
  const held = await hold(pid, addressOf(data, port), place);
  const stop = async () => {
    process.removeListener('exit', onExit);
    await held.stop();
  };
  return { ...held, stop };
}

/** In a folder beside, renamed when it is whole: a start that was cut off leaves nothing that looks like data. */
async function setUp(cluster: Cluster): Promise<void> {
  const { data, place, programs, user } = cluster;
  place.say(`Setting up PostgreSQL in ${data} ...`);
  const half = `${data}.${process.pid}`;
  const password = passwordFile(data);
  if (!existsSync(password)) writeFileSync(password, `${randomBytes(24).toString('hex')}\n`, { mode: 0o600 });
  mkdirSync(half, { mode: 0o700 });
  if (user !== undefined) for (const path of [half, password]) chownSync(path, user.uid, user.gid);
  const access = ['-U', account, '--auth=scram-sha-256', `--pwfile=${password}`];
  const form = ['--encoding=UTF8', '--locale=C.UTF-8'];
  await ended(run(cluster, programs.initdb, ['-D', half, ...access, ...form]));
  renameSync(half, data);
}

/** In a process group of its own: Ctrl-C reaches the service first, which then stops PostgreSQL. */
function run({ user }: Cluster, program: string, flags: readonly string[]): ChildProcess {
  const env = { PATH: process.env.PATH, LC_ALL: 'C.UTF-8', TZ: 'UTC' };
  return spawn(program, flags, {
    ...user,
    env,
    cwd: '/',
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
}

function ended(child: ChildProcess): Promise<void> {
  return new Promise((done, failed) => {
    const said = heard(child);
    child.once('error', failed);
    child.once('close', (code) =>
      code === 0 ? done() : failed(new Error(`PostgreSQL could not be set up: ${said.join('')}`)),
    );
  });
}

function listening(server: ChildProcess): Promise<void> {
  return new Promise((done, failed) => {
    const said = heard(server);
    server.once('error', failed);
    server.once('close', () => failed(new Error(`PostgreSQL could not be started: ${said.join('')}`)));
    server.stderr?.on('data', (chunk: Buffer) => {
      if (!chunk.includes('ready to accept connections')) return;
      letGo(server);
      done();
    });
  });
}

/** The last of what the program said, for the error; the pipe is always emptied, so that it never blocks. */
function heard(child: ChildProcess): string[] {
  const said: string[] = [];
  child.stderr?.on('data', (chunk: Buffer) => {
    said.push(chunk.toString('utf8'));
    if (said.length > 20) said.shift();
  });
  return said;
}

/** From now on neither the process nor its pipe keeps this one alive. */
function letGo(server: ChildProcess): void {
  server.unref();
  if (server.stderr instanceof Socket) server.stderr.unref();
}

/** One open connection says "still in use" to every other process that shares this PostgreSQL. */
async function hold(pid: number, url: string, place: Place): Promise<RunningPostgres> {
  const holder = new pg.Client({ connectionString: url, application_name: 'ringledger holder' });
  holder.on('error', () => undefined);
  await holder.connect();
  const stop = async () => {
    const others = await holder
      .query(
        `SELECT 1 FROM pg_stat_activity
         WHERE backend_type = 'client backend' AND pid <> pg_backend_pid() LIMIT 1`,
      )
      .then((answer) => answer.rowCount ?? 0)
      .catch(() => 0);
    await holder.end().catch(() => undefined);
    if (others > 0) place.say('PostgreSQL is still used by another process: left running.');
    else await stopProcess(pid);
  };
  return { url, stop };
}

/** `postmaster.pid` holds the process on line 1 and the port on line 4; it may be left from a crash. */
async function runningIn(data: string): Promise<{ readonly pid: number; readonly port: number } | undefined> {
  const file = join(data, 'postmaster.pid');
  if (!existsSync(file)) return undefined;
  const lines = readFileSync(file, 'utf8').split('\n');
  const [pid, port] = [Number(lines[0]), Number(lines[3])];
  if (!isAlive(pid)) return undefined;
  const client = new pg.Client({ connectionString: addressOf(data, port), connectionTimeoutMillis: 2_000 });
  try {
    await client.connect();
    const { rows } = await client.query<{ folder: string }>(
      `SELECT current_setting('data_directory') AS folder`,
    );
    return rows[0]?.folder === data ? { pid, port } : undefined;
  } catch {
    return undefined;
  } finally {
    await client.end().catch(() => undefined);
  }
}

function isAlive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

/** SIGINT: PostgreSQL ends its sessions and shuts down cleanly. */
async function stopProcess(pid: number): Promise<void> {
  if (pid <= 0 || !isAlive(pid)) return;
  process.kill(pid, 'SIGINT');
  for (let waited = 0; isAlive(pid) && waited < 200; waited += 1) await pause(50);
}

function freePort(): Promise<number> {
  return new Promise((done, failed) => {
    const probe = createServer();
    probe.once('error', failed);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      const port = typeof address === 'object' && address ? address.port : undefined;
      probe.close(() => (port === undefined ? failed(new Error('there is no free port')) : done(port)));
    });
  });
}
