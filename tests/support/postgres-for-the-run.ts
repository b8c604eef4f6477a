/**
 * One PostgreSQL for the whole run: the one that DATABASE_URL names, or the embedded one. In it a template
 * database with all migrations applied, of which each test file gets its own copy.
 */
import pg from 'pg';
import type { TestProject } from 'vitest/node';
import { ensureDatabase, migrate, migrationsHash } from '../../src/platform/migrate.ts';
import { startPostgres } from '../../src/platform/postgres/embedded-postgres.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the server's maintenance database. */
    readonly serverUrl: string;
    /** Name of the migrated database that test databases are copied from. */
    readonly templateName: string;
  }
}

/** Any number will do, as long as every run uses the same: runs side by side make the template one at a time. */
const templateLock = 4_070_001;

export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const say = (line: string) => console.error(`[tests] ${line}`);
  const given = process.env.DATABASE_URL;
  const server =
    given === undefined
      ? await startPostgres({ folder: '.ringledger/test-postgres', say, settings: ['fsync=off'] })
      : { url: given, stop: async () => undefined };
  const templateName = `ringledger_template_${migrationsHash().slice(0, 12)}`;
  try {
    await makeTemplate(server.url, templateName);
  } catch (error) {
    await server.stop();
    throw error;
  }
  project.provide('serverUrl', server.url);
  project.provide('templateName', templateName);
  return server.stop;
}

async function makeTemplate(serverUrl: string, name: string): Promise<void> {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [templateLock]);
    const url = new URL(serverUrl);
    url.pathname = `/${name}`;
    await ensureDatabase(url.href);
    await migrate(url.href, () => undefined);
  } finally {
    await client.end();
  }
}
