import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, passFor } from '../support/test-passes.ts';
import {
  bundle,
  newShow,
  type Office,
  openOffice,
  send,
  sheetFile,
  threeManeuvers,
  totalRule,
} from './office-client.ts';

let service: TestApp;
let office: Office;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship', 'rail-pleasure-first-6', 'timed-barrels');
  office = await openOffice(service);
});
afterAll(() => service.close());

const refusal = (answer: { status: number; body: { code?: string; errors?: { field: string }[] } }) => ({
  status: answer.status,
  code: answer.body.code,
  fields: answer.body.errors?.map(({ field }) => field),
});

const postShow = async (change: object) =>
  send(service, 'post', '/v1/shows', {
    pass: await passFor(service, { role: 'office' }),
    body: { ...newShow, ...change },
  });

describe('setting up a show', () => {
  it('answers it with its version, and anyone may read it', async () => {
    const { body, headers } = await send(service, 'get', `/v1/shows/${office.showId}`);
    expect(body).toMatchObject({ ...newShow, minorPublicName: 'back-number', version: 1 });
    expect(headers.etag).toBe('"1"');
  });

  it('refuses a time zone that the IANA database does not have', async () => {
    for (const timeZone of ['America/Nowhere', 'EST5', 'Europe/Berlin; --', '']) {
      const answer = await postShow({ timeZone });
      expect([answer.status, answer.body.errors[0].field]).toEqual([
        timeZone === '' ? 400 : 422,
        '/timeZone',
      ]);
    }
  });

  it('refuses a last day before the first, and a day that the calendar does not have', async () => {
    expect(refusal(await postShow({ lastDay: '2026-10-30' }))).toMatchObject({ code: 'days_out_of_order' });
    expect(refusal(await postShow({ firstDay: '2026-02-30' }))).toMatchObject({
      status: 400,
      fields: ['/firstDay'],
    });
  });

  it('refuses a field that it does not know, by its name', async () => {
    expect(refusal(await postShow({ colour: 'blue' }))).toMatchObject({ status: 400, fields: ['/colour'] });
  });

  it('is done once when it is sent twice with one Idempotency-Key, and refuses other content under that key', async () => {
    const pass = await passFor(service, { role: 'office' });
    const headers = { 'idempotency-key': 'show-1' };
    const first = await send(service, 'post', '/v1/shows', { pass, headers, body: newShow });
    const again = await send(service, 'post', '/v1/shows', { pass, headers, body: newShow });
    expect([again.status, again.body.id, again.headers['idempotency-replayed']]).toEqual([
      201,
      first.body.id,
      'true',
    ]);
    expect(again.headers.location).toBe(first.headers.location);
    const other = await send(service, 'post', '/v1/shows', {
      pass,
      headers,
      body: { ...newShow, name: 'Other' },
    });
    expect(refusal(other)).toMatchObject({ status: 409, code: 'idempotency_key_reused' });
  });

  it('lets only the later of two editors through who read what stands there now', async () => {
    const { showId, call } = await openOffice(service);
    const change = (name: string, version?: string) =>
      call('patch', '', { body: { name }, headers: version === undefined ? {} : { 'if-match': version } });
    expect(refusal(await change('A'))).toMatchObject({ status: 428, code: 'if_match_required' });
    expect((await change('B', '"1"')).body).toMatchObject({ id: showId, name: 'B', version: 2 });
    expect(refusal(await change('C', '"1"'))).toMatchObject({ status: 412, code: 'stale_version' });
  });

  it('gives the shows page by page, each once', async () => {
    const ids: string[] = [];
    let cursor: string | null = null;
    do {
      const query: string = cursor === null ? '' : `&cursor=${cursor}`;
      const { body } = await send(service, 'get', `/v1/shows?limit=2${query}`);
      ids.push(...body.items.map(({ id }: { id: string }) => id));
      cursor = body.nextCursor;
    } while (cursor !== null);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(await service.parts.db.prisma.show.count());
    expect(refusal(await send(service, 'get', '/v1/shows?cursor=nonsense'))).toMatchObject({
      code: 'invalid_cursor',
    });
  });
});

