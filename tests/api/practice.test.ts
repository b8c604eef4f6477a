import { decodeJwt } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyArchive } from '../../src/archive/offline.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, passFor } from '../support/test-passes.ts';
import { bundle, type Made, newShow, openOffice, send } from './office-client.ts';
import {
  judgeAndPost,
  privateWords,
  type RehearsedShow,
  rehearsedShow,
  rowsOfShow,
} from './practice-show.ts';

let service: TestApp;
let found: RehearsedShow;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  found = await rehearsedShow(service);
}, 60_000);
afterAll(() => service.close());

const rehearsalId = () => found.rehearsal.id as string;
const rows = (showId: string) => rowsOfShow(service, showId);
const read = async (path: string): Promise<Made> => {
  const answer = await send(service, 'get', path, { pass: noPass });
  expect([path, answer.status]).toEqual([path, 200]);
  return answer.body;
};

describe('the kind of a show', () => {
  test('is official where nothing is said, is set when the show is made, and never changes', async () => {
    const official = await openOffice(service);
    expect(await official.done('get', '')).toMatchObject({ kind: 'official', practice: false });
    const practice = await openOffice(service, { ...newShow, kind: 'practice' });
    expect(await practice.done('get', '')).toMatchObject({ kind: 'practice', practice: true });
    for (const office of [official, practice]) {
      const body = { kind: 'official' };
      const answer = await office.call('patch', '', { body, headers: { 'if-match': '"1"' } });
      expect(answer.status).toBe(400);
    }
    const { pool } = service.parts.db;
    const change = pool.query("UPDATE show SET kind = 'official' WHERE id = $1", [practice.showId]);
    await expect(change).rejects.toThrow(/official or practice from the first day on/);
    const crossed = pool.query('UPDATE show SET rehearsal_of_id = NULL WHERE id = $1', [rehearsalId()]);
    await expect(crossed).rejects.toThrow(/official or practice from the first day on/);
  });

  test('is a mark in the name wherever it is shown, once and not to be edited away', async () => {
    const practice = await openOffice(service, { ...newShow, kind: 'practice' });
    const name = 'Practice: Aspen Hollow Open';
    const show = await practice.done('get', '');
    expect(show.name).toBe(name);
    const again = await practice.done('patch', '', { name: show.name }, { 'if-match': '"1"' });
    expect(again.name).toBe(name);
    const renamed = await practice.done('patch', '', { name: 'Aspen Hollow' }, { 'if-match': '"2"' });
    expect(renamed.name).toBe('Practice: Aspen Hollow');
    const { items } = await read('/v1/shows?limit=200');
    expect(items.find(({ id }: Made) => id === practice.showId).name).toBe('Practice: Aspen Hollow');
    expect((await read(`/v1/shows/${practice.showId}/board`)).show).toMatchObject({
      ...{ name: 'Practice: Aspen Hollow', practice: true },
    });
  });
});

