import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { type Asked, signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { PhonePass } from '../support/test-passes.ts';

const signedAt = '2026-05-02T15:04:05.678Z';

describe('a signed card is amended', () => {
  let service: TestApp;
  let setting: CardSetting;
  let judge: PhonePass;
  let cardId: string;
  let firstHash: string;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    setting = await setUpClass(service, { entries: 2 });
    judge = await setting.judge();
    cardId = await setting.openCard();
    const signed = await post('signatures', { signedAt, content: content('0') }).expect(201);
    firstHash = signed.body.contentHash;
  });

  const http = () => request(service.app.server);
  const post = (what: 'signatures' | 'amendments', asked: Asked) =>
    http()
      .post(`/v1/cards/${cardId}/${what}`)
      .use(judge)
      .use(signedBy(service, { pass: judge, cardId, asked }));
  const get = (path: string) => http().get(`/v1/cards/${cardId}${path}`).use(judge);
  const content = (mark: string) => ({
    goes: {
      [setting.entryIds[0] ?? '']: goOf([mark, '0', '0']),
      [setting.entryIds[1] ?? '']: goOf(['1', '1', '1']),
    },
  });
  const amendment = (mark: string, changes: Asked = {}): Asked => ({
    ...{
      signedAt,
      reason: 'Numbers of 101 and 102 transposed',
      content: content(mark),
      previousHash: firstHash,
      revision: 2,
    },
    ...changes,
  });

  test('with a reason: a new revision names the old one, and the old one stays readable', async () => {
    const amended = await post('amendments', amendment('0.5')).expect(201);
    expect(amended.body).toMatchObject({
      ...{ revision: 2, previousHash: firstHash, reason: 'Numbers of 101 and 102 transposed' },
    });
    const listed = await get('/revisions').expect(200);
    expect(listed.body.items).toMatchObject([
      { revision: 1, contentHash: firstHash, previousHash: null, reason: null },
      { revision: 2, contentHash: amended.body.contentHash, previousHash: firstHash },
    ]);
    expect((await get('/revisions/1').expect(200)).body.content).toEqual(content('0'));
    expect((await get('/revisions/2').expect(200)).body.content).toEqual(content('0.5'));
    expect((await get('/revisions/3').expect(404)).body.code).toBe('not_found');
    const seen = (await get('').expect(200)).body;
    expect(seen).toMatchObject({ state: 'signed', contentHash: amended.body.contentHash });
    expect(seen.goes[0].score.score).toBe('73.5');
    const lines = await service.parts.db.prisma.ledgerLine.findMany({
      where: { ledgerId: setting.showId, type: 'card.amended' },
    });
    expect(lines.map(({ body }) => body)).toEqual([
      {
        ...{ classId: setting.classId, seatId: setting.seatIds[0], cardId },
        ...{ revisionId: amended.body.id, revision: 2, phoneId: judge.phoneId },
        jwsHash: expect.stringMatching(/^[0-9a-f]{64}$/),
      },
    ]);
  });

  test.each([[{ reason: null }], [{ reason: '' }], [{ reason: ' \n ' }]])(
    'not without a reason: %j',
    async (changes) => {
      const refused = await post('amendments', amendment('0.5', changes)).expect(422);
      expect(refused.body).toMatchObject({ code: 'reason_missing', errors: [{ field: '/reason' }] });
    },
  );

  test('not over a revision that the judge has not seen', async () => {
    const second = await post('amendments', amendment('0.5')).expect(201);
    const refused = await post('amendments', amendment('1', { reason: 'once more' })).expect(409);
    expect(refused.body).toMatchObject({
      ...{ code: 'stale_revision', revision: 2, contentHash: second.body.contentHash },
    });
    await post('amendments', amendment('1', { previousHash: second.body.contentHash, revision: 3 })).expect(
      201,
    );
  });

  test('of two amendments at once one is kept, the other hears of it', async () => {
    const answers = await Promise.all([
      post('amendments', amendment('0.5')),
      post('amendments', amendment('1')),
      post('amendments', amendment('1.5')),
    ]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409]);
  });

  test('the same amendment sent twice is one revision', async () => {
    const answers = await Promise.all(Array.from({ length: 4 }, () => post('amendments', amendment('0.5'))));
    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201]);
    expect(new Set(answers.map(({ body }) => body.id)).size).toBe(1);
    expect((await get('/revisions').expect(200)).body.items).toHaveLength(2);
  });

  test('not with what the sheet does not allow, nor with something missing, nor with nothing changed', async () => {
    expect((await post('amendments', amendment('0.25')).expect(422)).body.code).toBe('card_illegal');
    const { [setting.entryIds[0] ?? '']: first, ...others } = content('0').goes;
    expect(first).toBeDefined();
    const short = amendment('0', { content: { goes: others } });
    expect((await post('amendments', short).expect(422)).body.code).toBe('card_incomplete');
    expect((await post('amendments', amendment('0')).expect(422)).body.code).toBe(
      'amendment_changes_nothing',
    );
  });

  test('not before it is signed', async () => {
    const other = await setUpClass(service);
    const [cardId, pass] = [await other.openCard(), await other.judge()];
    const refused = await http()
      .post(`/v1/cards/${cardId}/amendments`)
      .use(pass)
      .use(signedBy(service, { pass, cardId, asked: amendment('1') }))
      .expect(409);
    expect(refused.body.code).toBe('card_not_signed');
  });

  test('back to what it was before is an amendment like any other', async () => {
    const second = await post('amendments', amendment('0.5')).expect(201);
    const previousHash = second.body.contentHash;
    const back = amendment('0', { previousHash, revision: 3, reason: 'the first was right' });
    const third = await post('amendments', back).expect(201);
    expect(third.body).toMatchObject({ revision: 3, contentHash: firstHash });
  });

  test('a reason in any script is kept as it was written', async () => {
    const reason = `تصحيح: O'Neill <b>102</b> ${'ü'.repeat(150)}`;
    const amended = await post('amendments', amendment('0.5', { reason })).expect(201);
    expect(amended.body.reason).toBe(reason);
  });
});
