import type { FastifyRequest } from 'fastify';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Database, inSqlTransaction } from '../../src/platform/database.ts';
import { answerOnce, forgetOldKeys, keyedRequest } from '../../src/platform/http/answer-once.ts';
import { problem } from '../../src/platform/problems/index.ts';
import { openTestDatabase } from '../support/test-database.ts';

const at = new Date('2026-05-02T14:00:00Z');

interface Sent {
  readonly key?: string;
  readonly body?: unknown;
  readonly sender?: string;
}

/** What a route sees of a request that a phone sends. */
function sent({ key = 'a1', body = { marks: ['70'] }, sender = 'seat 1' }: Sent = {}) {
  const request = { headers: { 'idempotency-key': key }, method: 'POST', url: '/v1/cards?x=1', body };
  return keyedRequest(request as unknown as FastifyRequest, { sender, at });
}

describe('what a phone sends twice counts once', () => {
  let db: Database;
  let counted = 0;
  beforeAll(async () => {
    db = await openTestDatabase();
  });
  afterAll(() => db.close());

  const send = (what: Sent) =>
    inSqlTransaction(db, (tx) =>
      answerOnce(tx, sent(what), async () => {
        counted += 1;
        const [row] = await tx.sql.rows<{ now: Date }>({ name: 'test.now', text: 'SELECT now() AS now' });
        return {
          status: 201,
          body: { number: counted, at: row?.now.toISOString() },
          headers: { etag: '"1"' },
        };
      }),
    );

  test('the second time the first answer comes back, byte for byte, and nothing is done', async () => {
    const first = await send({ key: 'k1' });
    const second = await send({ key: 'k1' });
    expect(second).toEqual({ ...first, replayed: true });
    expect(counted).toBe(1);
  });

  test('sent ten times at once it is done once', async () => {
    const before = counted;
    const answers = await Promise.all(Array.from({ length: 10 }, () => send({ key: 'k2' })));
    expect(counted - before).toBe(1);
    expect(new Set(answers.map(({ body }) => body.number)).size).toBe(1);
    expect(answers.filter(({ replayed }) => replayed !== true)).toHaveLength(1);
  });

  test('the same key with other content is a visible conflict', async () => {
    await send({ key: 'k3', body: { marks: ['70'] } });
    await expect(send({ key: 'k3', body: { marks: ['71'] } })).rejects.toMatchObject({
      code: 'idempotency_key_reused',
    });
  });

  // RFC 8785: the order of members is not content.
  test('the same content written in another order is the same content', async () => {
    await send({ key: 'k4', body: { a: 1, b: '2' } });
    await expect(send({ key: 'k4', body: { b: '2', a: 1 } })).resolves.toMatchObject({ replayed: true });
  });

  test('two senders may use the same key', async () => {
    await send({ key: 'k5', sender: 'seat 1' });
    const other = await send({ key: 'k5', sender: 'seat 2' });
    expect(other.replayed).toBeUndefined();
  });

  test('a refusal frees the key: what was put right is done', async () => {
    const refused = inSqlTransaction(db, (tx) =>
      answerOnce(tx, sent({ key: 'k6', body: {} }), async () => {
        throw problem('card_incomplete');
      }),
    );
    await expect(refused).rejects.toMatchObject({ code: 'card_incomplete' });
    await expect(send({ key: 'k6' })).resolves.toMatchObject({ status: 201 });
  });

  test.each(['', 'two words', 'ü', 'x'.repeat(256)])('the key %j is refused', (key) => {
    expect(() => sent({ key })).toThrowError(expect.objectContaining({ code: 'invalid_request' }));
  });

  test('after thirty days a key is let go', async () => {
    await send({ key: 'k7' });
    await inSqlTransaction(db, (tx) => forgetOldKeys(tx, new Date('2026-06-01T13:59:59Z')));
    expect(await db.prisma.idempotencyKey.count({ where: { key: 'k7' } })).toBe(1);
    await inSqlTransaction(db, (tx) => forgetOldKeys(tx, new Date('2026-06-01T14:00:01Z')));
    expect(await db.prisma.idempotencyKey.count({ where: { key: 'k7' } })).toBe(0);
  });
});
