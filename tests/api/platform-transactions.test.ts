import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { appendLine } from '../../src/ledger/index.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { type Database, inSqlTransaction, inTransaction } from '../../src/platform/database.ts';
import type { ServiceKeys } from '../../src/platform/service-keys.ts';
import type { Statement } from '../../src/platform/sql.ts';
import { testKeys } from '../support/test-app.ts';
import { openTestDatabase } from '../support/test-database.ts';

const at = new Date('2026-05-02T14:00:00Z');

const countShows: Statement = {
  name: 'test.count-shows',
  text: 'SELECT count(*)::int AS shows FROM show WHERE id = $1::uuid',
};

function showRow(id: string) {
  const firstDay = new Date('2026-05-02');
  const lastDay = new Date('2026-05-03');
  return {
    id,
    name: 'Cedar Flats',
    place: 'Cedar Flats',
    timeZone: 'America/Chicago',
    firstDay,
    lastDay,
    createdAt: at,
  };
}

describe('one transaction for Prisma, prepared statements and the ledger', () => {
  let db: Database;
  let keys: ServiceKeys;
  beforeAll(async () => {
    keys = await testKeys;
    db = await openTestDatabase();
  });
  afterAll(() => db.close());

  const shows = async (id: string) => (await db.sql.row<{ shows: number }>(countShows, [id]))?.shows;

  test('a prepared statement sees what Prisma wrote in the same transaction, and others do not', async () => {
    const id = randomIds.next();
    const seen = await inTransaction(db, async (tx) => {
      await tx.prisma.show.create({ data: showRow(id) });
      const inside = (await tx.sql.row<{ shows: number }>(countShows, [id]))?.shows;
      return { inside, outside: await shows(id) };
    });
    expect(seen).toEqual({ inside: 1, outside: 0 });
    expect(await shows(id)).toBe(1);
  });

  test('a refusal takes back the record and its ledger line together', async () => {
    const id = randomIds.next();
    const work = inTransaction(db, async (tx) => {
      await tx.prisma.show.create({ data: showRow(id) });
      await appendLine({ keys }, tx, { showId: id, type: 'show.created', body: { showId: id }, at });
      throw new Error('refused');
    });
    await expect(work).rejects.toThrow('refused');
    expect(await shows(id)).toBe(0);
    expect(await db.prisma.ledgerLine.count({ where: { ledgerId: id } })).toBe(0);
  });

  test('forty changes at the same time number their ledger lines without a gap', async () => {
    const id = randomIds.next();
    await db.prisma.show.create({ data: showRow(id) });
    const line = { showId: id, type: 'show.changed', body: { showId: id }, at } as const;
    const byPrisma = Array.from({ length: 20 }, () =>
      inTransaction(db, (tx) => appendLine({ keys }, tx, line)),
    );
    const bySql = Array.from({ length: 20 }, () =>
      inSqlTransaction(db, (tx) => appendLine({ keys }, tx, line)),
    );
    const lines = await Promise.all([...byPrisma, ...bySql]);
    const sequences = lines.map(({ sequence }) => sequence);
    expect(sequences.sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, index) => index + 1));
  });

  test('transactions side by side each keep to their own connection', async () => {
    const pids = await Promise.all(
      Array.from({ length: 5 }, () =>
        inTransaction(db, async (tx) => {
          const backend = { name: 'test.backend', text: 'SELECT pg_backend_pid() AS pid' };
          const bySql = await tx.sql.row<{ pid: number }>(backend);
          const [byPrisma] = await tx.prisma.$queryRaw<{ pid: number }[]>`SELECT pg_backend_pid() AS pid`;
          return { bySql: bySql?.pid, byPrisma: byPrisma?.pid };
        }),
      ),
    );
    for (const { bySql, byPrisma } of pids) expect(bySql).toBe(byPrisma);
  });

  test('the ledger refuses change: evidence stays', async () => {
    await expect(db.pool.query('UPDATE ledger_line SET type = type')).rejects.toThrow(
      /evidence is never changed/,
    );
    await expect(db.pool.query('DELETE FROM ledger_line')).rejects.toThrow(/evidence is never changed/);
  });
});
