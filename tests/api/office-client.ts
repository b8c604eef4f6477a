/** The office at work over the API: sets up a show, its classes and entries as a show secretary does. */
import { readFileSync } from 'node:fs';
import request from 'supertest';
import type { PlacingRule } from '../../src/engine/placing/types.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { addScoreSheet } from '../../src/office/index.ts';
import { inTransaction } from '../../src/platform/database.ts';
import type { TestApp } from '../support/test-app.ts';
import { type OfficePass, type Pass, passFor } from '../support/test-passes.ts';

export const totalRule: PlacingRule = {
  merge: { method: 'total', discard: 'none', noScore: 'not-placed' },
  ties: [
    { code: 'maneuvers', order: [3, 1] },
    { code: 'draw', seed: '' },
  ],
  afterSplit: 'go-on',
  placesGiven: null,
  rulingHolds: null,
};

type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

interface Call {
  readonly pass?: Pass;
  readonly body?: object;
  readonly headers?: Readonly<Record<string, string>>;
}

export interface Office {
  readonly showId: string;
  readonly pass: OfficePass;
  /** Below `/v1/shows/<show>`, with the office's pass where no other is named; `noPass` is without one. */
  readonly call: (method: Method, path: string, call?: Call) => Promise<request.Response>;
  /** The same, and the answer's body where it was taken; throws what was refused. */
  readonly done: (method: Method, path: string, body?: object, headers?: Call['headers']) => Promise<Made>;
  readonly addClass: (number: number, more?: object) => Promise<Made>;
  /** An exhibitor with a horse under a back number; `exhibitorId` where she rides another one. */
  readonly addEntry: (backNumber: number, more?: { exhibitorId?: string; name?: string }) => Promise<Made>;
  readonly enter: (classId: string, entryId: string, reason?: string) => Promise<Made>;
}

/** What the API answered; the tests look into it. */
export type Made = request.Response['body'];

export const newShow = {
  name: 'Aspen Hollow Open',
  place: 'Aspen Hollow',
  timeZone: 'America/Chicago',
  firstDay: '2026-10-31',
  lastDay: '2026-11-01',
};

export function send(service: TestApp, method: Method, path: string, { pass, body, headers }: Call = {}) {
  const sent = request(service.app.server)[method](path);
  if (pass !== undefined) sent.use(pass);
  for (const [name, value] of Object.entries(headers ?? {})) sent.set(name, value);
  return body === undefined ? sent : sent.send(body);
}

export async function openOffice(service: TestApp, show: object = newShow): Promise<Office> {
  const whole = await passFor(service, { role: 'office' });
  const made = await send(service, 'post', '/v1/shows', { pass: whole, body: show });
  if (made.status !== 201) throw new Error(JSON.stringify(made.body));
  const showId: string = made.body.id;
  const pass = await passFor(service, { role: 'office', showId });
  const call: Office['call'] = async (method, path, asked = {}) =>
    send(service, method, `/v1/shows/${showId}${path}`, { pass, ...asked });
  const done: Office['done'] = async (method, path, body, headers) => {
    const answer = await call(method, path, { ...(body && { body }), ...(headers && { headers }) });
    if (answer.status >= 400) throw new Error(JSON.stringify(answer.body));
    return answer.body;
  };
  return { showId, pass, call, done, ...adding(done) };
}

function adding(done: Office['done']): Pick<Office, 'addClass' | 'addEntry' | 'enter'> {
  const addClass: Office['addClass'] = async (number, more = {}) => {
    const pattern = await done('post', '/patterns', {
      name: `Pattern for ${number}`,
      maneuvers: threeManeuvers,
    });
    return done('post', '/classes', {
      ...{ number, name: `Class ${number}`, discipline: 'Horsemanship', sheet: { code: 'horsemanship' } },
      ...{ patternId: pattern.id, placingRule: totalRule, ...more },
    });
  };
  const addEntry: Office['addEntry'] = async (
    backNumber,
    { exhibitorId, name = `Rider ${backNumber}` } = {},
  ) => {
    const rider = exhibitorId ?? (await done('post', '/exhibitors', { name })).id;
    const horse = await done('post', '/horses', { name: `Horse ${backNumber}` });
    return done('post', '/entries', { backNumber, exhibitorId: rider, horseId: horse.id });
  };
  const enter: Office['enter'] = (classId, entryId, reason) =>
    done('post', `/classes/${classId}/entries`, { entryId, ...(reason === undefined ? {} : { reason }) });
  return { addClass, addEntry, enter };
}

export const threeManeuvers = [
  { name: 'Walk from A to B', startCone: 'A', endCone: 'B', gait: 'walk' },
  { name: 'Jog a circle left', startCone: 'B', endCone: 'B', gait: 'jog', leadOrDiagonal: 'left' },
  { name: 'Lope to C', startCone: 'B', endCone: 'C', gait: 'lope', leadOrDiagonal: 'right' },
];

/** A sheet out of seed/sheets, as the service takes it in. */
export const sheetFile = (name: string): ScoreSheet =>
  JSON.parse(readFileSync(new URL(`../../seed/sheets/${name}.json`, import.meta.url), 'utf8'));

export const bundle = ({ parts }: TestApp, ...names: readonly string[]) =>
  inTransaction(parts.db, async (tx) => {
    for (const name of names) await addScoreSheet(parts, tx, { sheet: sheetFile(name), origin: 'bundled' });
  });

/** Opens a card of a seat and signs it, straight in the database: the office only asks whether there is one. */
export async function signCard(
  service: TestApp,
  classId: string,
  seatId: string,
  sign = true,
): Promise<void> {
  const { parts } = service;
  const { prisma } = parts.db;
  const { sheetId } = await prisma.showClass.findUniqueOrThrow({ where: { id: classId } });
  const createdAt = parts.clock.now();
  const card = await prisma.card.create({
    data: { id: parts.ids.next(), classId, seatId, sheetId, createdAt },
  });
  if (!sign) return;
  await prisma.cardRevision.create({ data: await signedRow(service, { cardId: card.id, seatId }) });
}

/** A first revision as far as the database asks for one. */
export async function signedRow(
  service: TestApp,
  { cardId, seatId }: { readonly cardId: string; readonly seatId: string },
) {
  const { parts } = service;
  const { showId } = await parts.db.prisma.panelSeat.findUniqueOrThrow({ where: { id: seatId } });
  const { phoneId } = await passFor(service, { role: 'judge', showId, seatId });
  const at = parts.clock.now();
  return {
    ...{ id: parts.ids.next(), cardId, revision: 1, content: {}, contentHash: '0'.repeat(64) },
    ...{ signedBySeatId: seatId, signedAt: at, receivedAt: at, jws: 'a.b.c', phoneId },
  };
}
