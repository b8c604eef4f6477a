import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inSqlTransaction } from '../../src/platform/database.ts';
import { type CardSetting, setUpClass } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let beside: TestApp;

beforeAll(async () => {
  service = await buildTestApp();
  beside = await buildTestApp({ beside: service });
});
afterAll(async () => {
  await beside.close();
  await service.close();
});

const linesOf = async ({ showId }: CardSetting) => {
  const where = { ledgerId: showId };
  const lines = await service.parts.db.prisma.ledgerLine.findMany({ where, orderBy: { sequence: 'asc' } });
  return lines.filter(({ type }) => type.startsWith('class.') || type === 'card.opened');
};
const typesOf = async (setting: CardSetting) => (await linesOf(setting)).map(({ type }) => type);
const openedAt = async ({ classId }: CardSetting) =>
  (await service.parts.db.prisma.showClass.findUniqueOrThrow({ where: { id: classId } })).openedAt;
const open = async ({ app }: TestApp, setting: CardSetting, seat = 0) =>
  request(app.server)
    .post(`/v1/classes/${setting.classId}/cards`)
    .use(await setting.judge(seat))
    .send({ seatId: setting.seatIds[seat] });

describe('the first card of a class', () => {
  test('opens it, and the ledger says in public that nothing was written yet, and how many go', async () => {
    const setting = await setUpClass(service, { judges: 2, entries: 3 });
    await service.parts.db.prisma.classEntry.update({
      where: { id: setting.entryIds[2] ?? '' },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    expect(await openedAt(setting)).toBeNull();
    expect((await open(service, setting)).status).toBe(201);
    const lines = await linesOf(setting);
    expect(lines.map(({ type }) => type)).toEqual(['class.opened', 'card.opened']);
    expect(lines[0]?.body).toEqual({
      ...{ classId: setting.classId, goes: 2 },
      ...{ drafts: 0, revisions: 0, paperCards: 0, rulings: 0, postings: 0 },
    });
    expect(lines[0]?.at).toEqual(await openedAt(setting));
    expect((await open(service, setting, 1)).status).toBe(201);
    expect(await typesOf(setting)).toEqual(['class.opened', 'card.opened', 'card.opened']);
  });

  test('is one of several that are opened at once by two processes: the class is opened once', async () => {
    for (let round = 0; round < 5; round += 1) {
      const setting = await setUpClass(service, { judges: 4 });
      const seats = [0, 1, 2, 3];
      const answers = await Promise.all(
        seats.map((seat) => open(seat % 2 === 0 ? service : beside, setting, seat)),
      );
      expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201]);
      expect(await typesOf(setting)).toEqual(['class.opened', ...Array(4).fill('card.opened')]);
    }
  });

  test('waits for another first card, and finds the class open when that one is in', async () => {
    const setting = await setUpClass(service, { judges: 2 });
    const { classId } = setting;
    let answered = false;
    let second: Promise<request.Response> | undefined;
    await inSqlTransaction(service.parts.db, async (tx) => {
      const lock = 'SELECT id FROM show_class WHERE id = $1 FOR NO KEY UPDATE';
      await tx.sql.row({ name: 'test.lock-class', text: lock }, [classId]);
      second = open(service, setting, 1).finally(() => {
        answered = true;
      });
      await new Promise((done) => setTimeout(done, 400));
      expect(answered).toBe(false);
      const opened = 'UPDATE show_class SET opened_at = $2 WHERE id = $1';
      await tx.sql.rows({ name: 'test.open-class', text: opened }, [classId, new Date()]);
    });
    expect((await second)?.status).toBe(201);
    expect(await typesOf(setting)).toEqual(['card.opened']);
  });

  test('is kept for good: the database refuses to close the class again', async () => {
    const setting = await setUpClass(service);
    await open(service, setting);
    const close = service.parts.db.pool.query('UPDATE show_class SET opened_at = NULL WHERE id = $1', [
      setting.classId,
    ]);
    await expect(close).rejects.toThrow(/a class is opened once/);
  });

  test('opens nothing where it is refused for another reason', async () => {
    const setting = await setUpClass(service);
    await service.parts.db.prisma.showClass.update({
      where: { id: setting.classId },
      data: { status: 'cancelled' },
    });
    expect((await open(service, setting)).body.code).toBe('class_not_open');
    expect(await openedAt(setting)).toBeNull();
    expect(await typesOf(setting)).toEqual([]);
  });
});