describe('names', () => {
  const post = (name: unknown) => office.call('post', '/exhibitors', { body: { name } });

  it.each([
    ['Chinese', '王小明'],
    ['Arabic, right to left', 'ليلى عبد الرحمن'],
    ['Hebrew, right to left', 'מרים בן־דוד'],
    ['Hindi with a joiner', 'क्‍षमा'],
    ['Cherokee', 'ᏣᎳᎩ'],
    ['an apostrophe', "Siobhán O'Rourke-D’Arcy"],
    ['markup', '<b onclick="alert(1)">Bo</b> & Co; DROP TABLE entry;--'],
    ['a horse on two planes', '🐎 Zoë'],
    ['200 characters beyond the basic plane', '𐍈'.repeat(200)],
  ])('keep %s as it was written', async (_, name) => {
    const answer = await post(name);
    expect([answer.status, answer.body.name]).toEqual([201, name.normalize('NFC')]);
    const read = await office.call('get', `/exhibitors/${answer.body.id}`);
    expect(read.body.name).toBe(name.normalize('NFC'));
  });

  it('are kept composed (Unicode NFC) and trimmed', async () => {
    expect((await post('  Zoe\u0308 ')).body.name).toBe('Zo\u00eb');
  });

  it.each([
    ['blank', '   '],
    ['201 characters', 'x'.repeat(201)],
    ['a null character', 'a\u0000b'],
    ['a line break', 'a\nb'],
    ['a mark that turns the direction around', 'a\u202eb'],
    ['half of a surrogate pair', 'a\ud800b'],
    ['a number', 7],
    ['nothing', null],
  ])('are refused when they are %s', async (_, name) => {
    expect(refusal(await post(name))).toEqual({ status: 400, code: 'invalid_request', fields: ['/name'] });
  });
});

describe('score sheets', () => {
  const post = async (body: object) =>
    send(service, 'post', '/v1/score-sheets', { pass: await passFor(service, { role: 'office' }), body });

  it('are taken in whole and answered with a fingerprint; every bundled sheet is one', async () => {
    const sheet = { ...sheetFile('horsemanship'), code: 'our-horsemanship' };
    const added = await post(sheet);
    expect(added.body).toMatchObject({
      code: 'our-horsemanship',
      version: 1,
      origin: 'added',
      definition: sheet,
    });
    expect(added.body.hash).toMatch(/^[0-9a-f]{64}$/);
    const read = await send(service, 'get', '/v1/score-sheets/our-horsemanship/1');
    expect(read.body).toEqual(added.body);
  });

  it('never change: the same again does no harm, another of the same version is refused', async () => {
    const sheet = { ...sheetFile('reining'), code: 'our-reining' };
    const first = await post(sheet);
    expect((await post(sheet)).body.id).toBe(first.body.id);
    expect(refusal(await post({ ...sheet, base: '60' }))).toMatchObject({
      status: 409,
      code: 'sheet_version_taken',
    });
    expect((await post({ ...sheet, base: '60', version: 2 })).status).toBe(201);
  });

  it.each([
    ['a base that is a JSON number', { base: 70 }, 400, '/base'],
    ['a base with an exponent', { base: '7e1' }, 400, '/base'],
    ['a range upside down', { maneuver: { low: '3', high: '-3', step: '0.5' } }, 422, '/maneuver'],
    ['a step of zero', { maneuver: { low: '-3', high: '3', step: '0' } }, 422, '/maneuver/step'],
    [
      'a ruling that does not exist',
      { rulings: { banished: { kind: 'not-placed' } } },
      400,
      '/rulings/banished',
    ],
  ])('are refused with %s', async (_, change, status, field) => {
    const answer = await post({ ...sheetFile('horsemanship'), code: 'broken', ...change });
    expect(answer.status).toBe(status);
    expect(answer.body.errors.some((error: { field: string }) => error.field.startsWith(field))).toBe(true);
  });
});

