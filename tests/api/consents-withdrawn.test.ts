import type { AddressInfo } from 'node:net';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openEventStream } from '../support/event-stream.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { allReadings, child, givesAway, type PostedChild, postedChild } from './consents-readers.ts';

let service: TestApp;
let beside: TestApp;
let posted: PostedChild;

beforeAll(async () => {
  service = await buildTestApp();
  beside = await buildTestApp({ beside: service });
  posted = await postedChild(service);
});
afterAll(async () => {
  await beside.close();
  await service.close();
});

const resultOf = ({ app }: TestApp) => request(app.server).get(`/v1/classes/${posted.classId}/result`);
const nameIn = ({ body }: request.Response) =>
  body.results[0].placings.find(({ backNumber }: { backNumber: number }) => backNumber === 101).name;
const preview = () => posted.get('/tabulation', posted.office).expect(200);

describe('a consent that is given and taken back', () => {
  test('shows and hides the name in a result that was posted before, in every process and past every cache', async () => {
    expect(nameIn(await resultOf(service).expect(200))).toBe('No. 101');
    await posted.consent('full');
    const open = await resultOf(service).expect(200);
    expect(nameIn(open)).toBe(child.name);
    expect(nameIn(await resultOf(beside).expect(200))).toBe(child.name);
    expect((await preview()).text).toMatch(givesAway);
    const known = { 'if-none-match': String(open.headers.etag) };
    await resultOf(service).set(known).expect(304);

    await posted.consent('back-number');
    for (const process of [service, beside]) {
      const closed = await resultOf(process).set(known).expect(200);
      expect(nameIn(closed)).toBe('No. 101');
      expect(closed.text).not.toMatch(givesAway);
      expect(closed.headers.etag).not.toBe(open.headers.etag);
    }
    expect((await preview()).text).not.toMatch(givesAway);
  });

  test('is the same everywhere that somebody outside the office can read: board, order of go, entry, gate, card', async () => {
    await posted.consent('full');
    const open = await allReadings(service, posted);
    const naming = open
      .filter(({ text }) => givesAway.test(text))
      .map(({ who, address }) => `${who} ${address}`);
    const { showId, classId } = posted;
    expect(naming).toEqual(
      expect.arrayContaining([
        `everyone /v1/classes/${classId}/result`,
        `everyone /v1/classes/${classId}/result/entries/101`,
        `everyone /v1/classes/${classId}/result.csv`,
        `everyone /v1/shows/${showId}/classes/${classId}/order-of-go`,
        `everyone /v1/shows/${showId}/combined-placing?phase=${classId}:1&phase=${posted.ids.secondClassId}:1`,
        `gate /v1/shows/${showId}/classes/${classId}/entries`,
      ]),
    );
    await posted.consent('back-number');
    const closed = await allReadings(service, posted);
    expect(closed.length).toBe(open.length);
    expect(closed.length).toBeGreaterThan(20);
    const stillNaming = closed.filter(({ text }) => givesAway.test(text));
    expect(stillNaming.map(({ who, address }) => `${who} ${address}`)).toEqual([]);
  });

  test('leaves the sentences as they were, which go by back numbers', async () => {
    const sentences = async () =>
      JSON.stringify((await resultOf(service)).body.results, (key, value) =>
        ['name', 'horse'].includes(key) ? undefined : value,
      );
    await posted.consent('full');
    const open = await sentences();
    await posted.consent('back-number');
    expect(await sentences()).toBe(open);
    expect(open).toContain('because');
    expect(open).not.toMatch(givesAway);
  });

  test('a date of birth is in no answer outside the office, whatever the consent', async () => {
    for (const form of ['full', 'first-name-and-initial', 'back-number']) {
      await posted.consent(form);
      const readings = await allReadings(service, posted);
      const born = readings.filter(({ text }) => /2013-05-02|bornOn|born_on/.test(text));
      expect(born.map(({ address }) => address)).toEqual([]);
    }
  });
});

describe('what is kept for ever', () => {
  test('who listens from outside hears that a name is shown otherwise, and not whose', async () => {
    const { port } = service.app.server.address() as AddressInfo;
    const stream = await openEventStream(`http://127.0.0.1:${port}/v1/shows/${posted.showId}/events`);
    await posted.consent('first-name-and-initial');
    const { event, data } = await stream.next();
    stream.close();
    expect([event, JSON.parse(data).body]).toEqual(['names.changed', {}]);
  });

  test('live events hold ids and numbers, for the office too, from the first line on', async () => {
    await posted.consent('full');
    const { port } = service.app.server.address() as AddressInfo;
    const address = `http://127.0.0.1:${port}/v1/shows/${posted.showId}/events`;
    const last = await service.parts.db.prisma.ledgerHead.findUniqueOrThrow({
      where: { ledgerId: posted.showId },
    });
    const stream = await openEventStream(`${address}?after=0`, posted.manager.headers('GET', address));
    const heard: string[] = [];
    for (let sequence = 0; sequence < last.sequence; ) {
      const event = await stream.next();
      sequence = Number(event.id);
      heard.push(event.data);
    }
    stream.close();
    expect(heard).toHaveLength(last.sequence);
    expect(heard.join()).toContain('consent.recorded');
    expect(heard.join()).not.toMatch(givesAway);
  });

  test('no posting, ledger line or signed card holds a name, nor does an answer that is kept for the gate', async () => {
    await posted.consent('full');
    const gate = await posted.pass('gate');
    const address = `/v1/shows/${posted.showId}/classes/${posted.classId}/entries/${posted.entryIds[0]}/status`;
    const answer = await request(service.app.server)
      .put(address)
      .use(gate)
      .set('idempotency-key', 'gate-1')
      .send({ status: 'checked-in' })
      .expect(200);
    expect(answer.body).toMatchObject({ exhibitor: 'No. 101', horse: null });
    const tables = ['posting', 'ledger_line', 'card_revision', 'card_draft_go', 'ruling'];
    for (const table of tables) expect(await rowsOf(table), table).not.toMatch(givesAway);
    const { rows } = await service.parts.db.pool.query<{ scope: string; answer: string }>(
      'SELECT scope, response::text AS answer FROM idempotency_key',
    );
    const naming = rows.filter(({ answer: kept }) => givesAway.test(kept ?? ''));
    expect(naming.filter(({ scope }) => !scope.startsWith('account '))).toEqual([]);
    expect(rows.map(({ scope }) => scope.split(' ')[0])).toContain('gate');
  });
});

async function rowsOf(table: string): Promise<string> {
  const { rows } = await service.parts.db.pool.query(`SELECT kept::text AS row FROM ${table} AS kept`);
  return rows.map(({ row }: { row: string }) => row).join('\n');
}