type Planted = (setting: CardSetting) => Promise<unknown>;

/** Nothing of the service writes these before the class is open: somebody would have to go round it. */
const planted: readonly (readonly [what: string, count: object, plant: Planted])[] = [
  [
    'a ruling',
    { rulings: 1 },
    ({ classId }) =>
      service.parts.db.prisma.ruling.create({
        data: {
          ...{ id: service.parts.ids.next(), classId, kind: 'coin', classEntryIds: [], decision: {} },
          ...{ decidedBy: 'nobody', why: 'planted', ruledAt: new Date() },
        },
      }),
  ],
  [
    'a draft of a card that was put there',
    { drafts: 1 },
    async (setting) => {
      const { classId } = setting;
      const { id: cardId } = await plantCard(setting);
      return service.parts.db.prisma.cardDraftGo.create({
        data: { cardId, classEntryId: setting.entryIds[0] ?? '', classId, content: {}, savedAt: new Date() },
      });
    },
  ],
  [
    "a judge's own order of a card that was put there",
    { drafts: 1 },
    async (setting) => {
      const { id: cardId } = await plantCard(setting);
      return service.parts.db.prisma.cardDraftOrder.create({
        data: { cardId, content: {}, savedAt: new Date() },
      });
    },
  ],
  ['a paper card', { paperCards: 1 }, (setting) => plantPaper(setting)],
  [
    'a revision of a card that was put there',
    { revisions: 1, paperCards: 1 },
    async (setting) => {
      const { id: cardId } = await plantCard(setting);
      const { id: paperCardId } = await plantPaper(setting);
      return service.parts.db.prisma.cardRevision.create({
        data: {
          ...{ id: service.parts.ids.next(), cardId, revision: 1, content: {}, contentHash: '0'.repeat(64) },
          ...{ signedBySeatId: setting.seatIds[1] ?? '', paperCardId },
          ...{ signedAt: new Date(), receivedAt: new Date() },
        },
      });
    },
  ],
  [
    'a posting',
    { postings: 1 },
    ({ classId }) =>
      service.parts.db.prisma.posting.create({
        data: {
          ...{ id: service.parts.ids.next(), classId, version: 1, state: 'provisional', snapshot: {} },
          ...{ ruleHash: '0'.repeat(64), bodyHash: '0'.repeat(64), ledgerHash: '0'.repeat(64) },
          ...{ ledgerSequence: 1, jws: 'a.b.c', postedAt: new Date() },
        },
      }),
  ],
];

describe('a class in which something is written already', () => {
  test.each(planted)('is not opened: %s', async (what, count, plant) => {
    const setting = await setUpClass(service, { judges: 2 });
    await plant(setting);
    const before = await service.parts.db.prisma.card.count({ where: { classId: setting.classId } });
    const answer = await open(service, setting);
    expect([answer.status, answer.body.code], what).toEqual([409, 'class_not_empty']);
    expect(answer.body.found).toMatchObject(count);
    expect(answer.body.detail).toMatch(/^Before its first card was opened, the class had /);
    expect(await openedAt(setting)).toBeNull();
    expect(await service.parts.db.prisma.card.count({ where: { classId: setting.classId } })).toBe(before);
    const lines = await linesOf(setting);
    expect(lines.map(({ type }) => type)).toEqual(['class.opening-refused']);
    expect(lines[0]?.body).toMatchObject({ classId: setting.classId, ...count });
  });
});

/** On the second seat; the first one is the judge who comes. */
function plantCard({ classId, seatIds }: CardSetting) {
  const { prisma } = service.parts.db;
  return prisma.showClass.findUniqueOrThrow({ where: { id: classId } }).then(({ sheetId }) =>
    prisma.card.create({
      data: {
        ...{ id: service.parts.ids.next(), classId, seatId: seatIds[1] ?? '', sheetId },
        createdAt: new Date(),
      },
    }),
  );
}

function plantPaper({ classId, seatIds }: CardSetting) {
  return service.parts.db.prisma.paperCard.create({
    data: {
      ...{ id: service.parts.ids.next(), classId, seatId: seatIds[1] ?? '', revision: 1 },
      ...{ salt: '0'.repeat(32), createdBy: service.parts.ids.next(), createdAt: new Date() },
    },
  });
}
