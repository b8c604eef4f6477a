/** The invented show, filled the way `npm run demo` fills it: what it is meant to show is really there. */
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import canonicalize from 'canonicalize';
import type { JWK } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verifyArchive } from '../../src/archive/offline.ts';
import { apiAt, bare } from '../../src/commands/demo/api.ts';
import { readDemoShow } from '../../src/commands/demo/demo-files.ts';
import { type FilledDemo, fillDemo, reopenDemo } from '../../src/commands/demo/fill-demo.ts';
import { findDemo } from '../../src/commands/demo/find-demo.ts';
import { KeptFiles } from '../../src/commands/demo/kept-files.ts';
import type { DemoOffice } from '../../src/commands/demo/office-people.ts';
import { inviteOwnPhones } from '../../src/commands/demo/own-phone.ts';
import { sessionOf } from '../../src/commands/demo/sign-in.ts';
import { findPlaces } from '../../src/commands/demo/tour-places.ts';
import { resultStops } from '../../src/commands/demo/tour-results.ts';
import { trustStops } from '../../src/commands/demo/tour-trust.ts';
import { addBundledSheets } from '../../src/office/index.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

const demo = readDemoShow();
const folder = mkdtempSync(join(tmpdir(), 'ringledger-demo-'));
const said: string[] = [];
let tested: TestApp;
let office: DemoOffice;
let filled: FilledDemo;
let showId: string;
const classIds = new Map<number, string>();

beforeAll(async () => {
  tested = await buildTestApp();
  await addBundledSheets(tested.parts);
  const api = apiAt(tested.app.listeningOrigin);
  office = { api, parts: tested.parts, files: new KeptFiles(folder), people: demo.office };
  filled = await fillDemo(office, demo, (line) => said.push(line));
  showId = filled.showId;
  const { items } = await read<{ items: { id: string; number: number }[] }>(`/shows/${showId}/classes`);
  for (const { id, number } of items) classIds.set(number, id);
}, 300_000);

afterAll(async () => {
  await tested.close();
  rmSync(folder, { recursive: true });
});

const read = async <Body>(path: string): Promise<Body> =>
  (await office.api.ask<Body>({ method: 'GET', path, as: filled.secretary })).body;
const ofClass = <Body>(number: number, path: string) => read<Body>(`/classes/${classIds.get(number)}${path}`);

interface Placed {
  readonly backNumber: number;
  readonly place: number;
  readonly tied: boolean;
  readonly total: string;
  readonly because: readonly string[];
}
interface Result {
  readonly results: readonly {
    readonly placings: readonly Placed[];
    readonly unplaced: readonly { readonly backNumber: number; readonly why: string }[];
  }[];
  readonly didNotGo: readonly { readonly backNumber: number; readonly status: string }[];
}

const resultOf = (number: number) => ofClass<Result>(number, '/result');
async function placed(number: number, backNumber: number): Promise<Placed | undefined> {
  const { results } = await resultOf(number);
  return results[0]?.placings.find((line) => line.backNumber === backNumber);
}

