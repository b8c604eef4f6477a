/** A class with its panel and entries, straight in the database: what a judge finds when she opens her card. */
import { readFileSync } from 'node:fs';
import request from 'supertest';
import type { PlacingRule } from '../../src/engine/placing/types.ts';
import { fingerprint } from '../../src/platform/canonical-json.ts';
import type { Prisma } from '../../src/platform/generated/prisma/client.ts';
import type { TestApp } from './test-app.ts';
import { type Pass, type PhonePass, passFor } from './test-passes.ts';

export interface CardSetting {
  readonly showId: string;
  readonly classId: string;
  readonly seatIds: readonly string[];
  /** Class entries; back numbers are 101, 102 ... in this order, which is the order of go. */
  readonly entryIds: readonly string[];
  /** The phone of the judge of a seat, from 0; the same each time. */
  readonly judge: (seat?: number) => Promise<PhonePass>;
  readonly scribe: (seat?: number) => Promise<PhonePass>;
  readonly pass: (role: 'office' | 'gate' | 'public') => Promise<Pass>;
  /** Opens the card of a seat and returns its id. */
  readonly openCard: (seat?: number) => Promise<string>;
}

interface Wanted {
  /** File name in seed/sheets. */
  readonly sheet?: string;
  readonly merge?: PlacingRule['merge'];
  readonly judges?: number;
  readonly entries?: number;
  readonly maneuvers?: readonly string[];
}

export const addScores: PlacingRule['merge'] = { method: 'total', discard: 'none', noScore: 'not-placed' };
export const addPlaces: PlacingRule['merge'] = {
  method: 'rank-sum',
  cardTies: 'better',
  unlisted: 'next',
  discard: 'none',
};

const threeManeuvers = ['Walk to B', 'Jog a circle left', 'Lope to C'];

/** Names are invented. */
export async function setUpClass(service: TestApp, wanted: Wanted = {}): Promise<CardSetting> {
  const { sheet = 'horsemanship', merge = addScores, judges = 1, entries = 3 } = wanted;
  const { ids, db, clock } = service.parts;
  const { prisma } = db;
  const createdAt = clock.now();
  const [showId, classId, patternId] = [ids.next(), ids.next(), ids.next()];
  const day = new Date('2026-05-02');
  await prisma.show.create({
    data: {
      ...{ id: showId, name: 'Larch Valley Spring Show', place: 'Larch Valley', timeZone: 'America/Chicago' },
      ...{ firstDay: day, lastDay: day, createdAt },
    },
  });
  const maneuvers = wanted.maneuvers ?? threeManeuvers;
  await prisma.pattern.create({
    data: {
      ...{ id: patternId, showId, name: 'Pattern 1', createdAt },
      maneuvers: { create: maneuvers.map((name, index) => ({ position: index + 1, name })) },
    },
  });
  const rule: PlacingRule = { merge, ties: [], afterSplit: 'go-on', placesGiven: null, rulingHolds: null };
  await prisma.showClass.create({
    data: {
      ...{ id: classId, showId, number: 1, name: 'Class 1', discipline: 'Horsemanship', createdAt },
      ...{ patternId, sheetId: await sheetId(service, sheet), drawSeed: 'larch' },
      placingRule: rule as unknown as Prisma.InputJsonObject,
    },
  });
  const seatIds = await seatJudges(service, { showId, classId, judges });
  const entryIds = await enter(service, { showId, classId, entries });
  return settingOf(service, { showId, classId, seatIds, entryIds });
}

async function sheetId({ parts }: TestApp, file: string): Promise<string> {
  const text = readFileSync(new URL(`../../seed/sheets/${file}.json`, import.meta.url), 'utf8');
  const definition = JSON.parse(text) as Prisma.InputJsonObject & { code: string; version: number };
  const { code, version } = definition;
  const found = await parts.db.prisma.scoreSheet.findFirst({ where: { code, version } });
  if (found !== null) return found.id;
  const hash = fingerprint(definition);
  const row = { code, version, definition, hash, origin: 'bundled' };
  const id = parts.ids.next();
  await parts.db.prisma.scoreSheet.create({ data: { id, ...row, createdAt: parts.clock.now() } });
  return id;
}

