/**
 * A show with a record of every kind, in three states: a class whose first seat has an unsigned card, one whose first
 * card is signed but not posted, one that is posted. The same two judges sit on all of them, so that "another seat of
 * the same class" is a real one. Names are invented.
 */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import type { CardContent } from '../../../src/engine/sheets/card-types.ts';
import { fingerprint } from '../../../src/platform/canonical-json.ts';
import type { Prisma } from '../../../src/platform/generated/prisma/client.ts';
import { picture } from '../../support/pictures.ts';
import type { TestApp } from '../../support/test-app.ts';
import { noPass, type OfficePass, type Pass, type PhonePass, passFor } from '../../support/test-passes.ts';
import { signedBody, statementOf } from '../../support/test-phone.ts';
import { sheetFile } from '../office-client.ts';
import type { Ids } from './examples.ts';

export const states = ['unsigned', 'signed', 'posted'] as const;
export type State = (typeof states)[number];

export interface PreparedShow {
  /** The ids that belong together, by the state of their card. */
  readonly ids: Readonly<Record<State, Ids>>;
  /** What stands on the first seat's cards of the first two classes, and nowhere else. */
  readonly marks: { readonly unsigned: readonly string[]; readonly signed: readonly string[] };
  readonly passes: ShowPasses;
  /** Other passes of the same kinds: the ones before may have been ended meanwhile. */
  readonly newPasses: () => Promise<ShowPasses>;
}

export interface ShowPasses {
  readonly manager: OfficePass;
  readonly judge: PhonePass;
  readonly otherJudge: PhonePass;
  readonly scribe: PhonePass;
  readonly otherScribe: PhonePass;
  readonly gate: PhonePass;
}

const rule = {
  merge: { method: 'total', discard: 'none', noScore: 'not-placed' },
  ties: [{ code: 'share' }],
  afterSplit: 'go-on',
  placesGiven: null,
  rulingHolds: null,
};

/** What a pass sends. An address without a host is that of a request which goes through no socket. */
export const headersOf = (pass: Pass, method: string, address: string) =>
  pass.headers(method, address.startsWith('/') ? `http://localhost:80${address}` : address);

interface Call {
  readonly pass: Pass;
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH';
  readonly address: string;
  readonly body?: object;
  readonly headers?: Record<string, string>;
}

/** Throws what is refused: the show must be as it is meant to be. */
export async function done(app: FastifyInstance, { pass, method, address, body, headers = {} }: Call) {
  const answer = await app.inject({
    method,
    url: address,
    headers: { ...headers, ...headersOf(pass, method, address) },
    ...(body === undefined ? {} : { payload: body }),
  });
  if (answer.statusCode >= 400) throw new Error(`${method} ${address}: ${answer.payload}`);
  const read = answer.payload === '' ? {} : JSON.parse(answer.payload);
  return { body: read, etag: String(answer.headers.etag) };
}

/** A time to the thousandth that stands nowhere by chance. */
const oddTime = () => `${100 + Math.floor(Math.random() * 800)}.${101 + Math.floor(Math.random() * 898)}`;

export async function prepareShow(service: TestApp): Promise<PreparedShow> {
  const ground = await addGround(service);
  const passes = await passesOf(service, ground);
  const marks = {
    unsigned: [oddTime(), `blind-${randomUUID()}`],
    signed: [oddTime(), `blind-${randomUUID()}`],
  };
  await draft(service, passes.judge, { ground, state: 'unsigned', marks: marks.unsigned });
  await signAs(service, passes.judge, { ground, state: 'signed', seat: 0, marks: marks.signed });
  await signAs(service, passes.judge, { ground, state: 'posted', seat: 0, marks: ['17.001', 'a fine run'] });
  await signAs(service, passes.otherJudge, { ground, state: 'posted', seat: 1, marks: ['17.002', 'smooth'] });
  const postingId = await post(service, passes.manager, ground);
  const paperCardId = await takeUpPaper(service, passes.manager, ground);
  const queryId = await ask(service, ground);
  const ids = Object.fromEntries(
    await Promise.all(
      states.map(async (state) => [
        state,
        await idsOf(service, { ground, state, postingId, paperCardId, queryId, passes }),
      ]),
    ),
  ) as Record<State, Ids>;
  return { ids, marks, passes, newPasses: () => passesOf(service, ground) };
}

interface Ground {
  readonly showId: string;
  readonly shared: Ids;
  /** `paper`: where a paper card stands in for the first seat's phone. */
  readonly classes: Readonly<Record<State | 'paper', ClassOfGround>>;
}

