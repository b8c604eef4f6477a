import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { signedCards } from '../../src/cards/index.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import { type CardSetting, setUpClass } from '../support/card-setting.ts';
import { signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

const entries = 300;
const judges = 9;
const maneuvers = Array.from({ length: 8 }, (_, index) => `Maneuver ${index + 1}`);

describe('300 entries and nine judges', () => {
  let service: TestApp;
  let setting: CardSetting;
  beforeAll(async () => {
    service = await buildTestApp();
    setting = await setUpClass(service, { judges, entries, maneuvers });
  });
  afterAll(() => service.close());

  const http = () => request(service.app.server);
  const marks = ['-3', '-1.5', '-0.5', '0', '0.5', '1', '2', '3'];
  /** Not random: every judge marks another way, and the same in every run. */
  const go = (seat: number, at: number) => ({
    maneuvers: maneuvers.map((_, index) => ({
      position: index + 1,
      mark: marks[(seat * 3 + at * 5 + index * 7) % marks.length],
    })),
    extras: { 'form-and-effectiveness': String((seat + at) % 6) },
    ...(at % 50 === 7 ? { ruling: { code: 'off-pattern' } } : {}),
    penalties: at % 9 === 0 ? [{ code: 'cone-hit', position: 1 }] : [],
  });
  const content = (seat: number) => ({
    goes: Object.fromEntries(setting.entryIds.map((id, at) => [id, go(seat, at)])),
  });

  test('all nine send their whole card at once: each is in once, as it was sent', async () => {
    const answers = await Promise.all(
      setting.seatIds.map(async (_, seat) => {
        const [cardId, pass] = [await setting.openCard(seat), await setting.judge(seat)];
        return http()
          .post(`/v1/cards/${cardId}/signatures`)
          .use(pass)
          .use(signedBy(service, { pass, cardId, asked: { content: content(seat) } }));
      }),
    );
    expect(answers.map(({ status }) => status)).toEqual(Array(judges).fill(201));
    const { signed, missingSeatIds } = await inSqlTransaction(service.parts.db, (tx) =>
      signedCards(tx, setting.classId),
    );
    expect(missingSeatIds).toEqual([]);
    expect(signed.map((card) => card.content)).toEqual(setting.seatIds.map((_, seat) => content(seat)));
  });

  test('a card is written go by go, read whole, and signed from its drafts', async () => {
    const other = await setUpClass(service, { entries, maneuvers });
    const cardId = await other.openCard();
    const judge = await other.judge();
    for (const [at, id] of other.entryIds.entries()) {
      await http().put(`/v1/cards/${cardId}/goes/${id}`).use(judge).send(go(0, at)).expect(200);
    }
    const card = await http().get(`/v1/cards/${cardId}`).use(judge).expect(200);
    expect(card.body).toMatchObject({ mayBeSigned: true, missing: [], faults: [] });
    expect(card.body.goes).toHaveLength(entries);
    const signed = await http()
      .post(`/v1/cards/${cardId}/signatures`)
      .use(judge)
      .use(signedBy(service, { pass: judge, cardId }))
      .expect(201);
    expect(signed.body).toMatchObject({ revision: 1, contentHash: card.body.contentHash });
    expect(signed.body.openTies).toEqual(card.body.openTies);
  });

  test('an empty card names all 300 that are missing', async () => {
    const other = await setUpClass(service, { entries, maneuvers });
    const [cardId, pass] = [await other.openCard(), await other.judge()];
    const refused = await http()
      .post(`/v1/cards/${cardId}/signatures`)
      .use(pass)
      .use(signedBy(service, { pass, cardId }))
      .expect(422);
    expect(refused.body.code).toBe('card_incomplete');
    expect(refused.body.errors).toHaveLength(entries);
    expect(refused.body.errors[299].message).toBe('400 is not on the card; mark the go, or give a ruling');
  });

  test('a body beyond the limit is refused whole', async () => {
    const refused = await http()
      .post(`/v1/cards/${await setting.openCard()}/signatures`)
      .use(await setting.judge())
      .send({ jws: 'a'.repeat(1_100_000) })
      .expect(413);
    expect(refused.body.code).toBe('body_too_large');
  });
});
