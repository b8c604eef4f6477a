import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cardIdOf } from '../../src/evidence/index.ts';
import { phoneDay } from '../../src/results/read-phone-day-schema.ts';
import { addEntry, addPlaces, type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { Pass } from '../support/test-passes.ts';

let service: TestApp;
beforeAll(async () => {
  service = await buildTestApp();
});
afterAll(() => service.close());

const path = '/v1/phones/current/day';
const ask = (pass: Pass, { query = '', etag = '' } = {}) => {
  const asked = request(service.app.server).get(`${path}${query}`).use(pass);
  return etag === '' ? asked : asked.set('if-none-match', etag);
};

/** Checked against the form that is published, to the last member. */
async function dayOf(pass: Pass, query = '') {
  const { status, body } = await ask(pass, { query });
  expect(status).toBe(200);
  return phoneDay.parse(body);
}

const put = async (pass: Pass, address: string, body: object, headers: Record<string, string> = {}) => {
  const answer = await request(service.app.server).put(address).use(pass).set(headers).send(body);
  expect(answer.status).toBe(200);
  return answer;
};

describe('the day of a phone', () => {
  let setting: CardSetting;
  let cardId: string;
  beforeAll(async () => {
    setting = await setUpClass(service, { judges: 2, merge: addPlaces });
    cardId = cardIdOf(setting.seatIds[0] ?? '');
  });

  it('holds all that is needed to judge a class with no signal, the id of its card among it', async () => {
    const { phone, classes } = await dayOf(await setting.judge());
    expect(phone).toMatchObject({
      ...{ role: 'judge', judge: { name: 'Judge 1' }, otherPhones: 0 },
      show: { id: setting.showId, timeZone: 'America/Chicago' },
    });
    expect(classes).toHaveLength(1);
    const [only] = classes;
    expect(only).toMatchObject({
      ...{ classId: setting.classId, seatId: setting.seatIds[0], number: 1, discipline: 'Horsemanship' },
      ...{ tiesMustBeBroken: true, withdrawn: false, state: 'setting-up' },
      rule: { merge: { method: 'rank-sum' } },
      panel: [{ seatOrder: 1 }, { seatOrder: 2 }],
      sheet: { kind: 'pattern', code: 'horsemanship' },
      card: { cardId, opened: false, goes: [], order: null, signed: null },
    });
    expect(
      only?.pattern?.maneuvers.map(({ position, name, coefficient }) => [position, name, coefficient]),
    ).toEqual([
      [1, 'Walk to B', '1'],
      [2, 'Jog a circle left', '1'],
      [3, 'Lope to C', '1'],
    ]);
    expect(
      only?.entries.map(({ backNumber, goPosition, status }) => [backNumber, goPosition, status]),
    ).toEqual([
      [101, 1, 'entered'],
      [102, 2, 'entered'],
      [103, 3, 'entered'],
    ]);
    const { hash } = await service.parts.db.prisma.scoreSheet.findFirstOrThrow({
      where: { code: 'horsemanship' },
    });
    expect(only?.sheetName.hash).toBe(hash);
  });

  it('names neither riders nor horses, and nothing of the other judge', async () => {
    const { text } = await ask(await setting.judge());
    for (const name of ['Exhibitor', 'Horse 1', 'Judge 2']) expect(text).not.toContain(name);
  });

  it('is answered by 304 until something of it changes', async () => {
    const judge = await setting.judge();
    const { headers } = await ask(judge);
    const { etag = '' } = headers;
    expect(headers['cache-control']).toBe('no-store');
    expect((await ask(judge, { etag })).status).toBe(304);
    const late = await addEntry(service, { ...setting, go: 9 });
    const changed = await ask(judge, { etag });
    expect(changed.status).toBe(200);
    expect(changed.headers.etag).not.toBe(etag);
    expect(changed.body.classes[0].entries.map((one: { backNumber: number }) => one.backNumber)).toContain(
      109,
    );
    await service.parts.db.prisma.classEntry.update({
      where: { id: late },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    expect((await ask(judge, { etag: changed.headers.etag ?? '' })).status).toBe(200);
  });

  it('has the drafts of both phones of the seat with their versions, and says that there are two', async () => {
    const [judge, scribe] = [await setting.judge(), await setting.scribe()];
    await setting.openCard();
    const [first = '', second = ''] = setting.entryIds;
    const go = { maneuvers: [{ position: 1, mark: '0.5' }] };
    await put(scribe, `/v1/cards/${cardId}/goes/${first}`, go);
    await put(scribe, `/v1/cards/${cardId}/goes/${first}`, goOf(['0', '0', '0']), { 'if-match': '"1"' });
    await put(judge, `/v1/cards/${cardId}/goes/${second}`, goOf(['0', '0', '0']));
    await put(judge, `/v1/cards/${cardId}/order`, { ownOrder: [[second, first]] });
    const { phone, classes } = await dayOf(judge);
    expect(phone.otherPhones).toBe(1);
    const card = classes[0]?.card;
    expect(card).toMatchObject({ cardId, opened: true });
    expect(card?.order).toMatchObject({ version: 1, content: { ownOrder: [[second, first]] } });
    const drafts = card?.goes.map(({ classEntryId, version, content }) => [classEntryId, version, content]);
    expect(drafts).toHaveLength(2);
    expect(drafts).toContainEqual([first, 2, goOf(['0', '0', '0'])]);
    expect(drafts).toContainEqual([second, 1, goOf(['0', '0', '0'])]);
  });

  it('has the signed revision instead of the drafts once the card is signed', async () => {
    const own = await setUpClass(service, { entries: 1 });
    const judge = await own.judge();
    const opened = await own.openCard();
    const goes = { [own.entryIds[0] ?? '']: goOf(['1', '0', '1']) };
    await put(judge, `/v1/cards/${opened}/goes/${own.entryIds[0]}`, goOf(['1', '0', '1']));
    const asked = { content: { goes } };
    const signed = await request(service.app.server)
      .post(`/v1/cards/${opened}/signatures`)
      .use(judge)
      .use(signedBy(service, { pass: judge, cardId: opened, asked }));
    expect(signed.status).toBe(201);
    const { classes } = await dayOf(judge);
    const { contentHash } = signed.body;
    expect(classes[0]).toMatchObject({
      state: 'cards-in',
      card: { goes: [], signed: { revision: 1, contentHash, content: { goes }, reason: null } },
    });
  });

  it('can be asked for one class alone', async () => {
    const judge = await setting.judge();
    expect((await dayOf(judge, `?classId=${setting.classId}`)).classes).toHaveLength(1);
    const other = await setUpClass(service);
    expect((await dayOf(judge, `?classId=${other.classId}`)).classes).toEqual([]);
    expect((await ask(judge, { query: '?classId=nine' })).body).toMatchObject({
      ...{ status: 400, errors: [{ field: 'query/classId' }] },
    });
  });

  it('takes a few statements, however many classes there are', async () => {
    const judge = await setting.judge();
    const { pool } = service.parts.db;
    const query = pool.query.bind(pool);
    const asked: unknown[] = [];
    pool.query = ((...all: unknown[]) => {
      asked.push(all[0]);
      return (query as (...one: unknown[]) => unknown)(...all);
    }) as typeof pool.query;
    try {
      await dayOf(judge);
    } finally {
      pool.query = query;
    }
    // One of them is the guard's.
    expect(asked.length).toBeLessThanOrEqual(7);
  });
});

describe('a phone that lets go', () => {
  it('is taken off the show at once by itself, and its line says so', async () => {
    const setting = await setUpClass(service);
    const scribe = await setting.scribe();
    const ended = await request(service.app.server).delete('/v1/phones/current').use(scribe);
    expect(ended.status).toBe(204);
    const refused = [
      await ask(scribe),
      await request(service.app.server).delete('/v1/phones/current').use(scribe),
    ];
    for (const { status, body } of refused) expect([status, body.code]).toEqual([401, 'phone_revoked']);
    const { phoneId } = scribe;
    const stored = await service.parts.db.prisma.phone.findUniqueOrThrow({ where: { id: phoneId } });
    expect(stored.revokedWhy).toBe('It ended its own pairing.');
    const lines = await service.parts.db.prisma.ledgerLine.findMany({
      where: { ledgerId: setting.showId, type: 'phone.revoked' },
    });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({ body: { phoneId }, actor: { as: 'scribe', phone: phoneId } });
  });

  it('leaves what it wrote, and the other phones of its judge go on', async () => {
    const setting = await setUpClass(service);
    const [judge, scribe] = [await setting.judge(), await setting.scribe()];
    const cardId = await setting.openCard();
    await put(scribe, `/v1/cards/${cardId}/goes/${setting.entryIds[0]}`, { remark: 'bold' });
    await request(service.app.server).delete('/v1/phones/current').use(scribe).expect(204);
    const { phone, classes } = await dayOf(judge);
    expect(phone.otherPhones).toBe(0);
    expect(classes[0]?.card.goes).toMatchObject([{ version: 1, content: { remark: 'bold' } }]);
  });
});
