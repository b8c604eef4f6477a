/** What the announcer reads out, and how the names in it are spoken. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, type Pass, passFor } from '../support/test-passes.ts';
import { allReadings, postedChild } from './consents-readers.ts';
import { type Made, openOffice } from './office-client.ts';

let service: TestApp;
let judged: JudgedClass;
let gate: Pass;

beforeAll(async () => {
  service = await buildTestApp();
});
beforeEach(async () => {
  judged = await setUpJudgedClass(service, { judges: 1, rule: { ties: [{ code: 'share' }] } });
  gate = await judged.pass('gate');
});
afterAll(() => service.close());

const announcement = () => judged.get('/announcement', gate);
const prisma = () => service.parts.db.prisma;
const entryOf = (backNumber: number) =>
  prisma().entry.findFirstOrThrow({ where: { showId: judged.showId, backNumber } });

/** 103 wins, 102 and 101 share the second place. */
const sign = () => judged.sign(0, goesOf(['0', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));

interface Named {
  readonly name: string;
  readonly spokenAs: string | null;
  readonly publicName?: string;
  readonly horse?: { readonly name: string; readonly spokenAs: string };
}

async function call(backNumber: number, { name, spokenAs, publicName, horse }: Named): Promise<void> {
  const { exhibitorId, horseId } = await entryOf(backNumber);
  const data = { name, spokenAs, ...(publicName === undefined ? {} : { publicName }) };
  await prisma().exhibitor.update({ where: { id: exhibitorId }, data });
  if (horse !== undefined) await prisma().horse.update({ where: { id: horseId }, data: horse });
}

describe('an announcement', () => {
  test('goes from the last place to the first, and says who shares one', async () => {
    await sign();
    await judged.publish('provisional');
    const { body } = await announcement().expect(200);
    expect(body.results).toHaveLength(1);
    const [{ judge, placings }] = body.results;
    expect(judge).toBeNull();
    expect(placings.map((line: Made) => [line.place, line.tied, line.backNumber, line.total])).toEqual([
      [2, true, 102, '73'],
      [2, true, 101, '73'],
      [1, false, 103, '75'],
    ]);
  });

  test('says which posting it is, who judged, and whether it is practice', async () => {
    await sign();
    await judged.publish('provisional');
    const { body, headers } = await announcement().expect(200);
    expect(body).toMatchObject({
      practice: false,
      class: { id: judged.classId, number: 1, name: 'Class 1' },
      posting: { version: 1, state: 'provisional', reason: null },
      judges: ['Judge 1'],
    });
    expect(headers['cache-control']).toBe('no-store');
    await judged.publish('official');
    expect((await announcement()).body.posting).toMatchObject({ version: 2, state: 'official' });
  });

  test('is the corrected one as soon as it is posted', async () => {
    await sign();
    await judged.publish('provisional');
    await judged.publish('official');
    await judged.amend(0, goesOf(['3', '0', '0'], ['0', '0', '0'], ['2', '0', '0']), 'Numbers transposed');
    await judged.publish('corrected', 'Numbers transposed');
    const { body } = await announcement().expect(200);
    expect(body.posting).toMatchObject({ version: 3, state: 'corrected', reason: 'Numbers transposed' });
    expect(body.results[0].placings.at(-1)).toMatchObject({ place: 1, backNumber: 101 });
  });

  test('leaves out who is not placed', async () => {
    const [first, second, third] = goesOf(['0', '0', '0'], ['0', '0', '0'], ['2', '0', '0']);
    const gone = { ...second, ruling: { code: 'disqualified', remark: 'Hit the horse.' } } as const;
    await judged.sign(0, [first ?? {}, gone, third ?? {}]);
    await judged.publish('provisional');
    const { body } = await announcement().expect(200);
    expect(body.results[0].placings.map((line: Made) => line.backNumber)).toEqual([101, 103]);
    expect(JSON.stringify(body)).not.toContain('Hit the horse');
  });

  test('is not there before a result is posted, and is for the gate and the office of the show alone', async () => {
    expect((await announcement()).body.code).toBe('class_not_posted');
    await sign();
    await judged.publish('provisional');
    const senders = {
      office: judged.office,
      nobody: noPass,
      judge: await judged.judge(0),
      scribe: await judged.scribe(0),
      elsewhere: (await openOffice(service)).pass,
    };
    const statuses: Record<string, number> = {};
    for (const [who, pass] of Object.entries(senders)) {
      statuses[who] = (await judged.get('/announcement', pass)).status;
    }
    expect(statuses).toEqual({ office: 200, nobody: 401, judge: 403, scribe: 403, elsewhere: 404 });
  });
});

describe('how a name is spoken', () => {
  const spoken = async (backNumber: number) => {
    const { body } = await announcement().expect(200);
    return body.results[0].placings.find((line: Made) => line.backNumber === backNumber);
  };
  const horse = { name: 'Moss Agate', spokenAs: 'moss AG-it' };

  beforeEach(async () => {
    await sign();
    await judged.publish('provisional');
  });

  test('is told where the full name is announced, with that of the horse', async () => {
    await call(101, { name: 'Aoife Kessler', spokenAs: 'EE-fa KESS-ler, rhymes with wrestler', horse });
    expect(await spoken(101)).toMatchObject({
      ...{ name: 'Aoife Kessler', spokenAs: 'EE-fa KESS-ler, rhymes with wrestler' },
      ...{ horse: 'Moss Agate', horseSpokenAs: 'moss AG-it' },
    });
  });

  test('is only its first word where only the first name is public, and nothing where words do not match', async () => {
    const publicName = 'first-name-and-initial';
    await call(101, { name: 'Aoife Kessler', spokenAs: 'EE-fa KESS-ler', publicName, horse });
    await call(102, { name: 'Ada Kessler', spokenAs: 'KESS-ler, rhymes with wrestler', publicName });
    expect(await spoken(101)).toMatchObject({ name: 'Aoife K.', spokenAs: 'EE-fa', horse: 'Moss Agate' });
    expect(await spoken(102)).toMatchObject({ name: 'Ada K.', spokenAs: null, horseSpokenAs: null });
  });

  test('is not told of who goes by back number, nor of her horse', async () => {
    const publicName = 'back-number';
    await call(103, { name: 'Aoife Kessler', spokenAs: 'EE-fa KESS-ler', publicName, horse });
    expect(await spoken(103)).toMatchObject({
      ...{ name: 'No. 103', spokenAs: null, horse: null, horseSpokenAs: null },
    });
  });

  test('stands nowhere else that anybody outside the office can read', async () => {
    const posted = await postedChild(service);
    await posted.consent('full');
    const data = { spokenAs: 'ah-da-MAR-iss may KESS-ler-bee' };
    await prisma().exhibitor.update({ where: { id: posted.exhibitorId }, data });
    await prisma().horse.update({
      where: { id: posted.ids.horseId ?? '' },
      data: { spokenAs: 'KESS-horse' },
    });
    const told = (await allReadings(service, posted)).filter(({ text }) => text.includes('KESS-'));
    expect(told.map(({ who, address }) => `${who} ${address}`)).toEqual([
      `gate /v1/classes/${posted.classId}/announcement`,
    ]);
  });
});

describe('a note on how a name is spoken', () => {
  test('is written by the office with the exhibitor or later, and taken back', async () => {
    const office = await openOffice(service);
    const made = await office.done('post', '/exhibitors', {
      name: 'Niamh Holloway',
      spokenAs: 'NEEV HOL-loway',
    });
    expect(made.spokenAs).toBe('NEEV HOL-loway');
    const path = `/exhibitors/${made.id}`;
    const renamed = await office.done('patch', path, { name: 'Niamh Hollowell' }, { 'if-match': '"1"' });
    expect(renamed.spokenAs).toBe('NEEV HOL-loway');
    const bare = await office.done('patch', path, { spokenAs: null }, { 'if-match': '"2"' });
    expect([bare.name, bare.spokenAs, bare.version]).toEqual(['Niamh Hollowell', null, 3]);
  });

  test('is written for a horse too, and is a line of the ledger without the words', async () => {
    const office = await openOffice(service);
    const made = await office.done('post', '/horses', { name: 'Moss Agate', spokenAs: 'moss A-gate' });
    expect(made.spokenAs).toBe('moss A-gate');
    const path = `/horses/${made.id}`;
    expect((await office.done('patch', path, { spokenAs: 'moss AG-it' })).spokenAs).toBe('moss AG-it');
    await office.done('patch', path, { spokenAs: 'moss AG-it' });
    const { items } = await office.done('get', '/ledger?limit=200');
    const changes = items.filter((line: Made) => line.type === 'horse.changed');
    expect(changes.map((line: Made) => line.body)).toEqual([{ horseId: made.id }]);
    expect((await office.done('patch', path, { spokenAs: null })).spokenAs).toBeNull();
  });

  test('goes with an erasure, also that of her horse, and what was kept of it for a request sent twice', async () => {
    const office = await openOffice(service);
    const headers = { 'idempotency-key': 'first-note' };
    const rider = await office.done(
      'post',
      '/exhibitors',
      { name: 'Ada Kessler', spokenAs: 'AY-da KESS-ler' },
      headers,
    );
    const horse = await office.done('post', '/horses', { name: "Kessler's Pride" });
    await office.done('post', '/entries', { backNumber: 301, exhibitorId: rider.id, horseId: horse.id });
    await office.done(
      'patch',
      `/horses/${horse.id}`,
      { spokenAs: 'KESS-lers pride' },
      { 'idempotency-key': 'n2' },
    );
    const erased = await office.call('post', `/exhibitors/${rider.id}/erasures`, {
      pass: await passFor(service, { role: 'manager' }),
      body: { reason: 'asked-by-family', backNumber: 301 },
    });
    expect(erased.status).toBe(201);
    expect(erased.body.answersForgotten).toBeGreaterThanOrEqual(2);
    const { rows } = await service.parts.db.pool.query<{ found: string }>(
      `SELECT 'exhibitor' AS found FROM exhibitor WHERE spoken_as LIKE '%KESS-%' AND show_id = $1
       UNION ALL SELECT 'horse' FROM horse WHERE spoken_as LIKE '%KESS-%' AND show_id = $1
       UNION ALL SELECT 'answer' FROM idempotency_key WHERE response::text LIKE '%KESS-%'`,
      [office.showId],
    );
    expect(rows).toEqual([]);
    const again = service.parts.db.pool.query("UPDATE exhibitor SET spoken_as = 'AY-da' WHERE id = $1", [
      rider.id,
    ]);
    await expect(again).rejects.toThrow(/an erased name stays erased/);
  });

  test('is in the archive with names, and in the one without there is none', async () => {
    const office = await openOffice(service);
    await office.done('post', '/exhibitors', { name: 'Ada Kessler', spokenAs: 'AY-da KESS-ler' });
    await office.done('post', '/horses', { name: 'Moss Agate', spokenAs: 'moss AG-it' });
    const full = await office.done('get', '/archive?names=full');
    expect([full.exhibitors[0].spokenAs, full.horses[0].spokenAs]).toEqual(['AY-da KESS-ler', 'moss AG-it']);
    const none = await office.done('get', '/archive?names=none');
    expect([none.exhibitors[0].spokenAs, none.horses[0].spokenAs]).toEqual([null, null]);
  });
});