describe('the invented show', () => {
  it('has each class in the state that its file says', async () => {
    const { classes } = await read<{ classes: { number: number; state: string }[] }>(
      `/shows/${showId}/board`,
    );
    expect(new Map(classes.map(({ number, state }) => [number, state]))).toEqual(
      new Map(demo.classes.map(({ number, state }) => [number, state])),
    );
  });

  it('has classes in the morning of both days, an hour apart in UTC because the clock changes in between', async () => {
    // Energy Policy Act of 2005, section 110: daylight saving time ends on the first Sunday of November.
    const { items } = await read<{ items: { number: number; scheduledAt: string }[] }>(
      `/shows/${showId}/classes`,
    );
    const at = new Map(items.map(({ number, scheduledAt }) => [number, scheduledAt]));
    expect(at.get(1)).toBe('2026-10-31T14:00:00.000Z');
    expect(at.get(8)).toBe('2026-11-01T15:00:00.000Z');
  });

  it('corrects a class: the champion was fourth while two goes stood under the wrong numbers', async () => {
    const { postings } = await ofClass<{ postings: { id: string; state: string; reason: string | null }[] }>(
      1,
      '/postings',
    );
    expect(postings.map(({ state }) => state)).toEqual(['provisional', 'official', 'corrected']);
    expect(postings.map(({ reason }) => reason)).toEqual([
      null,
      null,
      "Judge 2: I wrote the goes of 168 and 186 under each other's number.",
    ]);
    expect(await placed(1, 168)).toMatchObject({
      place: 1,
      total: '224.5',
      because: ['First: 74.5 + 76 + 74 = 224.5.'],
    });
    const first = await read<{ body: PostedBody }>(`/postings/${postings[0]?.id}`);
    const classEntry = first.body.entries.find(({ backNumber }) => backNumber === 168)?.id;
    const then = first.body.results[0]?.placed.find(({ entry }) => entry === classEntry);
    expect(then).toMatchObject({ place: 4, total: '215' });
  });

  it('has postings whose hash anyone can repeat', async () => {
    for (const number of [1, 2, 5, 10, 11]) {
      const { postings } = await ofClass<{ postings: { id: string; bodyHash: string; ruleHash: string }[] }>(
        number,
        '/postings',
      );
      for (const { id, bodyHash, ruleHash } of postings) {
        const { body } = await read<{ body: { rule: unknown; sheet: unknown } }>(`/postings/${id}`);
        expect(fingerprint(body)).toBe(bodyHash);
        expect(fingerprint({ rule: body.rule, sheet: body.sheet })).toBe(ruleHash);
      }
    }
  });

  it('has a tie that the size of the majority breaks', async () => {
    const first = await placed(2, 157);
    const second = await placed(2, 176);
    expect([first?.place, second?.place]).toEqual([1, 2]);
    expect(first?.because.join(' ')).toContain(
      'Tied with 176; ahead by the judges who had it second or better (157: 3, 176: 2).',
    );
  });

  it('places the rider who was off pattern below all who kept it', async () => {
    expect(await placed(2, 182)).toMatchObject({ place: 12 });
    expect((await placed(2, 182))?.because.join(' ')).toContain('placed below all who kept the pattern');
    expect(await placed(4, 112)).toMatchObject({ place: 6 });
  });

  it("has ties on a judge's own card, which she broke before she signed", async () => {
    const { items } = await ofClass<{ items: { cardId: string }[] }>(2, '/cards');
    const card = await read<{ order: { content: { ownOrder?: string[][] } } | null; openTies: unknown[] }>(
      `/cards/${items[0]?.cardId}`,
    );
    expect(card.order?.content.ownOrder?.length).toBeGreaterThan(0);
    expect(card.openTies).toEqual([]);
  });

  it('says that a judge could not see a maneuver, and that it is neither a zero nor a fault', async () => {
    expect((await placed(3, 213))?.because.at(-1)).toMatch(/could not see .*neither a zero nor a fault/);
  });

  it('leaves out who was scratched or did not come', async () => {
    const { didNotGo } = await resultOf(4);
    expect(didNotGo).toEqual([
      expect.objectContaining({ backNumber: 120, status: 'no-show' }),
      expect.objectContaining({ backNumber: 126, status: 'scratched' }),
    ]);
  });

  it('has places that are shared: by rank sums that nothing splits, and by equal times', async () => {
    expect(await placed(5, 106)).toMatchObject({ place: 5, tied: true, total: '18' });
    expect(await placed(5, 112)).toMatchObject({ place: 5, tied: true, total: '18' });
    expect(await placed(10, 207)).toMatchObject({ place: 1, tied: true, total: '16.841' });
    expect(await placed(10, 224)).toMatchObject({ place: 1, tied: true });
    expect(await placed(10, 210)).toMatchObject({ place: 3, tied: false });
  });

  it('has one tie that waits for a run-off, and nothing is posted before it is ruled on', async () => {
    const { openTies, results } = await ofClass<Result & { openTies: OpenTie[] }>(7, '/tabulation');
    expect(openTies).toEqual([expect.objectContaining({ place: 1, waitsFor: 'run-off' })]);
    expect(new Set(openTies[0]?.backNumbers)).toEqual(new Set([260, 274]));
    expect(results[0]?.unplaced.map(({ backNumber }) => backNumber)).toEqual([280]);
    await expect(post(7, 'provisional')).rejects.toMatchObject({ problem: { code: 'ties_open' } });
  });

  it('keeps the marks of the class under way from the office', async () => {
    const { items } = await ofClass<{
      items: { cardId: string; goesWritten: number; goesExpected: number }[];
    }>(13, '/cards');
    expect(items.map(({ goesWritten, goesExpected }) => [goesWritten, goesExpected])).toEqual([
      [7, 12],
      [7, 12],
      [7, 12],
    ]);
    await expect(read(`/cards/${items[0]?.cardId}`)).rejects.toMatchObject({
      problem: { code: 'card_hidden' },
    });
  });

  it('draws the order of go so that it can be repeated: smallest SHA-256 of seed and back number first', async () => {
    const path = `/shows/${showId}/classes/${classIds.get(2)}/order-of-go`;
    const { goes } = await read<{ goes: { backNumber: number }[] }>(path);
    const { items } = await read<{ items: { seed: string; leastGap: number | null }[] }>(`${path}/draws`);
    const lot = (backNumber: number) =>
      createHash('sha256').update(`${items[0]?.seed}:${backNumber}`).digest('hex');
    const drawn = goes.map(({ backNumber }) => backNumber);
    expect(drawn).toEqual([...drawn].sort((a, b) => (lot(a) < lot(b) ? -1 : 1)));
    expect(items[0]?.leastGap).toBeNull();
  });

  it('spaces the horses of one rider, and lets the late add go last', async () => {
    const path = `/shows/${showId}/classes/${classIds.get(14)}/order-of-go`;
    const { goes } = await read<{ goes: { backNumber: number }[] }>(path);
    const { items } = await read<{ items: { kind: string; leastGap: number }[] }>(`${path}/draws`);
    expect(items.map(({ kind }) => kind)).toEqual(['drawn', 'late-add']);
    // Eleven goes, three of one rider: (3 - 1) x 5 + 1 = 11.
    expect(items[0]?.leastGap).toBe(5);
    expect(goes.at(-1)?.backNumber).toBe(305);
  });

  it('has a class combined into another', async () => {
    const { items } = await read<{ items: { kind: string; fromClassId: string }[] }>(
      `/shows/${showId}/classes/${classIds.get(15)}/relations`,
    );
    expect(items).toEqual([expect.objectContaining({ kind: 'combined', fromClassId: classIds.get(16) })]);
  });

  it('names a child only as its family allows', async () => {
    const entry = (number: number, backNumber: number) =>
      ofClass<{ name: string }>(number, `/result/entries/${backNumber}`);
    expect((await entry(4, 101)).name).toBe('Maren B.');
    expect((await entry(4, 106)).name).toBe('No. 106');
    expect((await entry(4, 109)).name).toBe('Tilda Whitlatch');
  });
});