describe('patterns', () => {
  it('stand in the order in which they are ridden, and may be put anew', async () => {
    const made = await office.done('post', '/patterns', { name: 'Larkspur', maneuvers: threeManeuvers });
    expect(
      made.maneuvers.map((one: { position: number; coefficient: string }) => [one.position, one.coefficient]),
    ).toEqual([
      [1, '1'],
      [2, '1'],
      [3, '1'],
    ]);
    const body = { name: 'Larkspur', maneuvers: [{ name: 'Halt', coefficient: '2.500' }] };
    const put = await office.call('put', `/patterns/${made.id}`, { body, headers: { 'if-match': '"1"' } });
    expect(put.body).toMatchObject({
      version: 2,
      maneuvers: [{ position: 1, name: 'Halt', coefficient: '2.5' }],
    });
  });

  it('are refused without a maneuver, with a second name alike, and with a coefficient that is none', async () => {
    const post = (body: object) => office.call('post', '/patterns', { body });
    await post({ name: 'Twice', maneuvers: threeManeuvers });
    expect(refusal(await post({ name: 'Twice', maneuvers: threeManeuvers }))).toMatchObject({
      code: 'already_exists',
    });
    expect(refusal(await post({ name: 'None', maneuvers: [] }))).toMatchObject({ fields: ['/maneuvers'] });
    for (const coefficient of ['0', '-1', '½', 'NaN', '1e3', '1.0001', '1234567']) {
      const answer = await post({ name: coefficient, maneuvers: [{ name: 'Halt', coefficient }] });
      expect(answer.status).toBe(400);
      expect(new Set(refusal(answer).fields)).toEqual(new Set(['/maneuvers/0/coefficient']));
    }
  });
});

describe('classes', () => {
  it('are made with a seed of their own and the last version of the sheet', async () => {
    const made = await office.addClass(1);
    expect(made).toMatchObject({
      number: 1,
      sheet: { code: 'horsemanship', version: 1 },
      status: 'open',
      version: 1,
    });
    expect(made.drawSeed).toMatch(/^[0-9a-f]{32}$/);
    expect((await send(service, 'get', `/v1/shows/${office.showId}/classes/${made.id}`)).body).toEqual(made);
  });

  it('are refused with a number that another class has, by that class', async () => {
    await office.addClass(2);
    const answer = await office.call('post', '/classes', {
      body: {
        number: 2,
        name: 'X',
        discipline: 'Y',
        sheet: { code: 'rail-pleasure-first-6' },
        placingRule: { ...totalRule, merge: { method: 'pairwise' }, ties: [] },
      },
    });
    expect(refusal(answer)).toEqual({ status: 409, code: 'class_number_taken', fields: ['/number'] });
    expect(answer.body.errors[0].message).toContain('Class 2');
  });

  const railClass = {
    number: 900,
    name: 'Rail',
    discipline: 'Pleasure',
    sheet: { code: 'rail-pleasure-first-6' },
  };

  it.each([
    [
      'adding scores on a sheet that gives none',
      railClass,
      { ...totalRule, ties: [] },
      'rule_invalid',
      '/placingRule/merge/method',
    ],
    [
      'a maneuver that the pattern does not have',
      { sheet: { code: 'horsemanship' } },
      { ...totalRule, ties: [{ code: 'maneuvers', order: [4] }] },
      'rule_invalid',
      '/placingRule/ties/0',
    ],
    [
      'a step after the place is shared',
      { sheet: { code: 'horsemanship' } },
      { ...totalRule, ties: [{ code: 'share' }, { code: 'form' }] },
      'rule_invalid',
      '/placingRule/ties/1',
    ],
    [
      'a sheet that is not there',
      { sheet: { code: 'tölting' } },
      totalRule,
      'invalid_request',
      '/sheet/code',
    ],
    [
      'a version of the sheet that is not there',
      { sheet: { code: 'horsemanship', version: 9 } },
      totalRule,
      'unknown_reference',
      '/sheet',
    ],
    [
      'no pattern, where maneuvers are marked',
      { sheet: { code: 'horsemanship' }, patternId: null },
      totalRule,
      'pattern_needed',
      '/patternId',
    ],
    [
      'a method that does not exist',
      railClass,
      { ...totalRule, merge: { method: 'taste' } },
      'invalid_request',
      '/placingRule/merge/method',
    ],
  ])('are refused with %s', async (_, change, placingRule, code, field) => {
    const pattern = await office.done('post', '/patterns', {
      name: `P ${Math.random()}`,
      maneuvers: threeManeuvers,
    });
    const body = { ...railClass, patternId: pattern.id, ...change, placingRule };
    expect(refusal(await office.call('post', '/classes', { body }))).toMatchObject({ code, fields: [field] });
  });

  it('take no ring or pattern of another show: for this show they are not there', async () => {
    const other = await openOffice(service);
    const ring = await other.done('post', '/rings', { name: 'Elsewhere' });
    const foreign = await other.done('post', '/patterns', { name: 'Elsewhere', maneuvers: threeManeuvers });
    const own = await office.addClass(3);
    const patch = (body: object) =>
      office.call('patch', `/classes/${own.id}`, { body, headers: { 'if-match': `"${own.version}"` } });
    expect(refusal(await patch({ ringId: ring.id }))).toMatchObject({ status: 422, fields: ['/ringId'] });
    expect(refusal(await patch({ patternId: foreign.id }))).toMatchObject({
      status: 422,
      fields: ['/patternId'],
    });
    expect((await other.call('get', `/classes/${own.id}`)).status).toBe(404);
  });

  it('come by number, whatever order they were made in', async () => {
    const { addClass, call } = await openOffice(service);
    for (const number of [30, 4, 12]) await addClass(number);
    const first = await call('get', '/classes?limit=2', { pass: noPass });
    expect(first.body.items.map((one: { number: number }) => one.number)).toEqual([4, 12]);
    const rest = await call('get', `/classes?limit=2&cursor=${first.body.nextCursor}`, { pass: noPass });
    expect([rest.body.items.map((one: { number: number }) => one.number), rest.body.nextCursor]).toEqual([
      [30],
      null,
    ]);
  });
});