describe('a rehearsal', () => {
  test('has the rings, judges, patterns, open classes, panels, back numbers and orders of go of its show', async () => {
    const { office, rehearsal, manager } = found;
    expect(rehearsal).toMatchObject({ kind: 'practice', practice: true, rehearsalOf: office.showId });
    const official = await program(office.showId);
    expect(await program(rehearsalId())).toEqual(official);
    expect(official.map(({ number }) => number)).toEqual([1, 2]);
    expect(official[1]?.backNumbers).toHaveLength(4);

    async function program(showId: string) {
      const get = async (path: string) =>
        (await send(service, 'get', `/v1/shows/${showId}${path}`, { pass: manager })).body;
      const classes = (await get('/classes')).items.filter(({ status }: Made) => status === 'open');
      return Promise.all(
        classes.map(async ({ id, number, name, youth, sheet, drawSeed, day }: Made) => {
          const { goes } = await get(`/classes/${id}/order-of-go`);
          const { seats } = await get(`/classes/${id}/panel`);
          return {
            ...{ number, name, youth, sheet, drawSeed, day },
            // Whoever is scratched at the show goes last in the rehearsal.
            backNumbers: goes.map(({ backNumber }: Made) => backNumber),
            seats: seats
              .filter(({ withdrawnAt }: Made) => withdrawnAt === null)
              .map(({ name: judge, seatOrder, role }: Made) => ({ judge, seatOrder, role })),
          };
        }),
      );
    }
  });

  test('has nobody who rides, no horse and no owner by name, and no word that somebody wrote', async () => {
    expect(JSON.stringify(await rows(found.office.showId))).toMatch(privateWords);
    const copied = await rows(rehearsalId());
    expect(JSON.stringify(copied)).not.toMatch(privateWords);
    const { prisma } = service.parts.db;
    const where = { showId: rehearsalId() };
    const exhibitors = await prisma.exhibitor.findMany({ where, orderBy: { name: 'asc' } });
    // 148 and 214 are one rider, as at the show: the order of go keeps her goes apart.
    expect(exhibitors.map(({ name }) => name)).toEqual(['Rehearsal 148', 'Rehearsal 157', 'Rehearsal 176']);
    expect(exhibitors.every(({ bornOn, publicName }) => bornOn === null && publicName === null)).toBe(true);
    const horses = await prisma.horse.findMany({ where, orderBy: { name: 'asc' } });
    expect(horses.map(({ name }) => name)).toEqual(
      [148, 157, 176, 214].map((number) => `Rehearsal horse ${number}`),
    );
    expect(copied.owner).toEqual([]);
    const entries = await prisma.classEntry.findMany({ where });
    expect(new Set(entries.map(({ status }) => status))).toEqual(new Set(['entered']));
  });

  test('has ids of its own throughout: no row of it names a row of its show', async () => {
    const uuids = (texts: readonly string[]) => texts.flatMap((text) => text.match(/[0-9a-f-]{36}/g) ?? []);
    const own = await rows(found.office.showId);
    const tables = Object.entries(own).filter(([table]) => table !== 'account_show');
    // The first column of a row is its id; sheets and accounts belong to no show.
    const known = new Set(tables.flatMap(([, texts]) => texts.map((text) => uuids([text])[0] ?? '')));
    const copied = Object.entries(await rows(rehearsalId()));
    const crossing = copied.flatMap(([table, texts]) =>
      uuids(texts)
        .filter((id) => known.has(id))
        .map((id) => `${table} ${id}`),
    );
    expect(crossing).toEqual([`show ${found.office.showId}`]);
    expect(known.size).toBeGreaterThan(40);
  });

  test('has no card, ruling, posting, consent, invitation or phone, and a rule that names its own seats', async () => {
    const copied = await rows(rehearsalId());
    const empty = ['card', 'card_draft_go', 'card_revision', 'ruling', 'posting', 'paper_card'];
    for (const table of [...empty, 'exhibitor_consent', 'invitation', 'phone', 'class_relation'])
      expect([table, copied[table]]).toEqual([table, []]);
    const { prisma } = service.parts.db;
    const classes = await prisma.showClass.findMany({
      where: { showId: rehearsalId() },
      include: { seats: true },
      orderBy: { number: 'asc' },
    });
    expect(classes.map(({ openedAt, calledAt }) => [openedAt, calledAt])).toEqual(
      Array(2).fill([null, null]),
    );
    const rule = classes[0]?.placingRule as Made;
    expect(classes[0]?.seats.map(({ id }) => id)).toContain(rule.ties[0].judges[0]);
  });

  test('is told in both ledgers, with ids and numbers', async () => {
    const { prisma } = service.parts.db;
    const made = await prisma.ledgerLine.findMany({
      where: { ledgerId: found.office.showId, type: 'rehearsal.made' },
    });
    expect(made.map(({ body }) => body)).toEqual([{ rehearsalId: rehearsalId() }]);
    const lines = await prisma.ledgerLine.findMany({
      where: { ledgerId: rehearsalId() },
      orderBy: { sequence: 'asc' },
    });
    const rehearsalOf = found.office.showId;
    expect(lines[0]).toMatchObject({
      ...{ sequence: 1, type: 'show.created' },
      body: { showId: rehearsalId(), kind: 'practice', rehearsalOf },
    });
    expect(lines.find(({ type }) => type === 'rehearsal.filled')?.body).toEqual({
      ...{ rehearsalOf, rings: 1, people: 3, patterns: 3, entries: 4, classes: 2 },
    });
  });

  test('is open to the accounts of its show and to no other; there is none of a rehearsal', async () => {
    const path = `/v1/shows/${rehearsalId()}`;
    const own = await send(service, 'get', `${path}/exhibitors`, { pass: found.office.pass });
    expect(own.status).toBe(200);
    const strange = await passFor(service, { role: 'secretary', showId: (await openOffice(service)).showId });
    const refused = await send(service, 'get', `${path}/exhibitors`, { pass: strange });
    expect([refused.status, refused.body.code]).toEqual([403, 'other_show']);
    const again = await send(service, 'post', `${path}/rehearsals`, { pass: found.office.pass });
    expect([again.status, again.body.code]).toEqual([409, 'rehearsal_of_practice']);
  });

  test('runs to the posting; every answer says that it is practice, and its show stays as it was', async () => {
    const { office, manager, ids } = found;
    const before = await rows(office.showId);
    const lines = () => service.parts.db.prisma.ledgerLine.count({ where: { ledgerId: office.showId } });
    const linesBefore = await lines();
    const { items } = await read(`/v1/shows/${rehearsalId()}/classes`);
    const classId = items[1].id;
    const { postingId } = await judgeAndPost(service, { showId: rehearsalId(), classId, office: manager });

    const result = await read(`/v1/classes/${classId}/result`);
    expect(result).toMatchObject({ practice: true });
    expect(result.results[0].placings[0].name).toMatch(/^(Rehearsal|No\.) \d+$/);
    expect(await read(`/v1/classes/${classId}/result/entries/214`)).toMatchObject({ practice: true });
    const table = await send(service, 'get', `/v1/classes/${classId}/result.csv`, { pass: noPass });
    expect(table.text).toContain('"practice (provisional)"');
    expect(await read(`/v1/classes/${classId}/postings`)).toMatchObject({ practice: true });
    const posting = await read(`/v1/postings/${postingId}`);
    expect(posting).toMatchObject({ practice: true });
    expect((await read(`/v1/shows/${rehearsalId()}/board`)).show).toMatchObject({ practice: true });
    expect(await read(`/v1/shows/${rehearsalId()}`)).toMatchObject({ practice: true });
    const { jws } = await service.parts.db.prisma.posting.findUniqueOrThrow({ where: { id: postingId } });
    expect(decodeJwt(jws)).toMatchObject({ practice: true, showId: rehearsalId() });

    expect(await rows(office.showId)).toEqual(before);
    expect(await lines()).toBe(linesBefore);
    const official = await read(`/v1/classes/${ids.postedClassId}/result`);
    expect(official).toMatchObject({ practice: false });
    expect((await read(`/v1/shows/${office.showId}/board`)).show).toMatchObject({ practice: false });
    expect(await read(`/v1/postings/${ids.postingId}`)).toMatchObject({ practice: false });
  });

  test('verifies by itself, from its first line to its posting, and so does its show', async () => {
    for (const showId of [rehearsalId(), found.office.showId]) {
      const answer = await send(service, 'get', `/v1/shows/${showId}/archive`, { pass: found.manager });
      const { archive, faults } = await verifyArchive(answer.body);
      expect(faults).toEqual([]);
      expect(archive?.show.kind).toBe(showId === rehearsalId() ? 'practice' : 'official');
      expect(archive?.postings).toHaveLength(1);
    }
  });

  test('may be made again, in one transaction and once for one key', async () => {
    const { office } = found;
    const make = () =>
      office.call('post', '/rehearsals', { headers: { 'idempotency-key': 'second-rehearsal' } });
    const [first, second] = [await make(), await make()];
    expect(second.body).toEqual(first.body);
    expect(first.headers.location).toBe(`/v1/shows/${first.body.id}`);
    const where = { rehearsalOfId: office.showId };
    expect(await service.parts.db.prisma.show.count({ where })).toBe(2);
    await request(service.app.server).get(String(first.headers.location)).expect(200);
  });
});