describe('the office and the phones of the demo', () => {
  const accounts = () => office.files.logIns()?.accounts ?? {};

  it('are a manager, a show secretary and a points secretary, marked as of the demo', async () => {
    const rows = await tested.parts.db.prisma.account.findMany();
    expect(rows.map(({ signIn, duty, demo: ofDemo }) => [signIn, duty, ofDemo]).sort()).toEqual([
      ['manager', 'manager', true],
      ['points', 'points-secretary', true],
      ['secretary', 'secretary', true],
    ]);
  });

  it('have log-ins and keys in files that nobody else may read', () => {
    for (const file of [office.files.logInsFile, office.files.phonesFile]) {
      expect(statSync(file).mode & 0o777).toBe(0o600);
    }
    const passwords = Object.values(accounts()).map(({ password }) => password);
    expect(new Set(passwords).size).toBe(3);
    for (const password of passwords) expect(password).toMatch(/^[\w-]{20}$/);
  });

  it('sign every card but one: that came on paper, and two people typed it', async () => {
    const revisions = await tested.parts.db.prisma.cardRevision.findMany();
    const onPaper = revisions.filter(({ jws }) => jws === null);
    expect(revisions.length).toBeGreaterThan(35);
    expect(onPaper).toHaveLength(1);
    const { items } = await ofClass<{ items: PaperCard[] }>(12, '/paper-cards');
    expect(items.map(({ id, status }) => [id, status])).toEqual([[onPaper[0]?.paperCardId, 'accepted']]);
    expect(new Set(items[0]?.entries.map(({ accountId }) => accountId)).size).toBe(2);
  });

  // They are told in the order of go, which is drawn anew with each show.
  it('show where the two who typed the paper differ before it is mended', () => {
    expect(said.filter((line) => line.includes('on paper differ')).sort()).toEqual([
      expect.stringMatching(/differ at 260, ranking: \d and \d$/),
      expect.stringMatching(/differ at 266, ranking: \d and \d$/),
    ]);
  });

  it('leave names and secrets out of the ledger', async () => {
    const lines = await tested.parts.db.prisma.ledgerLine.findMany();
    const text = JSON.stringify(lines.map(({ body, actor }) => [body, actor]));
    const names = [...demo.exhibitors, ...demo.office].map(({ name }) => name);
    const secrets = Object.values(accounts()).flatMap((one) => [one.password, one.totpSecret, one.session]);
    for (const word of [...names, ...demo.judges, ...secrets]) expect(text).not.toContain(word);
  });
});

describe('the archive of the invented show', () => {
  it('holds when it is checked without the service, and no longer when one mark is changed', async () => {
    const answer = await filled.secretary({ method: 'GET', path: `/v1/shows/${showId}/archive?names=none` });
    const archive = await answer.text();
    const keys = await fetch(`${office.api.address}/.well-known/jwks.json`);
    const { keys: trustedKeys } = (await keys.json()) as { keys: JWK[] };
    expect((await verifyArchive(JSON.parse(archive), { trustedKeys })).faults).toEqual([]);
    // The line of the tour: sed changes the first of the line, as `replace` does.
    const changed = archive.replace('"mark":"1"', '"mark":"2"');
    const codes = (await verifyArchive(JSON.parse(changed), { trustedKeys })).faults.map(({ code }) => code);
    expect(codes).toContain('card_differs');
    expect(codes).toContain('posting_recomputed_differs');
  });
});

