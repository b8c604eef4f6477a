import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, type Pass, type PhonePass, passFor } from '../support/test-passes.ts';

const signedAt = '2026-05-02T15:04:05.678Z';

describe('who sees and writes which card', () => {
  let service: TestApp;
  let setting: CardSetting;
  let cards: readonly string[];
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    setting = await setUpClass(service, { judges: 2, entries: 1 });
    cards = [await setting.openCard(0), await setting.openCard(1)];
    await put(await setting.judge(1), 1).expect(200);
  });

  const http = () => request(service.app.server);
  const content = () => ({ goes: { [setting.entryIds[0] ?? '']: goOf(['1', '1', '1']) } });
  const put = (pass: Pass, card: number) =>
    http()
      .put(`/v1/cards/${cards[card]}/goes/${setting.entryIds[0]}`)
      .use(pass)
      .send(goOf(['1', '1', '1']));
  const sign = (pass: PhonePass, card: number) =>
    http()
      .post(`/v1/cards/${cards[card]}/signatures`)
      .use(pass)
      .use(signedBy(service, { pass, cardId: cards[card] ?? '', asked: { signedAt, content: content() } }));
  const progress = (pass: Pass) => http().get(`/v1/classes/${setting.classId}/cards`).use(pass);

  /** Every address of the second seat's card, with a body that would be right. */
  function everything(pass: Pass) {
    const card = `/v1/cards/${cards[1]}`;
    const go = `${card}/goes/${setting.entryIds[0]}`;
    const jws = 'a.b.c';
    const asked = [
      http().get(card),
      http().get(`${card}/revisions`),
      http().get(`${card}/revisions/1`),
      http()
        .put(go)
        .send(goOf(['2', '2', '2'])),
      http().delete(go).set('if-match', '"1"'),
      http().put(`${card}/order`).send({ ownOrder: [] }),
      http().post(`${card}/signatures`).send({ jws }),
      http().post(`${card}/amendments`).send({ jws }),
      http().post(`/v1/classes/${setting.classId}/cards`).send({ seatId: setting.seatIds[1] }),
    ];
    return Promise.all(asked.map((one) => one.use(pass)));
  }
  const codes = (answers: readonly request.Response[]) => answers.map(({ body }) => body.code);

  test("a judge meets a closed door at every address of another judge's card", async () => {
    expect(codes(await everything(await setting.judge(0)))).toEqual(Array(9).fill('other_seat'));
  });

  test("so does another judge's scribe, who also signs and amends nothing", async () => {
    const answers = codes(await everything(await setting.scribe(0)));
    expect(answers.filter((code) => code === 'not_allowed')).toHaveLength(2);
    expect(answers.filter((code) => code === 'other_seat')).toHaveLength(7);
  });

  test("also after that card is signed, and after the judge's own is", async () => {
    await sign(await setting.judge(1), 1).expect(201);
    await sign(await setting.judge(0), 0).expect(201);
    expect(codes(await everything(await setting.judge(0)))).toEqual(Array(9).fill('other_seat'));
  });

  test('a judge hears how far her own card is, and nothing of the others', async () => {
    const seen = await progress(await setting.judge(0)).expect(200);
    expect(seen.body.items.map(({ seatId }: { seatId: string }) => seatId)).toEqual([setting.seatIds[0]]);
  });

  test('office and gate hear how far each card is: counts, never a mark', async () => {
    for (const role of ['office', 'gate'] as const) {
      const seen = await progress(await setting.pass(role)).expect(200);
      expect(seen.body.items).toEqual([
        {
          ...{ seatId: setting.seatIds[0], seatOrder: 1, role: 'judge', withdrawn: false, cardId: cards[0] },
          ...{ goesWritten: 0, goesExpected: 1, signed: null },
        },
        {
          ...{ seatId: setting.seatIds[1], seatOrder: 2, role: 'judge', withdrawn: false, cardId: cards[1] },
          ...{ goesWritten: 1, goesExpected: 1, signed: null },
        },
      ]);
    }
  });

  test('the office reads a card once it is signed, and writes none', async () => {
    const office = await setting.pass('office');
    const before = codes(await everything(office));
    expect(before).toEqual([...Array(3).fill('card_hidden'), ...Array(6).fill('not_allowed')]);
    await sign(await setting.judge(1), 1).expect(201);
    const read = await http().get(`/v1/cards/${cards[1]}`).use(office).expect(200);
    expect(read.body).toMatchObject({ state: 'signed', goes: [{ content: goOf(['1', '1', '1']) }] });
    await http().get(`/v1/cards/${cards[1]}/revisions`).use(office).expect(200);
    await http().get(`/v1/cards/${cards[1]}/revisions/1`).use(office).expect(200);
  });

  test('gate and public read and write no card; without a pass nothing is told', async () => {
    expect(codes(await everything(await setting.pass('gate')))).toEqual(Array(9).fill('not_allowed'));
    expect(codes(await everything(noPass))).toEqual(Array(9).fill('token_missing'));
    expect((await progress(noPass).expect(401)).body.code).toBe('token_missing');
    expect((await http().get(`/v1/cards/${cards[1]}`).expect(401)).body.code).toBe('token_missing');
  });

  test('a pass of another show opens nothing here, not even for an office', async () => {
    const other = await setUpClass(service);
    await sign(await setting.judge(1), 1).expect(201);
    const stranger = await other.pass('office');
    const read = await http().get(`/v1/cards/${cards[1]}`).use(stranger).expect(403);
    expect(read.body.code).toBe('other_show');
    expect((await progress(stranger).expect(403)).body.code).toBe('other_show');
  });

  test('a judge with a seat of another class opens no card here', async () => {
    const other = await setUpClass(service);
    const refused = await http()
      .post(`/v1/classes/${setting.classId}/cards`)
      .use(await other.judge())
      .send({ seatId: other.seatIds[0] })
      .expect(404);
    expect(refused.body.code).toBe('not_found');
  });

  test('what everyone hears of a signature holds no mark, and no fingerprint from which marks could be guessed', async () => {
    const signed = await sign(await setting.judge(1), 1).expect(201);
    const line = await service.parts.db.prisma.ledgerLine.findFirstOrThrow({
      where: { ledgerId: setting.showId, type: 'card.signed' },
    });
    const known = ['cardId', 'classId', 'jwsHash', 'phoneId', 'revision', 'revisionId', 'seatId'];
    expect(Object.keys(line.body as object).sort()).toEqual(known);
    expect(JSON.stringify(line.body)).not.toContain(signed.body.contentHash);
  });

  test('a scribe writes and reads the card of her judge', async () => {
    const scribe = await setting.scribe(1);
    const saved = await http()
      .put(`/v1/cards/${cards[1]}/goes/${setting.entryIds[0]}`)
      .use(scribe)
      .set('if-match', '"1"')
      .send(goOf(['2', '2', '2']))
      .expect(200);
    expect(saved.body.version).toBe(2);
    await http().get(`/v1/cards/${cards[1]}`).use(scribe).expect(200);
    expect((await sign(scribe, 1).expect(403)).body.code).toBe('not_allowed');
  });

  test('an office of the whole service reads signed cards of every show', async () => {
    await sign(await setting.judge(1), 1).expect(201);
    const office = await passFor(service, { role: 'office' });
    await http().get(`/v1/cards/${cards[1]}`).use(office).expect(200);
  });

  test('an address of no card is not found', async () => {
    const nobody = '0198f0a0-0000-7000-8000-000000000000';
    const judge = await setting.judge(0);
    const none = await http().get(`/v1/cards/${nobody}`).use(judge).expect(404);
    expect(none.body.code).toBe('not_found');
    const bad = await http().get('/v1/cards/7').use(judge).expect(400);
    expect(bad.body.errors).toEqual([{ field: 'params/cardId', message: 'it must be an id: a UUID' }]);
  });
});
