import type { AddressInfo } from 'node:net';
import type { EventSourceMessage } from 'eventsource-parser';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { App } from '../../../src/platform/app-parts.ts';
import { type EventStream, openEventStream } from '../../support/event-stream.ts';
import { buildTestApp, type TestApp } from '../../support/test-app.ts';
import { type Answered, ask, isAnswered, isRefused, nameOf, type Sender } from './ask.ts';
import { examples } from './examples.ts';
import { emptyUntilSigned, expected, isBuiltPage, type Row } from './expected.ts';
import { type PreparedShow, prepareShow, type State, states } from './prepared-show.ts';
import { type FoundRoute, withRoutes } from './routes-of-app.ts';
import { sendersAt } from './senders.ts';
import { isLetIn } from './verdict.ts';

/** Thousands of requests; some seconds, and more where the machine has other work. */
const aWalkMilliseconds = 300_000;

describe('who is let in where', () => {
  let service: TestApp;
  let app: App;
  let routes: readonly FoundRoute[];
  let here: PreparedShow;
  let there: PreparedShow;
  let senders: readonly Sender[];
  const answers: Answered[] = [];

  beforeAll(async () => {
    const started = await withRoutes(() => buildTestApp());
    service = started.built;
    app = service.app;
    routes = started.routes.filter((one) => one.method !== 'HEAD' && !isBuiltPage(nameOf(one)));
    here = await prepareShow(service);
    there = await prepareShow(service);
    senders = await sendersAt(service, { here, there });
  });
  afterAll(() => service.close());

  /** A stream never ends; who may listen is asked further down. */
  const isStream = (route: FoundRoute) => route.url.endsWith('/events');
  const rowOf = (route: FoundRoute): Row => {
    const row = expected[nameOf(route)];
    if (row === undefined) throw new Error(`${nameOf(route)} has no row`);
    return row;
  };

  /** One request for each route, sender and state of the card. */
  async function walk(
    wanted: (row: Row, sender: Sender, state: State) => boolean,
    body: 'right' | 'broken',
  ): Promise<Answered[]> {
    const found: Answered[] = [];
    for (const route of routes.filter((one) => !isStream(one))) {
      for (const state of statesOf(route)) {
        for (const sender of senders) {
          if (!wanted(rowOf(route), sender, state)) continue;
          found.push(await ask(app, { route, sender, ids: here.ids[state], body }));
        }
      }
    }
    answers.push(...found);
    return found;
  }
  const statesOf = ({ url }: FoundRoute): readonly State[] =>
    /:(cardId|classId|postingId|paperCardId)/.test(url) ? states : ['posted'];
  const said = ({ sender, route, status, code, address }: Answered) =>
    `${sender.name}: ${route} -> ${status} ${code ?? ''} (${address})`;

  test('every route has its row in the table, and every row its route', () => {
    const found = routes.map(nameOf);
    const without = found.filter((name) => expected[name] === undefined);
    expect(without, 'say in tests/api/matrix/expected.ts who may call these routes').toEqual([]);
    const gone = Object.keys(expected).filter((name) => !found.includes(name));
    expect(gone, 'these routes are gone: take their rows out of tests/api/matrix/expected.ts').toEqual([]);
  });

  test('every route that takes a body has a request that is right in its form', () => {
    const writing = routes.filter(({ method }) => ['POST', 'PUT', 'PATCH'].includes(method));
    const missing = writing.map(nameOf).filter((name) => examples[name] === undefined);
    expect(missing, 'add a right request to tests/api/matrix/examples.ts').toEqual([]);
  });

  test(
    'whoever is not let in is refused, and nothing is changed',
    async () => {
      const before = await changes(service);
      const refused = await walk(
        (row, { kind }, state) => !isLetIn(row, kind, { signed: state !== 'unsigned' }),
        'right',
      );
      expect(refused.length).toBeGreaterThan(1_000);
      expect(refused.filter((one) => !isRefused(one)).map(said)).toEqual([]);
      expect(await changes(service)).toEqual(before);
    },
    aWalkMilliseconds,
  );

  test(
    'whoever is let in is answered',
    async () => {
      const letIn = await walk(
        (row, { kind }, state) => isLetIn(row, kind, { signed: state !== 'unsigned' }),
        'broken',
      );
      expect(letIn.length).toBeGreaterThan(500);
      const unsigned = here.ids.unsigned.cardId ?? '';
      const nothingYet = ({ route, address }: Answered) =>
        emptyUntilSigned.includes(route) && address.includes(unsigned);
      expect(letIn.filter((one) => !isAnswered(one) && !nothingYet(one)).map(said)).toEqual([]);
    },
    aWalkMilliseconds,
  );

  // RFC 9110, 9.3.2: HEAD is GET without the content, so it is guarded like GET.
  test(
    'whoever may not read may not ask for the head of it either, and no stream has one',
    async () => {
      const reading = routes.filter((route) => route.method === 'GET' && !isStream(route));
      const found: Answered[] = [];
      for (const { url } of reading) {
        for (const sender of senders) {
          const row = rowOf({ method: 'GET', url });
          if (isLetIn(row, sender.kind, { signed: true })) continue;
          found.push(await ask(app, { route: { method: 'HEAD', url }, sender, ids: here.ids.posted }));
        }
      }
      answers.push(...found);
      expect(found.length).toBeGreaterThan(200);
      expect(found.filter((one) => !isRefused(one)).map(said)).toEqual([]);
      const streams = routes.filter(isStream).map(({ url }) => ({ method: 'HEAD', url }));
      const [nobody] = senders.filter(({ kind }) => kind.role === 'everyone');
      if (nobody === undefined) throw new Error('there is nobody');
      for (const route of streams) {
        expect((await ask(app, { route, sender: nobody, ids: here.ids.posted })).status).toBe(405);
      }
    },
    aWalkMilliseconds,
  );

  // OWASP API Security Top 10, API1:2023: an id that is given is not an id that one may use.
  test(
    'an id of another show is no record of this one, whoever asks for it',
    async () => {
      const before = await changes(service);
      const mixed = routes.filter(({ url }) => /:showId\/.*:\w+Id/.test(url));
      const strong = senders.filter(
        ({ kind }) => !kind.ended && (kind.shows === 'all' || kind.shows === 'this'),
      );
      const found: Answered[] = [];
      for (const route of mixed) {
        const ids = { ...there.ids.posted, showId: here.ids.posted.showId ?? '' };
        for (const sender of strong) found.push(await ask(app, { route, sender, ids }));
      }
      answers.push(...found);
      expect(found.length).toBeGreaterThan(200);
      expect(found.filter((one) => !isRefused(one)).map(said)).toEqual([]);
      expect(await changes(service)).toEqual(before);
    },
    aWalkMilliseconds,
  );

  test(
    'a record of another show is not taken into this one by its id in a body',
    async () => {
      const before = await changes(service);
      const foreign = new Set(Object.values(there.ids.posted).filter((id) => /^[0-9a-f-]{36}$/.test(id)));
      const namesForeign = (route: FoundRoute) =>
        [...foreign].some((id) =>
          JSON.stringify(examples[nameOf(route)]?.(there.ids.posted) ?? {}).includes(id),
        );
      const strongest = senders.filter(({ kind }) => !kind.ended && (kind.shows === 'all' || kind.holdsSeat));
      const found: Answered[] = [];
      for (const route of routes.filter((one) => !accountsSayTheirShows(one) && namesForeign(one))) {
        for (const sender of strongest) {
          const asked = { route, sender, ids: here.ids.unsigned, bodyIds: there.ids.posted };
          found.push(await ask(app, asked));
        }
      }
      answers.push(...found);
      expect(found.length).toBeGreaterThan(30);
      expect(found.filter(({ status }) => status < 400 || status >= 500).map(said)).toEqual([]);
      expect(await changes(service)).toEqual(before);
    },
    aWalkMilliseconds,
  );
  /** The one body that names a show by right: a manager of all shows says where an account may work. */
  const accountsSayTheirShows = (route: FoundRoute) => nameOf(route) === 'POST /v1/accounts';

  const holds = (marks: readonly string[]) =>
    answers.filter(({ text }) => marks.some((mark) => text.includes(mark)));
  const isOfSeat = ({ sender: { kind } }: Answered) => kind.holdsSeat && !kind.ended;
  const isOfOffice = ({ sender: { kind } }: Answered) =>
    !kind.ended && ['all', 'this'].includes(kind.shows) && /manager|secretary/.test(kind.role);

  test('marks that are not signed yet are told to the judge of the seat and her scribe alone', () => {
    const told = holds(here.marks.unsigned);
    expect(told.filter(isOfSeat).length).toBeGreaterThan(0);
    expect(told.filter((one) => !isOfSeat(one)).map(said)).toEqual([]);
  });

  test('signed marks are told to the office too, and to nobody else before the result is posted', () => {
    const told = holds(here.marks.signed);
    expect(told.filter(isOfOffice).length).toBeGreaterThan(0);
    expect(told.filter((one) => !isOfSeat(one) && !isOfOffice(one)).map(said)).toEqual([]);
  });

  test('what happens at the show is told as it happens without a mark, to whoever listens', async () => {
    const { port } = app.server.address() as AddressInfo;
    const path = `/v1/shows/${here.ids.unsigned.showId}/events`;
    const address = `http://127.0.0.1:${port}${path}`;
    for (const { name, kind, headers } of senders) {
      const stream = await openEventStream(`${address}?after=0`, await headers('GET', address));
      const letIn = isLetIn(expected[`GET /v1/shows/:showId/events`] ?? nobodyAtAll, kind, { signed: true });
      expect(stream.status === 200, name).toBe(letIn);
      const told = letIn ? await linesUntil(stream, 'result.posted') : [];
      stream.close();
      const text = JSON.stringify(told);
      for (const mark of [...here.marks.unsigned, ...here.marks.signed])
        expect(text, name).not.toContain(mark);
      const hears = told.map(({ event }) => event);
      if (letIn) expect(hears.includes('card.opened'), name).toBe(/manager|secretary/.test(kind.role));
    }
  });
});

const nobodyAtAll: Row = { open: [], within: 'show' };

async function linesUntil(stream: EventStream, last: string): Promise<EventSourceMessage[]> {
  const told: EventSourceMessage[] = [];
  do told.push(await stream.next());
  while (told.at(-1)?.event !== last);
  return told;
}

/** How much there is of everything that a request could change; refusals are lines of a ledger and are left out. */
async function changes({ parts }: TestApp): Promise<Record<string, number>> {
  const { rows } = await parts.db.pool.query<{ name: string }>(
    "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\\_%'",
  );
  const unstable = ['spent_proof', 'session', 'ledger_line', 'ledger_head', 'account', 'idempotency_key'];
  const tables = rows.map(({ name }) => name).filter((name) => !unstable.includes(name));
  const counted = await Promise.all(
    tables.map(async (name) => {
      const text = `SELECT md5(coalesce(string_agg(t::text, '' ORDER BY t::text), '')) AS print FROM "${name}" t`;
      return [name, (await parts.db.pool.query(text)).rows[0]?.print] as const;
    }),
  );
  return Object.fromEntries(counted);
}