interface ClassOfGround {
  readonly classId: string;
  readonly seatIds: readonly string[];
  readonly classEntryId: string;
}

/** Straight in the database: how a show is set up is not what is tested here. */
async function addGround({ parts }: TestApp): Promise<Ground> {
  const { prisma } = parts.db;
  const createdAt = parts.clock.now();
  const id = () => parts.ids.next();
  const showId = id();
  const day = new Date('2026-05-02');
  await prisma.show.create({
    data: {
      ...{ id: showId, name: 'Larch Valley Spring Show', place: 'Larch Valley', timeZone: 'America/Chicago' },
      ...{ firstDay: day, lastDay: day, createdAt },
    },
  });
  const own = { showId, createdAt };
  const [personId, otherPersonId, exhibitorId, horseId, ownerId, ringId, entryId, patternId] = Array.from(
    { length: 8 },
    id,
  ) as [string, string, string, string, string, string, string, string];
  await prisma.person.create({ data: { id: personId, name: 'Judith Marlow', ...own } });
  await prisma.person.create({ data: { id: otherPersonId, name: 'Rowan Teale', ...own } });
  await prisma.exhibitor.create({ data: { id: exhibitorId, name: 'Ada Kessler', ...own } });
  await prisma.horse.create({ data: { id: horseId, name: 'Copper Lark', ...own } });
  await prisma.owner.create({ data: { id: ownerId, name: 'Larch Farm', ...own } });
  await prisma.ring.create({ data: { id: ringId, name: 'Ring 1', ...own } });
  await prisma.entry.create({ data: { id: entryId, backNumber: 101, exhibitorId, horseId, ...own } });
  await prisma.pattern.create({
    data: {
      ...{ id: patternId, name: 'Pattern 1', ...own },
      maneuvers: { create: [{ position: 1, name: 'Walk to B' }] },
    },
  });
  const shared = {
    showId,
    personId,
    otherPersonId,
    exhibitorId,
    horseId,
    ownerId,
    ringId,
    entryId,
    patternId,
  };
  const add = (number: number) => addClass(parts, { shared, number, createdAt });
  const classes = { unsigned: await add(1), signed: await add(2), posted: await add(3), paper: await add(4) };
  return { showId, shared, classes };
}

async function addClass(
  parts: TestApp['parts'],
  { shared, number, createdAt }: { shared: Record<string, string>; number: number; createdAt: Date },
): Promise<ClassOfGround> {
  const { prisma } = parts.db;
  const { showId = '', personId = '', otherPersonId = '', entryId = '', patternId = '' } = shared;
  const [classId, first, second, classEntryId] = Array.from({ length: 4 }, () => parts.ids.next()) as [
    string,
    string,
    string,
    string,
  ];
  await prisma.showClass.create({
    data: {
      ...{
        id: classId,
        showId,
        number,
        name: `Class ${number}`,
        discipline: 'Barrels',
        patternId,
        createdAt,
      },
      ...{ sheetId: await timedSheet(parts), drawSeed: 'larch', placingRule: rule as Prisma.InputJsonObject },
    },
  });
  const seats = [
    { id: first, personId, seatOrder: 1 },
    { id: second, personId: otherPersonId, seatOrder: 2 },
  ];
  for (const seat of seats) await prisma.panelSeat.create({ data: { ...seat, showId, classId, createdAt } });
  await prisma.classEntry.create({
    data: {
      ...{ id: classEntryId, showId, classId, entryId, goPosition: 1 },
      ...{ createdAt, changedAt: createdAt },
    },
  });
  return { classId, seatIds: [first, second], classEntryId };
}

async function timedSheet({ db, ids, clock }: TestApp['parts']): Promise<string> {
  const definition = sheetFile('timed-barrels');
  const { code, version } = definition;
  const found = await db.prisma.scoreSheet.findFirst({ where: { code, version } });
  if (found !== null) return found.id;
  const id = ids.next();
  await db.prisma.scoreSheet.create({
    data: {
      ...{ id, code, version, hash: fingerprint(definition), origin: 'bundled', createdAt: clock.now() },
      definition: definition as unknown as Prisma.InputJsonObject,
    },
  });
  return id;
}

async function passesOf(service: TestApp, { showId, classes }: Ground): Promise<ShowPasses> {
  const [first = '', second = ''] = classes.unsigned.seatIds;
  return {
    manager: await passFor(service, { role: 'manager', showId }),
    judge: await passFor(service, { role: 'judge', showId, seatId: first }),
    scribe: await passFor(service, { role: 'scribe', showId, seatId: first }),
    otherJudge: await passFor(service, { role: 'judge', showId, seatId: second }),
    otherScribe: await passFor(service, { role: 'scribe', showId, seatId: second }),
    gate: await passFor(service, { role: 'gate', showId }),
  };
}

