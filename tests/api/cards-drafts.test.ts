import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { addPlaces, type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { PhonePass } from '../support/test-passes.ts';

describe('a card before it is signed', () => {
  let service: TestApp;
  let setting: CardSetting;
  let judge: PhonePass;
  let cardId: string;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    setting = await setUpClass(service);
    judge = await setting.judge();
    cardId = await setting.openCard();
  });

  const http = () => request(service.app.server);
  const entry = (at: number) => setting.entryIds[at] ?? '';
  const goAddress = (at: number) => `/v1/cards/${cardId}/goes/${entry(at)}`;
  const save = (at: number, go: object) => http().put(goAddress(at)).use(judge).send(go);
  const view = async () => (await http().get(`/v1/cards/${cardId}`).use(judge).expect(200)).body;

  test('a seat has one card: whoever opens it again gets the same', async () => {
    const open = () =>
      http().post(`/v1/classes/${setting.classId}/cards`).use(judge).send({ seatId: setting.seatIds[0] });
    const answers = await Promise.all([open(), open(), open()]);
    expect(answers.map(({ status, body }) => [status, body.id])).toEqual(Array(3).fill([200, cardId]));
    expect(await service.parts.db.prisma.card.count({ where: { classId: setting.classId } })).toBe(1);
  });

  test('opened by two phones at once it is opened once, with one line in the ledger', async () => {
    const fresh = await setUpClass(service);
    const pass = await fresh.judge();
    const open = () =>
      http().post(`/v1/classes/${fresh.classId}/cards`).use(pass).send({ seatId: fresh.seatIds[0] });
    const answers = await Promise.all([open(), open(), open(), open()]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 200, 201]);
    expect(new Set(answers.map(({ body }) => body.id)).size).toBe(1);
    const lines = await service.parts.db.prisma.ledgerLine.findMany({ where: { ledgerId: fresh.showId } });
    const opened = lines.filter(({ type }) => type.endsWith('.opened'));
    expect(opened.map(({ type }) => type)).toEqual(['class.opened', 'card.opened']);
  });

  test('the database itself refuses a second card of one seat', async () => {
    const card = await service.parts.db.prisma.card.findUniqueOrThrow({ where: { id: cardId } });
    const second = { ...card, id: service.parts.ids.next() };
    await expect(service.parts.db.prisma.card.create({ data: second })).rejects.toThrow(/Unique constraint/);
  });

  test('a go is saved as far as it is written, with its running total and what is missing', async () => {
    const go = { maneuvers: [{ position: 1, mark: '0.5' }], penalties: [{ code: 'cone-hit', position: 1 }] };
    const saved = await save(0, go).expect(200);
    expect(saved.headers.etag).toBe('"1"');
    expect(saved.body).toMatchObject({ backNumber: 101, version: 1, content: go, faults: [] });
    // 70 + 0.5 - 3
    expect(saved.body.score).toMatchObject({ score: '67.5', base: '70', tier: 'kept-pattern' });
    expect(saved.body.missing.map(({ message }: { message: string }) => message)).toEqual([
      'maneuver 2 (Jog a circle left): no mark yet; write −3 to 3 by 0.5, or say that it was not seen',
      'maneuver 3 (Lope to C): no mark yet; write −3 to 3 by 0.5, or say that it was not seen',
      'form-and-effectiveness has no mark yet; write 0 to 5 by 0.5',
    ]);
    expect((await view()).goes[0]).toEqual(saved.body);
  });

  test('a maneuver that was not seen is a state of its own, never a zero', async () => {
    const maneuvers = [
      { position: 1, mark: '1' },
      { position: 2, notSeen: true, remark: 'the rail was in the way' },
      { position: 3, mark: '-0.5' },
    ];
    const saved = await save(0, { maneuvers, extras: { 'form-and-effectiveness': '2' } }).expect(200);
    expect(saved.body.score.score).toBe('72.5');
    expect(saved.body.score.maneuvers[1]).toEqual({ position: 2, mark: null, counts: null });
    expect(saved.body.score.flags).toEqual([{ kind: 'not-seen', position: 2, treatedAs: 'left-out' }]);
  });

  const wrongMarks: readonly [mark: string, says: string][] = [
    ['0.25', '"0.25" is between two steps'],
    ['3.5', '"3.5" is outside the range'],
    ['NaN', '"NaN" is no mark'],
    ['1e309', '"1e309" is no mark'],
    ['Infinity', '"Infinity" is no mark'],
    ['½', '"½" is no mark'],
    ['1/2', '"1/2" is no mark'],
    ['-0', '"-0" is no mark'],
    ['0,5', '"0,5" is no mark'],
    ['', '"" is no mark'],
    [' 1', '" 1" is no mark'],
    ['٣', '"٣" is no mark'],
  ];
  test.each(wrongMarks)('a mark of "%s" is refused at its place, and nothing is lost', async (mark, says) => {
    await save(0, goOf(['1', '1', '1'])).expect(200);
    const refused = await save(0, goOf(['0', mark, '0']))
      .set('if-match', '"1"')
      .expect(422);
    expect(refused.body.code).toBe('go_not_on_sheet');
    expect(refused.body.errors).toHaveLength(1);
    expect(refused.body.errors[0].field).toBe('/maneuvers/1/mark');
    expect(refused.body.errors[0].message).toContain(`maneuver 2 (Jog a circle left): ${says}`);
    expect((await view()).goes[0].content).toEqual(goOf(['1', '1', '1']));
  });

  test('all that is wrong with a go is named at once', async () => {
    const go = {
      maneuvers: [
        { position: 1, mark: '0.25' },
        { position: 1, mark: '1' },
        { position: 9, mark: '1' },
      ],
      extras: { 'form-and-effectiveness': '5.5', charm: '3' },
      penalties: [{ code: 'sneeze' }],
      errorsOfCourse: 1,
    };
    const refused = await save(0, go).expect(422);
    expect(refused.body.errors.map(({ field }: { field: string }) => field).sort()).toEqual([
      '/errorsOfCourse',
      '/extras/charm',
      '/extras/form-and-effectiveness',
      '/maneuvers/0/mark',
      '/maneuvers/1/position',
      '/maneuvers/2/position',
      '/penalties/0/code',
    ]);
  });

  // RFC 8259, 6: numbers such as NaN and 1e309 are not, or need not be, what a JSON parser takes.
  test.each([
    ['{"maneuvers":[{"position":1,"mark":0.5}]}', 'invalid_request', '/maneuvers/0/mark'],
    ['{"maneuvers":[{"position":1,"mark":1e309}]}', 'invalid_request', '/maneuvers/0/mark'],
    ['{"maneuvers":[{"position":1,"mark":-0}]}', 'invalid_request', '/maneuvers/0/mark'],
    ['{"maneuvers":[{"position":1,"mark":null}]}', 'invalid_request', '/maneuvers/0/mark'],
    ['{"maneuvers":[{"position":1}]}', 'invalid_request', '/maneuvers/0'],
    ['{"maneuvers":[{"position":1,"mark":"1","notSeen":true}]}', 'invalid_request', '/maneuvers/0'],
    ['{"maneuvers":[{"position":1.5,"mark":"1"}]}', 'invalid_request', '/maneuvers/0/position'],
    ['{"manoeuvres":[]}', 'invalid_request', '/manoeuvres'],
    ['{"remark":"a\\u0000b"}', 'invalid_request', '/remark'],
    ['{"remark":"\\ud800"}', 'invalid_request', '/remark'],
    ['{"extras":{"a\\u0000":"1"}}', 'invalid_request', '/extras/a\u0000'],
    ['{"ruling":{"code":"sent-home"}}', 'invalid_request', '/ruling/code'],
  ])('%s is not of the form of a go', async (body, code, field) => {
    const refused = await http()
      .put(goAddress(0))
      .use(judge)
      .set('content-type', 'application/json')
      .send(body)
      .expect(400);
    expect(refused.body.code).toBe(code);
    expect(refused.body.errors.map((one: { field: string }) => one.field)).toEqual([field]);
  });

  test.each(['{"maneuvers":[{"position":1,"mark":NaN}]}', '{', 'mark'])('%s is no JSON', async (body) => {
    const refused = await http()
      .put(goAddress(0))
      .use(judge)
      .set('content-type', 'application/json')
      .send(body)
      .expect(400);
    expect(refused.body.code).toBe('malformed_json');
  });

  test('a go of a scratched entry, of another class, of nobody', async () => {
    await service.parts.db.prisma.classEntry.update({
      where: { id: entry(1) },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    const scratched = await save(1, goOf(['1', '1', '1'])).expect(409);
    expect(scratched.body).toMatchObject({
      code: 'entry_not_going',
      detail: 'Back number 102 is scratched.',
    });
    const other = await setUpClass(service);
    const elsewhere = await http()
      .put(`/v1/cards/${cardId}/goes/${other.entryIds[0]}`)
      .use(judge)
      .send({})
      .expect(422);
    expect(elsewhere.body.code).toBe('go_not_in_class');
  });

  describe('with two phones on one seat', () => {
    let scribe: PhonePass;
    beforeEach(async () => {
      scribe = await setting.scribe();
    });

    test('the scribe writes on the same card; a later save says which version it is of', async () => {
      await http()
        .put(goAddress(0))
        .use(scribe)
        .send(goOf(['1', '1', '1']))
        .expect(200);
      const saved = await save(0, goOf(['1', '2', '1']))
        .set('if-match', '"1"')
        .expect(200);
      expect(saved.headers.etag).toBe('"2"');
    });

    test('a save of an old version is refused with both, and the kept one stays', async () => {
      await save(0, goOf(['1', '1', '1'])).expect(200);
      await save(0, goOf(['2', '2', '2']))
        .set('if-match', '"1"')
        .expect(200);
      const late = goOf(['3', '3', '3']);
      const refused = await http()
        .put(goAddress(0))
        .use(scribe)
        .set('if-match', '"1"')
        .send(late)
        .expect(412);
      expect(refused.body.code).toBe('draft_changed_meanwhile');
      expect(refused.body.current).toMatchObject({ version: 2, content: goOf(['2', '2', '2']) });
      expect(refused.body.sent).toEqual(late);
      expect((await view()).goes[0].content).toEqual(goOf(['2', '2', '2']));
    });

    test('a first save over one that came before is refused too, with or without If-None-Match', async () => {
      await save(0, goOf(['1', '1', '1'])).expect(200);
      await save(0, goOf(['2', '2', '2'])).expect(412);
      await save(0, goOf(['2', '2', '2']))
        .set('if-none-match', '*')
        .expect(412);
    });

    test('the same go again is no conflict, whatever version it says', async () => {
      await save(0, goOf(['1', '1', '1'])).expect(200);
      const again = await save(0, goOf(['1', '1', '1']))
        .set('if-none-match', '*')
        .expect(200);
      expect(again.body.version).toBe(1);
    });

    test('two first saves at the same moment: one is kept, the other hears of it', async () => {
      const answers = await Promise.all([save(0, goOf(['1', '1', '1'])), save(0, goOf(['2', '2', '2']))]);
      expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    });

    test('a wiped go is gone, and its versions go on counting', async () => {
      await save(0, goOf(['1', '1', '1'])).expect(200);
      const wipe = () => http().delete(goAddress(0)).use(scribe);
      expect((await wipe().expect(428)).body.code).toBe('if_match_required');
      await wipe().set('if-match', '"7"').expect(412);
      await wipe().set('if-match', '"1"').expect(204);
      await wipe().set('if-match', '"1"').expect(204);
      expect((await view()).goes[0]).toMatchObject({ content: null, score: null, version: 2 });
      await save(0, goOf(['2', '2', '2']))
        .set('if-match', '"1"')
        .expect(412);
      const anew = await save(0, goOf(['2', '2', '2'])).expect(200);
      expect(anew.body.version).toBe(3);
    });
  });

  test('ties on the card are shown, and the judge orders them a whole tie at a time', async () => {
    await save(0, goOf(['1', '1', '1'])).expect(200);
    await save(1, goOf(['0', '1', '2'])).expect(200);
    expect(await view()).toMatchObject({ openTies: [[entry(0), entry(1)]], mayBeSigned: false });
    const order = (ownOrder: readonly string[][]) =>
      http().put(`/v1/cards/${cardId}/order`).use(judge).send({ ownOrder });
    const refused = await order([[entry(1), entry(2)]]).expect(422);
    expect(refused.body.code).toBe('card_illegal');
    expect(refused.body.errors[0].field).toBe('/ownOrder/0');
    const saved = await order([[entry(1), entry(0)]]).expect(200);
    expect(saved.headers.etag).toBe('"1"');
    expect(await view()).toMatchObject({ openTies: [], order: { version: 1 } });
  });

  test('an order that is no tie any more is named as a fault', async () => {
    await save(0, goOf(['1', '1', '1'])).expect(200);
    await save(1, goOf(['0', '1', '2'])).expect(200);
    const ownOrder = [[entry(1), entry(0)]];
    await http().put(`/v1/cards/${cardId}/order`).use(judge).send({ ownOrder }).expect(200);
    await save(1, goOf(['0', '1', '2.5']))
      .set('if-match', '"1"')
      .expect(200);
    const { faults } = await view();
    expect(faults).toEqual([
      { field: '/ownOrder/0', message: expect.stringContaining('not tied on this card') },
    ]);
  });

  test('a rail class is ranked: unknown, doubled and barred entries are refused, a short ranking is a draft', async () => {
    const rail = await setUpClass(service, { sheet: 'rail-pleasure-first-6', merge: addPlaces, entries: 8 });
    const pass = await rail.judge();
    const railCard = await rail.openCard();
    const [a = '', b = '', c = ''] = rail.entryIds;
    const rank = (ranking: readonly string[][], seen = '"0"') =>
      http()
        .put(`/v1/cards/${railCard}/order`)
        .use(pass)
        .set(seen === '"0"' ? {} : { 'if-match': seen })
        .send({ ranking });
    const barred = { ruling: { code: 'excused' } };
    await http().put(`/v1/cards/${railCard}/goes/${c}`).use(pass).send(barred).expect(200);
    const refused = await rank([[a], [a], [c], [entry(0)]]).expect(422);
    expect(refused.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      '/ranking/1/0',
      '/ranking/2/0',
      '/ranking/3/0',
    ]);
    await rank([[b], [a]]).expect(200);
    await rank([[a], [b]]).expect(412);
    await rank([[a], [b]], '"1"').expect(200);
    const card = await http().get(`/v1/cards/${railCard}`).use(pass).expect(200);
    expect(card.body.missing.map(({ message }: { message: string }) => message)).toEqual([
      '2 ranked; rank the first 6',
    ]);
  });
});
