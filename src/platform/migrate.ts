/** Brings a database to the shape of `prisma/migrations`, from empty or from any earlier shape. */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { ensureServiceGroup } from './postgres/service-role.ts';
import { withClient } from './postgres/with-client.ts';

const checkout = fileURLToPath(new URL('../..', import.meta.url));
const migrationsFolder = join(checkout, 'prisma', 'migrations');

const migrationNames = (): string[] =>
  readdirSync(migrationsFolder, { withFileTypes: true })
    .filter((found) => found.isDirectory())
    .map((found) => found.name)
    .sort();

/** SHA-256 over names and texts of all migrations, as hex. */
export function migrationsHash(): string {
  const hash = createHash('sha256');
  for (const name of migrationNames()) {
    hash.update(name).update(readFileSync(join(migrationsFolder, name, 'migration.sql')));
  }
  return hash.digest('hex');
}

/** Makes the database that `url` names, where the server does not have it yet. */
export async function ensureDatabase(url: string): Promise<void> {
  const name = decodeURIComponent(new URL(url).pathname.slice(1));
  const maintenance = new URL(url);
  maintenance.pathname = '/postgres';
  await withClient(maintenance.href, async (client) => {
    const found = await client.query('SELECT 1 FROM pg_database WHERE datname = $1', [name]);
    if (found.rowCount === 0) await client.query(`CREATE DATABASE ${pg.escapeIdentifier(name)}`);
  });
}

/** Throws what Prisma says when a migration does not apply. Says nothing and does nothing where all are applied. */
export async function migrate(url: string, say: (line: string) => void): Promise<void> {
  if (await allApplied(url)) return;
  // Here and not by the migration alone: a migration that failed has to be taken back by hand.
  await ensureServiceGroup(url);
  say('Bringing the database to the present shape ...');
  const { status, said } = await runPrisma(['migrate', 'deploy'], url);
  if (status !== 0) throw new Error(`The database could not be migrated. ${said}`);
}

/** Throws an Error in plain words where a migration is missing. For a service that may not migrate. */
export async function mustBeMigrated(url: string): Promise<void> {
  if (await allApplied(url)) return;
  throw new Error(
    'The database does not have the present shape: run `npm run migrate` with DATABASE_URL set to its owner.',
  );
}

/** Prisma's own table says what was applied; asking it is a hundred times faster than asking Prisma. */
function allApplied(url: string): Promise<boolean> {
  return withClient(url, async (client) => {
    const table = await client.query<{ there: boolean }>(
      `SELECT to_regclass('_prisma_migrations') IS NOT NULL AS there`,
    );
    if (table.rows[0]?.there !== true) return false;
    const applied = await client.query<{ name: string; checksum: string }>(
      'SELECT migration_name AS name, checksum FROM _prisma_migrations WHERE finished_at IS NOT NULL',
    );
    const known = new Map(applied.rows.map((row) => [row.name, row.checksum]));
    return migrationNames().every((name) => known.get(name) === checksumOf(name));
  });
}

const checksumOf = (name: string): string =>
  createHash('sha256')
    .update(readFileSync(join(migrationsFolder, name, 'migration.sql')))
    .digest('hex');

/** Prisma's command line with the settings of this checkout. */
export function runPrisma(
  args: readonly string[],
  url: string,
): Promise<{ readonly status: number; readonly said: string }> {
  const require = createRequire(import.meta.url);
  const prisma = join(dirname(require.resolve('prisma/package.json')), 'build', 'index.js');
  const config = ['--config', join(checkout, '.config', 'prisma.config.ts')];
  return new Promise((done, failed) => {
    const env = {
      ...process.env,
      DATABASE_URL: url,
      PRISMA_HIDE_UPDATE_MESSAGE: '1',
      CHECKPOINT_DISABLE: '1',
    };
    const child = spawn(process.execPath, [prisma, ...args, ...config], {
      env,
      cwd: checkout,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const chunks: Buffer[] = [];
    child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => chunks.push(chunk));
    child.once('error', failed);
    child.once('close', (code) =>
      done({ status: code ?? 1, said: Buffer.concat(chunks).toString('utf8').trim() }),
    );
  });
}
