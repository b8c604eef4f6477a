/** A posted class with a child in it, and all that anybody outside the office can read of it. */
import request from 'supertest';
import type { App } from '../../src/platform/app-parts.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import type { TestApp } from '../support/test-app.ts';
import { noPass, type OfficePass, type Pass, passFor } from '../support/test-passes.ts';
import { judgeAndPost } from './practice-show.ts';

export const child = { name: 'Adamaris Mae Kesslerby', bornOn: '2013-05-02', horse: 'Tin Whistlewood' };
/** What gives her away. */
export const givesAway = /Adamaris|Kesslerby|Whistlewood|2013-05-02/;

export interface PostedChild extends JudgedClass {
  readonly manager: Pass;
  /** Of her, who wears 101. */
  readonly exhibitorId: string;
  /** Records what the family says. */
  readonly consent: (publicName: string) => Promise<void>;
  /** Ids for the places of an address. */
  readonly ids: Readonly<Record<string, string>>;
}

/** Her class is posted, official, with the judges' cards; nobody has said anything about her name yet. */
export async function postedChild(service: TestApp): Promise<PostedChild> {
  const found = await setUpJudgedClass(service, { judges: 1 });
  const { prisma } = service.parts.db;
  const { showId, classId } = found;
  const entry = await prisma.entry.findFirstOrThrow({ where: { showId, backNumber: 101 } });
  const { exhibitorId, horseId } = entry;
  await prisma.horse.update({ where: { id: horseId }, data: { name: child.horse } });
  const manager = await passFor(service, { role: 'manager' });
  const address = `/v1/shows/${showId}/exhibitors/${exhibitorId}`;
  const office = (method: 'post' | 'patch', path: string, body: object) =>
    request(service.app.server)[method](`${address}${path}`).use(manager).send(body);
  const { name, bornOn } = child;
  await office('patch', '', { name, bornOn }).set('if-match', '"1"').expect(200);
  await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
  await found.publish('provisional');
  const posted = await found.publish('official');
  if (posted.status !== 201) throw new Error(JSON.stringify(posted.body));
  const secondClassId = await secondClass(service, { showId, classId, office: manager });
  const card = await prisma.card.findFirstOrThrow({ where: { classId } });
  const phone = { classEntryId: found.entryIds[0] ?? '', cardId: card.id, seatId: card.seatId };
  const consent = async (publicName: string) => {
    const today = { givenBy: 'parent', givenOn: '2026-09-01', how: 'signed-form' };
    await office('post', '/consents', { publicName, ...today }).expect(201);
  };
  const ids = {
    ...phone,
    ...{ showId, classId, exhibitorId, horseId, backNumber: '101', revision: '1' },
    ...{ entryId: entry.id, postingId: posted.body.id, secondClassId },
  };
  return { ...found, manager, exhibitorId, consent, ids };
}

interface Read {
  readonly who: string;
  readonly address: string;
  readonly text: string;
}

/**
 * Every address that is read by GET, asked for by everyone, the gate and the judge: what was answered. Streams are
 * left out, because they do not end.
 */
export async function allReadings(service: TestApp, posted: PostedChild): Promise<Read[]> {
  const readers = {
    everyone: noPass,
    gate: await posted.pass('gate'),
    judge: await posted.judge(0),
    scribe: await posted.scribe(0),
  };
  const readings: Read[] = [];
  for (const address of await addresses(service.app, posted)) {
    const asked = Object.entries(readers).map(async ([who, pass]) => {
      const { status, text } = await request(service.app.server).get(address).use(pass).buffer(true);
      return status < 400 ? [{ who, address, text }] : [];
    });
    readings.push(...(await Promise.all(asked)).flat());
  }
  return readings;
}

/** The same riders under the same judge once more, so that two results can be combined. */
async function secondClass(
  service: TestApp,
  {
    showId,
    classId,
    office,
  }: { readonly showId: string; readonly classId: string; readonly office: OfficePass },
): Promise<string> {
  const { prisma } = service.parts.db;
  const first = await prisma.showClass.findUniqueOrThrow({
    where: { id: classId },
    include: { seats: true, classEntries: { orderBy: { goPosition: 'asc' } } },
  });
  const { seats, classEntries, placingRule, openedAt: _, ...same } = first;
  const id = service.parts.ids.next();
  const own = () => ({ id: service.parts.ids.next(), classId: id });
  await prisma.showClass.create({ data: { ...same, id, number: 2, placingRule: placingRule as object } });
  await prisma.panelSeat.createMany({ data: seats.map((seat) => ({ ...seat, ...own() })) });
  await prisma.classEntry.createMany({ data: classEntries.map((entry) => ({ ...entry, ...own() })) });
  await judgeAndPost(service, { showId, classId: id, office });
  return id;
}

async function addresses(app: App, { ids, classId }: PostedChild): Promise<string[]> {
  const { paths } = (await app.inject('/openapi.json')).json<{ paths: Record<string, { get?: object }> }>();
  const read = Object.keys(paths).filter(
    (path) => paths[path]?.get !== undefined && !path.endsWith('/events'),
  );
  const filled = read.map((path) => path.replace(/\{(\w+)\}/g, (place, name: string) => ids[name] ?? place));
  return filled
    .filter((path) => !path.includes('{'))
    .map((path) =>
      path.endsWith('/combined-placing') ? `${path}?phase=${classId}:1&phase=${ids.secondClassId}:1` : path,
    );
}
