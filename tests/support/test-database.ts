/** A database of its own for a test file, copied from the migrated template within some 50 ms. */
import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { inject } from 'vitest';
import { type Database, openDatabase } from '../../src/platform/database.ts';

export interface TestDatabase {
  readonly url: string;
  readonly drop: () => Promise<void>;
}

/** For a test that opens connections itself, e.g. from two processes. */
export async function createTestDatabase(): Promise<TestDatabase> {
  const name = `ringledger_test_${randomBytes(8).toString('hex')}`;
  await onServer(`CREATE DATABASE ${name} TEMPLATE ${inject('templateName')}`);
  const url = new URL(inject('serverUrl'));
  url.pathname = `/${name}`;
  return { url: url.href, drop: () => onServer(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`) };
}

/** Open and ready; `close` also drops it. */
export async function openTestDatabase(): Promise<Database> {
  const { url, drop } = await createTestDatabase();
  const db = openDatabase(url, { connections: 5 });
  const close = async () => {
    await db.close();
    await drop();
  };
  return { ...db, close };
}

async function onServer(statement: string, tries = 20): Promise<void> {
  const client = new pg.Client({ connectionString: inject('serverUrl') });
  await client.connect();
  try {
    await client.query(statement);
  } catch (error) {
    // 55006 object in use: another file is copying the template at this moment.
    if (tries <= 1 || (error as { code?: string }).code !== '55006') throw error;
    await new Promise((done) => setTimeout(done, 100));
    await onServer(statement, tries - 1);
  } finally {
    await client.end();
  }
}