/** Clocks in America/Chicago go back on 2026-11-01 at 02:00 (IANA time zone database, rule "US"). */
describe('a show over a change of clocks', () => {
  const at = async (number: number, scheduledAt: string, more: object = {}) => {
    const made = await office.addClass(number);
    return office.call('patch', `/classes/${made.id}`, {
      body: { scheduledAt, ...more },
      headers: { 'if-match': '"1"' },
    });
  };

  it("takes times of its own clock, before and after, with the day's own offset", async () => {
    expect((await at(101, '2026-10-31T09:00')).body).toMatchObject({
      scheduledAt: '2026-10-31T14:00:00.000Z',
      scheduledAtShow: '2026-10-31T09:00:00.000-05:00',
      day: '2026-10-31',
    });
    expect((await at(102, '2026-11-01T09:00')).body).toMatchObject({
      scheduledAt: '2026-11-01T15:00:00.000Z',
      scheduledAtShow: '2026-11-01T09:00:00.000-06:00',
      day: '2026-11-01',
    });
  });

  it('asks for the offset of a time that its clock shows twice', async () => {
    const twice = await at(103, '2026-11-01T01:30');
    expect(refusal(twice)).toEqual({ status: 422, code: 'invalid_local_time', fields: ['/scheduledAt'] });
    expect((await at(104, '2026-11-01T01:30-05:00')).body.scheduledAt).toBe('2026-11-01T06:30:00.000Z');
    expect((await at(105, '2026-11-01T01:30-06:00')).body.scheduledAt).toBe('2026-11-01T07:30:00.000Z');
  });

  it('refuses a time that its clock skips (spring: 2026-03-08, 02:00 to 03:00)', async () => {
    const spring = await openOffice(service, { ...newShow, firstDay: '2026-03-07', lastDay: '2026-03-08' });
    const made = await spring.addClass(1);
    const patch = (scheduledAt: string) =>
      spring.call('patch', `/classes/${made.id}`, { body: { scheduledAt }, headers: { 'if-match': '"1"' } });
    expect(refusal(await patch('2026-03-08T02:30'))).toMatchObject({ code: 'invalid_local_time' });
    expect((await patch('2026-03-08T03:00')).body.scheduledAt).toBe('2026-03-08T08:00:00.000Z');
  });

  it.each(['2026-10-31', '2026-10-31 09:00', '2026-10-31T24:00', '2026-10-32T09:00', 'noon', ''])(
    'refuses "%s", which is no date and time',
    async (text) => {
      const made = await office.addClass(200 + Math.floor(Math.random() * 90_000));
      const patch = { body: { scheduledAt: text }, headers: { 'if-match': '"1"' } };
      const answer = await office.call('patch', `/classes/${made.id}`, patch);
      expect([answer.status, answer.body.errors[0].field]).toEqual([400, '/scheduledAt']);
    },
  );

  it('refuses a day that is not of the show, and a time of another day than the class is on', async () => {
    expect(refusal(await at(106, '2026-11-02T09:00'))).toMatchObject({ code: 'day_outside_show' });
    expect(refusal(await at(107, '2026-10-31T09:00', { day: '2026-11-01' }))).toMatchObject({
      code: 'day_outside_show',
      fields: ['/scheduledAt'],
    });
  });

  it('counts a late evening by the day of the show grounds, not of London', async () => {
    expect((await at(108, '2026-10-31T23:30')).body).toMatchObject({
      scheduledAt: '2026-11-01T04:30:00.000Z',
      day: '2026-10-31',
    });
  });
});