interface Writing {
  readonly ground: Ground;
  readonly state: State;
  readonly seat?: number;
  /** The time and the remark of the one go. */
  readonly marks: readonly string[];
}

/** Opens the card of the seat and saves its one go. */
async function draft({ app }: TestApp, pass: PhonePass, { ground, state, seat = 0, marks }: Writing) {
  const { classId, seatIds, classEntryId } = ground.classes[state];
  const [measure = '', remark = ''] = marks;
  const opened = await done(app, {
    ...{ pass, method: 'POST', address: `/v1/classes/${classId}/cards` },
    body: { seatId: seatIds[seat] },
  });
  const go = { measure, remark };
  await done(app, {
    ...{ pass, method: 'PUT', address: `/v1/cards/${opened.body.id}/goes/${classEntryId}`, body: go },
  });
  const content: CardContent = { goes: { [classEntryId]: go } };
  return { cardId: String(opened.body.id), content };
}

async function signAs(service: TestApp, pass: PhonePass, writing: Writing): Promise<void> {
  const { cardId, content } = await draft(service, pass, writing);
  const card = await done(service.app, { pass, method: 'GET', address: `/v1/cards/${cardId}` });
  const body = signedBody(pass.phone, statementOf(card.body, content));
  await done(service.app, { pass, method: 'POST', address: `/v1/cards/${cardId}/signatures`, body });
}

async function post({ app }: TestApp, pass: Pass, { classes }: Ground): Promise<string> {
  const base = `/v1/classes/${classes.posted.classId}`;
  const preview = await done(app, { pass, method: 'GET', address: `${base}/tabulation` });
  const posted = await done(app, {
    ...{ pass, method: 'POST', address: `${base}/postings`, headers: { 'if-match': preview.etag } },
    body: { state: 'provisional' },
  });
  return posted.body.id;
}

/** With its picture. */
async function takeUpPaper({ app }: TestApp, pass: Pass, { classes }: Ground): Promise<string> {
  const { classId, seatIds } = classes.paper;
  const taken = await done(app, {
    ...{ pass, method: 'POST', address: `/v1/classes/${classId}/paper-cards` },
    body: { seatId: seatIds[0], reason: 'the phone was wet' },
  });
  const address = `/v1/paper-cards/${taken.body.id}/photo`;
  const headers = { 'content-type': 'image/jpeg' };
  const body = await picture().jpeg().toBuffer();
  await done(app, { pass, method: 'PUT', address, headers, body });
  return taken.body.id;
}

/** A family asks about the posted class. */
async function ask({ app }: TestApp, { classes }: Ground): Promise<string> {
  const asked = await done(app, {
    ...{ pass: noPass, method: 'POST', address: `/v1/classes/${classes.posted.classId}/queries` },
    body: { about: 'marks', words: 'The time looks wrong.', backNumber: 101 },
  });
  return asked.body.id;
}

interface Collected {
  readonly ground: Ground;
  readonly state: State;
  readonly postingId: string;
  readonly paperCardId: string;
  readonly queryId: string;
  readonly passes: ShowPasses;
}

async function idsOf(service: TestApp, { ground, state, passes, ...made }: Collected): Promise<Ids> {
  const { parts, app } = service;
  const { classId, seatIds, classEntryId } = ground.classes[state];
  const card = await parts.db.prisma.card.findFirstOrThrow({ where: { seatId: seatIds[0] ?? '' } });
  // A colleague and a phone that send nothing here: whoever takes them off takes no sender from the test.
  const { showId } = ground;
  const colleague = await passFor(service, { role: 'secretary', showId });
  const away = await passFor(service, { role: 'gate', showId });
  const invited = await done(app, {
    ...{ pass: passes.manager, method: 'POST', address: `/v1/shows/${showId}/invitations` },
    body: { role: 'gate' },
  });
  return {
    ...ground.shared,
    ...{ classId, seatId: seatIds[0] ?? '', classEntryId, cardId: card.id, ...made },
    otherClassId: ground.classes[state === 'signed' ? 'unsigned' : 'signed'].classId,
    ...{ backNumber: '101', revision: '1', code: 'timed-barrels', version: '1' },
    invitationId: invited.body.id,
    phoneId: away.phoneId,
    ...{ accountId: colleague.accountId, sessionId: colleague.sessionId },
  };
}
