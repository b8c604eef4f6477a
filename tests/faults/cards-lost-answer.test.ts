import { setTimeout as pause } from 'node:timers/promises';
import request from 'supertest';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { type MortalServer, startMortalServer } from '../support/mortal-server.ts';
import { type Asked, signatureOf } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { PhonePass } from '../support/test-passes.ts';

const signedAt = '2026-05-02T15:04:05.678Z';
const judges = 5;

describe('the server dies while a card comes in', () => {
  /** Another server over the same database, that the phone finds when it asks again. */
  let service: TestApp;
  let mortal: MortalServer;
  let setting: CardSetting;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    mortal = await startMortalServer(service.ownerUrl);
    setting = await setUpClass(service, { judges, entries: 2 });
  });
  afterEach(() => mortal.kill());

  interface Sending {
    readonly to: string | TestApp['app']['server'];
    readonly cardId: string;
    readonly pass: PhonePass;
    readonly what?: 'signatures' | 'amendments';
    readonly key?: string;
    readonly body: object;
  }
  const content = (mark = '1') => ({
    goes: Object.fromEntries(setting.entryIds.map((id) => [id, goOf([mark, '0', '0'])])),
  });
  /** The phone signs once, keeps that, and sends it as often as it must. */
  async function signed({ asked, ...sending }: Omit<Sending, 'to' | 'body'> & { readonly asked?: Asked }) {
    const body = await signatureOf(service, {
      ...sending,
      asked: { signedAt, content: content(), ...asked },
    });
    return { ...sending, body };
  }
  function send({ to, cardId, pass, what = 'signatures', key, body }: Sending) {
    const sent = request(to).post(`/v1/cards/${cardId}/${what}`).use(pass).send(body);
    return key === undefined ? sent : sent.set('idempotency-key', key);
  }
  const again = () => service.app.server;
  const revisions = (cardId: string) => service.parts.db.prisma.cardRevision.findMany({ where: { cardId } });
  async function mustBeWithoutGap() {
    const lines = await service.parts.db.prisma.ledgerLine.findMany({
      where: { ledgerId: setting.showId },
      orderBy: { sequence: 'asc' },
    });
    expect(lines.map(({ sequence }) => sequence)).toEqual(lines.map((_, index) => index + 1));
    return lines.map(({ type }) => type).filter((type) => /^(card|class)\./.test(type));
  }

  test('between commit and answer, with a key: the phone asks again and hears what was kept', async () => {
    const key = 'phone-1-card-1';
    const sending = await signed({ cardId: await setting.openCard(), pass: await setting.judge(), key });
    await expect(send({ ...sending, to: mortal.deadly })).rejects.toThrow(/hang up|reset/);
    const [kept] = await revisions(sending.cardId);
    expect(kept).toBeDefined();
    const heard = await send({ ...sending, to: again() }).expect(201);
    expect(heard.headers['idempotency-replayed']).toBe('true');
    expect(heard.body).toMatchObject({ id: kept?.id, contentHash: kept?.contentHash, revision: 1 });
    expect(await revisions(sending.cardId)).toHaveLength(1);
    expect(await mustBeWithoutGap()).toEqual(['class.opened', 'card.opened', 'card.signed']);
  });

  test('between commit and answer, without a key: the same content is answered the same', async () => {
    const sending = await signed({ cardId: await setting.openCard(), pass: await setting.judge() });
    await expect(send({ ...sending, to: mortal.deadly })).rejects.toThrow(/hang up|reset/);
    const heard = await send({ ...sending, to: again() }).expect(201);
    expect(await revisions(sending.cardId)).toMatchObject([{ id: heard.body.id }]);
    expect(await mustBeWithoutGap()).toEqual(['class.opened', 'card.opened', 'card.signed']);
  });

  test('between commit and answer of an amendment: it is one revision', async () => {
    const sending = await signed({ cardId: await setting.openCard(), pass: await setting.judge() });
    const first = await send({ ...sending, to: again() }).expect(201);
    const previousHash = first.body.contentHash;
    const asked = { reason: 'transposed', content: content('2'), previousHash, revision: 2 };
    const { cardId, pass } = sending;
    const amending = { ...(await signed({ cardId, pass, asked })), what: 'amendments' } as const;
    await expect(send({ ...amending, to: mortal.deadly })).rejects.toThrow(/hang up|reset/);
    const heard = await send({ ...amending, to: again() }).expect(201);
    expect(heard.body).toMatchObject({ revision: 2, reason: 'transposed' });
    expect(await revisions(sending.cardId)).toHaveLength(2);
  });

  test.each([0, 10, 40])(
    '%i ms after five judges sign at once: each card is in once, whichever had been acknowledged',
    async (milliseconds) => {
      const seats = await Promise.all(
        Array.from({ length: judges }, async (_, seat) =>
          signed({
            cardId: await setting.openCard(seat),
            pass: await setting.judge(seat),
            key: `seat-${seat}`,
          }),
        ),
      );
      const sent = seats.map((seat) =>
        send({ ...seat, to: mortal.direct }).then(
          ({ status, body }) => ({ status, body }),
          () => undefined,
        ),
      );
      await pause(milliseconds);
      await mortal.kill();
      const acknowledged = await Promise.all(sent);
      for (const [at, seat] of seats.entries()) {
        const heard = await send({ ...seat, to: again() }).expect(201);
        const before = acknowledged[at];
        if (before !== undefined) expect(before).toEqual({ status: 201, body: heard.body });
        expect(await revisions(seat.cardId)).toMatchObject([{ id: heard.body.id, revision: 1 }]);
      }
      const types = await mustBeWithoutGap();
      expect(types.filter((type) => type === 'card.signed')).toHaveLength(judges);
    },
  );

  test('the database drops the connection in the middle: nothing is kept, and asked again it is', async () => {
    const [cardId, pass] = [await setting.openCard(), await setting.judge()];
    const sending = await signed({ cardId, pass, key: 'phone-9' });
    const { pool } = service.parts.db;
    const holder = await pool.connect();
    await holder.query('BEGIN');
    await holder.query('SELECT FROM card WHERE id = $1 FOR UPDATE', [sending.cardId]);
    const waiting = send({ ...sending, to: mortal.direct }).then((answer) => answer);
    await waitUntilBlocked();
    await holder.query(
      `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
       WHERE datname = current_database() AND wait_event_type = 'Lock'`,
    );
    await holder.query('ROLLBACK');
    holder.release();
    const refused = await waiting;
    expect(refused.status).toBe(503);
    expect(refused.body.code).toBe('database_unavailable');
    expect(await revisions(sending.cardId)).toEqual([]);
    await send({ ...sending, to: mortal.direct }).expect(201);
    expect(await revisions(sending.cardId)).toHaveLength(1);
  });

  async function waitUntilBlocked(tries = 200): Promise<void> {
    const { rows } = await service.parts.db.pool.query(
      `SELECT FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'`,
    );
    if (rows.length > 0) return;
    if (tries === 0) throw new Error('nobody waits for the card');
    await pause(20);
    await waitUntilBlocked(tries - 1);
  }
});
