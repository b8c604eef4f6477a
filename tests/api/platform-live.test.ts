import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { appendLine, type LineType } from '../../src/ledger/index.ts';
import { inTransaction } from '../../src/platform/database.ts';
import { openEventStream } from '../support/event-stream.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type OfficePass, passFor } from '../support/test-passes.ts';

describe('a show told live, by two processes over one database', () => {
  let here: TestApp;
  let there: TestApp;
  let hereUrl: string;
  let thereUrl: string;
  beforeAll(async () => {
    here = await buildTestApp();
    there = await buildTestApp({ beside: here });
    hereUrl = here.app.listeningOrigin;
    thereUrl = there.app.listeningOrigin;
  });
  afterAll(async () => {
    await there.close();
    await here.close();
  });

  const newShow = async () => {
    const id = here.parts.ids.next();
    const days = { firstDay: new Date('2026-05-02'), lastDay: new Date('2026-05-02') };
    const createdAt = here.parts.clock.now();
    await here.parts.db.prisma.show.create({
      data: {
        id,
        name: 'Cedar Flats',
        place: 'Cedar Flats',
        timeZone: 'America/Chicago',
        createdAt,
        ...days,
      },
    });
    return id;
  };
  const happens = (showId: string, type: LineType, body: Record<string, unknown> = {}) =>
    inTransaction(here.parts.db, (tx) =>
      appendLine(here.parts, tx, { showId, type, body, at: here.parts.clock.now() }),
    );

  test('what is stored through one is heard through the other', async () => {
    const showId = await newShow();
    const stream = await openEventStream(`${thereUrl}/v1/shows/${showId}/events`);
    expect(stream.headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
    await happens(showId, 'class.called', { classId: 'c1' });
    const event = await stream.next();
    expect(event).toMatchObject({ id: '1', event: 'class.called' });
    expect(JSON.parse(event.data)).toMatchObject({
      sequence: 1,
      type: 'class.called',
      body: { classId: 'c1' },
    });
    stream.close();
  });

  test('whoever comes back with the last id misses nothing, also not what is stored meanwhile', async () => {
    const showId = await newShow();
    for (let number = 1; number <= 1_200; number += 300) {
      await Promise.all(Array.from({ length: 300 }, () => happens(showId, 'class.called')));
    }
    const more = Promise.all(Array.from({ length: 50 }, () => happens(showId, 'result.posted')));
    const stream = await openEventStream(`${hereUrl}/v1/shows/${showId}/events`, { 'last-event-id': '100' });
    await more;
    const heard: number[] = [];
    while (heard.at(-1) !== 1_250) heard.push(Number((await stream.next()).id));
    expect(heard).toEqual(Array.from({ length: 1_150 }, (_, index) => index + 101));
    stream.close();
  });

  test('the public hears of a signed card, the office of everything', async () => {
    const showId = await newShow();
    const address = `${hereUrl}/v1/shows/${showId}/events?after=0`;
    await happens(showId, 'exhibitor.created');
    await happens(showId, 'card.signed');
    const publicStream = await openEventStream(address);
    expect((await publicStream.next()).event).toBe('card.signed');
    const office = await passFor(here, { role: 'office', showId });
    const officeStream = await openEventStream(address, office.headers('GET', address));
    expect((await officeStream.next()).event).toBe('exhibitor.created');
    publicStream.close();
    officeStream.close();
  });

  test.each([
    [
      'account was closed',
      'post',
      ({ accountId }: OfficePass) => `/accounts/${accountId}/closings`,
      undefined,
    ],
    ['session was ended', 'delete', ({ sessionId }: OfficePass) => `/sessions/${sessionId}`, undefined],
    [
      'account is for another show now',
      'patch',
      ({ accountId }: OfficePass) => `/accounts/${accountId}`,
      'other',
    ],
  ] as const)(
    'an office whose %s hears no more, though its stream was open',
    async (_what, method, path, to) => {
      const [showId, other] = [await newShow(), await newShow()];
      const address = `${thereUrl}/v1/shows/${showId}/events`;
      const [office, colleague] = [
        await passFor(here, { role: 'secretary', showId }),
        await passFor(here, { role: 'secretary', showId }),
      ];
      const manager = await passFor(here, { role: 'manager' });
      const stream = await openEventStream(address, office.headers('GET', address));
      const others = await openEventStream(address, colleague.headers('GET', address));
      const sent = request(here.app.server)
        [method](`/v1${path(office)}`)
        .use(manager)
        .set('if-match', '"1"');
      const answer = await (to === undefined ? sent : sent.send({ showIds: [other] }));
      expect(answer.status).toBeLessThan(300);
      await stream.ended;
      await happens(showId, 'horse.created');
      expect((await others.next()).event).toBe('horse.created');
      others.close();
    },
  );

  test('one show is not heard at another', async () => {
    const [one, other] = [await newShow(), await newShow()];
    const stream = await openEventStream(`${hereUrl}/v1/shows/${one}/events`);
    await happens(other, 'class.called');
    await happens(one, 'class.cancelled');
    expect((await stream.next()).event).toBe('class.cancelled');
    stream.close();
  });

  test('what is taken back is not told', async () => {
    const showId = await newShow();
    const stream = await openEventStream(`${hereUrl}/v1/shows/${showId}/events`);
    const refused = inTransaction(here.parts.db, async (tx) => {
      await appendLine(here.parts, tx, {
        showId,
        type: 'class.called',
        body: {},
        at: here.parts.clock.now(),
      });
      throw new Error('refused');
    });
    await expect(refused).rejects.toThrow('refused');
    await happens(showId, 'class.cancelled');
    expect(await stream.next()).toMatchObject({ id: '1', event: 'class.cancelled' });
    stream.close();
  });

  test('a lost listening connection comes back, and what happened meanwhile is told', async () => {
    const showId = await newShow();
    const stream = await openEventStream(`${thereUrl}/v1/shows/${showId}/events`);
    await here.parts.db.pool.query(
      "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'ringledger live' AND datname = current_database()",
    );
    await happens(showId, 'class.called');
    expect((await stream.next()).event).toBe('class.called');
    stream.close();
  });

  test.each(['-1', 'seven', '1e3'])('a last id of %j is refused', async (lastEventId) => {
    const showId = await newShow();
    const answer = await fetch(`${hereUrl}/v1/shows/${showId}/events`, {
      headers: { 'last-event-id': lastEventId },
    });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ errors: [{ field: 'headers/last-event-id' }] });
  });

  test('an id from before the ledger was begun anew does not silence the stream', async () => {
    const showId = await newShow();
    const stream = await openEventStream(`${hereUrl}/v1/shows/${showId}/events`, { 'last-event-id': '5000' });
    await happens(showId, 'class.called');
    expect((await stream.next()).id).toBe('1');
    stream.close();
  });

  test('a show that is not there is a problem, not a silent stream', async () => {
    const answer = await fetch(`${hereUrl}/v1/shows/${here.parts.ids.next()}/events`);
    expect(answer.status).toBe(404);
  });

  test('a service that stops ends its streams and does not hang on them', async () => {
    const third = await buildTestApp({ beside: here });
    const url = third.app.listeningOrigin;
    const stream = await openEventStream(`${url}/v1/shows/${await newShow()}/events`);
    await third.close();
    await stream.ended;
  });
});
