import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../support/test-database.ts';

const checkout = new URL('../..', import.meta.url).pathname;
const schema = join(checkout, 'prisma', 'schema.prisma');
let database: TestDatabase;

beforeAll(async () => {
  database = await createTestDatabase();
});
afterAll(() => database.drop());

/** Prisma's own comparison; 0: no difference, 2: there is one. */
function differenceFrom(from: readonly string[], to: string): Promise<{ code: number; said: string }> {
  const prisma = join(checkout, 'node_modules', 'prisma', 'build', 'index.js');
  const config = join(checkout, '.config', 'prisma.config.ts');
  const args = [
    prisma,
    'migrate',
    'diff',
    '--config',
    config,
    ...from,
    '--to-schema',
    to,
    '--exit-code',
    '--script',
  ];
  return new Promise((done) => {
    const env = { ...process.env, DATABASE_URL: database.url, CHECKPOINT_DISABLE: '1' };
    execFile(process.execPath, args, { cwd: checkout, env }, (error, stdout, stderr) => {
      done({ code: typeof error?.code === 'number' ? error.code : 0, said: stdout + stderr });
    });
  });
}

describe('the migrations', () => {
  it('make from empty exactly the database that the schema describes', async () => {
    const { code, said } = await differenceFrom(['--from-config-datasource'], schema);
    expect([code, said]).toEqual([0, expect.not.stringMatching(/CREATE|ALTER|DROP/)]);
  });

  it('are seen to differ as soon as the schema says more than they do', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'schema-'));
    const changed = join(folder, 'schema.prisma');
    writeFileSync(
      changed,
      readFileSync(schema, 'utf8').replace('model Ring {', 'model Ring {\n  color String?'),
    );
    const { code, said } = await differenceFrom(['--from-config-datasource'], changed);
    rmSync(folder, { recursive: true });
    expect([code, said]).toEqual([2, expect.stringContaining('ADD COLUMN     "color" TEXT')]);
  });
});