describe('the next start of the demo', () => {
  it('finds the show in place, and its office and phones know each other again', async () => {
    expect(await findDemo(office.api, demo)).toBe(showId);
    const phones = await tested.parts.db.prisma.phone.count();
    const again = await reopenDemo(office, showId);
    expect([...again.phones.keys()]).toEqual([...filled.phones.keys()]);
    expect(await tested.parts.db.prisma.phone.count()).toBe(phones);
  });

  it('pairs a phone again whose key is gone', async () => {
    const kept = office.files.phones();
    const { gate: _lost, ...keys } = kept?.keys ?? {};
    office.files.keepPhones({ showId, keys });
    const again = await reopenDemo(office, showId);
    const answer = await again.phones.get('gate')?.sends({ method: 'GET', path: '/v1/phones/current' });
    expect(await answer?.json()).toMatchObject({ role: 'gate', show: { id: showId } });
  });

  it('signs an account in again whose session has ended, with the next code of its app', async () => {
    const logIn = office.files.logIns()?.accounts.secretary;
    if (logIn === undefined) throw new Error('there is no secretary');
    const ended = { ...logIn, session: 'rls_of-last-week' };
    tested.clock.set(new Date().toISOString());
    const session = await sessionOf(office.api, ended);
    const as = bare(office.api.address, session);
    const { body } = await office.api.ask({ method: 'GET', path: '/sessions/current', as });
    expect(body).toMatchObject({ account: { signIn: 'secretary' } });
  });

  it('says what to look at: every address answers, and every command of a phone or the office too', async () => {
    const places = await findPlaces(filled);
    const stops = [...resultStops(places), ...trustStops(places, folder)];
    const commands = stops.flatMap((stop) => stop.commands);
    const addresses = commands.filter((command) => command.startsWith('http'));
    expect(addresses.length).toBeGreaterThan(10);
    for (const one of addresses) expect(`${one} ${(await fetch(one)).status}`).toBe(`${one} 200`);
    const read = commands.filter((command) => /^curl -s -H .* 'http[^']*'$/.test(command));
    for (const command of read.filter((one) => !one.includes(' -X '))) {
      const path = /'(http[^']*)'$/.exec(command)?.[1]?.slice(office.api.address.length) ?? '';
      expect(`${path} ${(await filled.secretary({ method: 'GET', path })).status}`).toBe(`${path} 200`);
    }
  });

  it('has open invitations for phones of your own, and takes those of the start before back', async () => {
    const before = await inviteOwnPhones(filled, false);
    const { phones, qr } = await inviteOwnPhones(filled, false);
    expect(phones.map(({ role }) => role)).toEqual(['judge', 'scribe', 'gate']);
    for (const [index, { code, link, here }] of phones.entries()) {
      expect(code).not.toBe(before.phones[index]?.code);
      expect(link).toBe(`${office.api.address}/pair#${code}`);
      expect(here).toMatch(/^http:\/\/localhost:\d+\/pair#/);
    }
    expect(qr.split('\n').length).toBeGreaterThan(12);
    const { items } = await read<{ items: { state: string }[] }>(`/shows/${showId}/invitations`);
    expect(items.filter(({ state }) => state === 'open')).toHaveLength(3);
  });
});

interface PaperCard {
  readonly id: string;
  readonly status: string;
  readonly entries: readonly { readonly accountId: string }[];
}

/** As api-docs/guide.md says it: RFC 8785 by the library of its author, SHA-256 by Node.js. */
const fingerprint = (value: unknown) =>
  createHash('sha256')
    .update(String(canonicalize(value)))
    .digest('hex');

interface PostedBody {
  readonly entries: readonly { readonly id: string; readonly backNumber: number }[];
  readonly results: readonly {
    readonly placed: readonly { readonly entry: string; readonly place: number }[];
  }[];
}

interface OpenTie {
  readonly place: number;
  readonly waitsFor: string;
  readonly backNumbers: readonly number[];
}

async function post(number: number, state: string): Promise<unknown> {
  const { api } = office;
  const as = filled.secretary;
  const path = `/classes/${classIds.get(number)}`;
  const { etag } = await api.ask({ method: 'GET', path: `${path}/tabulation`, as });
  return api.ask({ method: 'POST', path: `${path}/postings`, as, ifMatch: etag, body: { state } });
}