interface Field {
  readonly showId: string;
  readonly classId: string;
}

async function seatJudges({ parts }: TestApp, { showId, classId, judges }: Field & { judges: number }) {
  const seatIds: string[] = [];
  for (let seat = 1; seat <= judges; seat += 1) {
    const [personId, seatId] = [parts.ids.next(), parts.ids.next()];
    const createdAt = parts.clock.now();
    await parts.db.prisma.person.create({ data: { id: personId, showId, name: `Judge ${seat}`, createdAt } });
    await parts.db.prisma.panelSeat.create({
      data: { id: seatId, showId, classId, personId, seatOrder: seat, createdAt },
    });
    seatIds.push(seatId);
  }
  return seatIds;
}

function enter(service: TestApp, { showId, classId, entries }: Field & { entries: number }) {
  const goes = Array.from({ length: entries }, (_, index) => index + 1);
  return addEntries(service, { showId, classId, goes });
}

/** Enters one more, who goes at that place and wears 100 more than it. */
export async function addEntry(service: TestApp, { go, showId, classId }: Field & { go: number }) {
  const [id] = await addEntries(service, { showId, classId, goes: [go] });
  return id ?? '';
}

async function addEntries(
  { parts }: TestApp,
  { showId, classId, goes }: Field & { goes: readonly number[] },
) {
  const { prisma } = parts.db;
  const createdAt = parts.clock.now();
  const rows = goes.map((go) => {
    const [exhibitorId, horseId, entryId, id] = [0, 0, 0, 0].map(() => parts.ids.next());
    return {
      go,
      exhibitorId: exhibitorId ?? '',
      horseId: horseId ?? '',
      entryId: entryId ?? '',
      id: id ?? '',
    };
  });
  await prisma.exhibitor.createMany({
    data: rows.map(({ exhibitorId, go }) => ({
      id: exhibitorId,
      showId,
      name: `Exhibitor ${go}`,
      createdAt,
    })),
  });
  await prisma.horse.createMany({
    data: rows.map(({ horseId, go }) => ({ id: horseId, showId, name: `Horse ${go}`, createdAt })),
  });
  await prisma.entry.createMany({
    data: rows.map(({ entryId: id, exhibitorId, horseId, go }) => {
      return { id, showId, backNumber: 100 + go, exhibitorId, horseId, createdAt };
    }),
  });
  await prisma.classEntry.createMany({
    data: rows.map(({ id, entryId, go }) => {
      return { id, showId, classId, entryId, goPosition: go, createdAt, changedAt: createdAt };
    }),
  });
  return rows.map(({ id }) => id);
}

function settingOf(service: TestApp, made: Field & Pick<CardSetting, 'seatIds' | 'entryIds'>): CardSetting {
  const { showId, classId, seatIds } = made;
  const seatPass = (role: 'judge' | 'scribe') => {
    const known = new Map<number, Promise<PhonePass>>();
    return (seat = 0) => {
      const pass = known.get(seat) ?? passFor(service, { role, showId, seatId: seatIds[seat] ?? '' });
      known.set(seat, pass);
      return pass;
    };
  };
  const judge = seatPass('judge');
  const openCard = async (seat = 0) => {
    const opened = await request(service.app.server)
      .post(`/v1/classes/${classId}/cards`)
      .use(await judge(seat))
      .send({ seatId: seatIds[seat] });
    if (opened.status !== 201 && opened.status !== 200) throw new Error(JSON.stringify(opened.body));
    return opened.body.id as string;
  };
  return {
    ...made,
    judge,
    scribe: seatPass('scribe'),
    pass: (role) => passFor(service, { role, showId }),
    openCard,
  };
}

/** A finished go on the horsemanship sheet: 70 + three marks + form. */
export const goOf = (marks: readonly [string, string, string], form = '3') => ({
  maneuvers: marks.map((mark, index) => ({ position: index + 1, mark })),
  extras: { 'form-and-effectiveness': form },
});
