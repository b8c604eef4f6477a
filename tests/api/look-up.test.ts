/** Who is who at a show, for everyone: nothing that a family keeps private can be found by looking for it. */
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askedWords, foundWords } from '../../src/look-up/folded-words.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';

let service: TestApp;
let found: JudgedClass;

beforeAll(async () => {
  service = await buildTestApp();
  found = await setUpJudgedClass(service, { entries: 4 });
  await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0'], ['-1', '0', '0']));
  await rename(101, { name: 'Adamaris Mae Kesslerby', bornOn: '2013-05-02' }, 'Tin Whistlewood');
  await rename(102, { name: 'Jörg Grünwald', bornOn: '1980-01-01' }, 'Señor Ångström');
  await rename(103, { name: 'Ottilie Straßer', bornOn: '1981-01-01' }, 'Copper Lantern');
});
afterAll(() => service.close());

async function rename(backNumber: number, exhibitor: { name: string; bornOn: string }, horse: string) {
  const { prisma } = service.parts.db;
  const entry = await prisma.entry.findFirstOrThrow({ where: { showId: found.showId, backNumber } });
  const { name, bornOn } = exhibitor;
  await prisma.exhibitor.update({
    where: { id: entry.exhibitorId },
    data: { name, bornOn: new Date(bornOn) },
  });
  await prisma.horse.update({ where: { id: entry.horseId }, data: { name: horse } });
}

const http = () => request(service.app.server);
const at = () => `/v1/shows/${found.showId}`;
const lookUp = (words: string) => http().get(`${at()}/look-up`).query({ words });
const numbers = async (words: string) =>
  (await lookUp(words).expect(200)).body.entries.map(({ backNumber }: { backNumber: number }) => backNumber);

async function consent(publicName: string) {
  const { prisma } = service.parts.db;
  const { exhibitorId } = await prisma.entry.findFirstOrThrow({
    where: { showId: found.showId, backNumber: 101 },
  });
  const manager = await passFor(service, { role: 'manager' });
  await http()
    .post(`${at()}/exhibitors/${exhibitorId}/consents`)
    .use(manager)
    .send({ publicName, givenBy: 'parent', givenOn: '2026-04-01', how: 'signed-form' })
    .expect(201);
}

describe('looking somebody up', () => {
  test('by back number: exactly that one', async () => {
    expect(await numbers('102')).toEqual([102]);
    expect(await numbers('10')).toEqual([]);
    expect(await numbers(' 101 ')).toEqual([101]);
  });

  test('by the beginnings of a name or of a horse, in any case, with accents or without', async () => {
    for (const words of [
      'jorg',
      'JÖRG grün',
      'joerg',
      'gruenwald',
      'grunw j',
      'senor',
      'angstrom',
      'jorg senor',
    ])
      expect([words, await numbers(words)]).toEqual([words, [102]]);
    for (const words of ['strasser', 'STRASSER', 'straßer', 'lantern ottilie'])
      expect([words, await numbers(words)]).toEqual([words, [103]]);
    expect(await numbers('jorg lantern')).toEqual([]);
    expect(await numbers('wald')).toEqual([]);
  });

  test('nothing that is only signs finds anybody, and nothing at all is refused in words', async () => {
    expect(await numbers('%')).toEqual([]);
    expect(await numbers("'; --")).toEqual([]);
    const empty = await lookUp('  ');
    expect([empty.status, empty.body.errors[0].message]).toEqual([
      400,
      'type a back number, or the beginning of a name',
    ]);
    expect((await lookUp('a'.repeat(101))).status).toBe(400);
  });

  test('many who answer to it: the first of them, and that there are more', async () => {
    const many = await setUpJudgedClass(service, { entries: 30 });
    const { body } = await http()
      .get(`/v1/shows/${many.showId}/look-up`)
      .query({ words: 'exhibitor' })
      .expect(200);
    expect([body.entries.length, body.more]).toEqual([25, true]);
  });
});

describe('what a family keeps private', () => {
  test('is not found by any part of it: the answer is that of a name nobody has', async () => {
    const nobody = (await lookUp('zzzz').expect(200)).text;
    for (const words of ['Adamaris', 'adamaris mae kesslerby', 'Kesslerby', 'k', 'tin', 'Whistlewood', 'no'])
      expect([words, (await lookUp(words).expect(200)).text]).toEqual([words, nobody]);
    expect(await numbers('101 adamaris')).toEqual([]);
    expect((await lookUp('101').expect(200)).body.entries[0]).toMatchObject({ name: 'No. 101', horse: null });
  });

  test('first name and initial are found by these and by nothing more; taken back, by nothing again', async () => {
    await consent('first-name-and-initial');
    for (const words of ['ada', 'adamaris k', 'whistle'])
      expect([words, await numbers(words)]).toEqual([words, [101]]);
    for (const words of ['ke', 'kesslerby', 'mae', 'adamaris kess']) expect(await numbers(words)).toEqual([]);
    await consent('back-number');
    for (const words of ['ada', 'k', 'whistle']) expect(await numbers(words)).toEqual([]);
  });
});

describe('an entry by its back number', () => {
  test('its classes, first where they stand, then what was posted', async () => {
    const before = (await http().get(`${at()}/numbers/103`).expect(200)).body;
    expect(before).toMatchObject({
      ...{ backNumber: 103, name: 'Ottilie Straßer', horse: 'Copper Lantern' },
      show: { id: found.showId, timeZone: 'America/Chicago', practice: false },
      classes: [
        {
          ...{ classId: found.classId, classEntryId: found.entryIds[2], number: 1, state: 'cards-in' },
          ...{ goPosition: 3, status: 'entered', posting: null, results: [] },
        },
      ],
    });
    await found.publish('provisional');
    await found.publish('official');
    const [line] = (await http().get(`${at()}/numbers/103`).expect(200)).body.classes;
    expect(line).toMatchObject({
      state: 'official',
      posting: { version: 2, state: 'official' },
      results: [{ judge: null, place: 1, of: 4, tied: false, total: '75' }],
    });
    const { postings } = (await found.get('/postings')).body;
    expect(line.posting.postedAt).toBe(postings[1].postedAt);
    expect((await lookUp('ottilie')).body.entries[0].classes).toEqual([line]);
  });

  test('a number that nobody wears is not there, and says so', async () => {
    const none = await http().get(`${at()}/numbers/999`);
    expect([none.status, none.body.detail]).toEqual([404, 'Nobody at this show wears back number 999.']);
    expect((await http().get(`${at()}/numbers/0`)).status).toBe(400);
    expect((await http().get(`/v1/shows/${service.parts.ids.next()}/numbers/1`)).status).toBe(404);
    expect((await http().get(`/v1/shows/${service.parts.ids.next()}/look-up?words=a`)).status).toBe(404);
  });

  test('where each judge places for herself, one result for each', async () => {
    const apart = await setUpJudgedClass(service, {
      ...{ judges: 2, entries: 3 },
      rule: { merge: { method: 'separate' } },
    });
    await apart.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await apart.sign(1, goesOf(['2', '0', '0'], ['0', '0', '0'], ['1', '0', '0']));
    expect((await apart.publish('provisional')).status).toBe(201);
    const { body } = await http().get(`/v1/shows/${apart.showId}/numbers/101`).expect(200);
    expect(body.classes[0].results).toMatchObject([
      { judge: { seatOrder: 1, name: 'Judge 1' }, place: 2, of: 3 },
      { judge: { seatOrder: 2, name: 'Judge 2' }, place: 1, of: 3 },
    ]);
  });
});

describe('the pattern of a class', () => {
  test('is public once the class is drawn or called, and not before', async () => {
    const early = await setUpJudgedClass(service);
    const pattern = () => http().get(`/v1/classes/${early.classId}/pattern`);
    expect((await pattern()).body.code).toBe('pattern_not_public');
    await service.parts.db.prisma.showClass.update({
      where: { id: early.classId },
      data: { calledAt: service.parts.clock.now() },
    });
    expect((await pattern().expect(200)).body.maneuvers.map(({ name }: { name: string }) => name)).toEqual([
      'Walk to B',
      'Jog a circle left',
      'Lope to C',
    ]);
  });
});

describe('the marks of a published card', () => {
  const go = {
    maneuvers: [
      { position: 1, mark: '0.5', remark: '[0:12] soft' },
      { position: 2, notSeen: true as const },
      { position: 3, mark: '-1' },
    ],
    extras: { 'form-and-effectiveness': '3' },
    penalties: [{ code: 'break-of-gait-over-two-strides', position: 3 }],
    remark: 'A steady hand.',
  };

  test('stand in the result figure by figure, and nowhere where the show publishes none', async () => {
    const sheet = (await http().get('/v1/score-sheets/horsemanship/1')).body;
    const [penalty] = (sheet.definition ?? sheet).penalties;
    const plain = goesOf(['0', '0', '0'], ['1', '0', '0']);
    const marked = {
      ...go,
      penalties: [{ code: penalty.code, position: 3 }],
      ruling: { code: 'off-pattern' as const },
    };
    const open = await setUpJudgedClass(service);
    await open.sign(0, [marked, ...plain]);
    await open.publish('provisional');
    const { body } = await open.get('/result/entries/101').expect(200);
    expect(body.sheet).toMatchObject({
      kind: 'pattern',
      maneuvers: [{ position: 1, name: 'Walk to B' }, { position: 2 }, { position: 3 }],
      extras: [{ code: 'form-and-effectiveness' }],
    });
    expect(body.cards[0].goes[0].marks).toMatchObject({
      base: '70',
      maneuvers: [
        { position: 1, mark: '0.5', counts: '0.5', remark: '[0:12] soft' },
        { position: 2, mark: null, remark: null },
        {
          ...{ position: 3, mark: '-1', counts: '-1', remark: null },
          penalties: [{ code: penalty.code, points: penalty.points }],
        },
      ],
      extras: [{ code: 'form-and-effectiveness', mark: '3', counts: '3' }],
      penalties: [],
      ruling: { code: 'off-pattern' },
      remark: 'A steady hand.',
    });
    expect(body.history).toMatchObject([{ version: 1, state: 'provisional', reason: null }]);

    const closed = await setUpJudgedClass(service, { publishCards: 'never' });
    await closed.sign(0, [marked, ...plain]);
    await closed.publish('provisional');
    const hidden = await closed.get('/result/entries/101').expect(200);
    expect(hidden.body.cards).toEqual([]);
    expect(hidden.text).not.toMatch(/steady hand|0:12/);
  });

  test('a correction keeps what was said before, with its reason', async () => {
    const again = await setUpJudgedClass(service);
    await again.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await again.publish('provisional');
    await again.publish('official');
    await again.amend(0, goesOf(['3', '0', '0'], ['0', '0', '0'], ['2', '0', '0']), 'A mark was misread.');
    expect((await again.publish('corrected', 'The first mark of 101 was misread.')).status).toBe(201);
    const { history } = (await again.get('/result/entries/101').expect(200)).body;
    expect(
      history.map(
        (one: { version: number; reason: string | null; results: { place: number; total: string }[] }) => [
          one.version,
          one.reason,
          one.results[0]?.place,
          one.results[0]?.total,
        ],
      ),
    ).toEqual([
      [1, null, 2, '74'],
      [2, null, 2, '74'],
      [3, 'The first mark of 101 was misread.', 1, '76'],
    ]);
  });
});

describe('everything of one entry in one answer', () => {
  test('place, reasons, marks, what was said before, and the pattern; in the language that is asked for', async () => {
    const judged = await setUpJudgedClass(service);
    await judged.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await judged.publish('provisional');
    const read = (language: string) =>
      http()
        .get(`/v1/shows/${judged.showId}/numbers/101/results`)
        .set('accept-language', language)
        .expect(200);
    const [line] = (await read('en')).body.classes;
    const entry = (await judged.get('/result/entries/101').expect(200)).body;
    expect(line).toMatchObject({
      classId: judged.classId,
      posting: { version: 1 },
      posted: { results: entry.results, rule: entry.rule, sheet: entry.sheet, history: entry.history },
      pattern: { maneuvers: [{ name: 'Walk to B' }, {}, {}] },
    });
    expect(line.posted.cards[0]).toMatchObject({
      judge: 'Judge 1',
      go: { score: '74', marks: { base: '70' } },
    });
    expect((await read('de')).body.classes[0].posted.results[0].because).not.toEqual(
      entry.results[0].because,
    );
  });

  test('before the posting nothing of the cards is in it', async () => {
    const judged = await setUpJudgedClass(service);
    await judged.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const answer = await http().get(`/v1/shows/${judged.showId}/numbers/101/results`).expect(200);
    expect(answer.body.classes[0]).toMatchObject({ state: 'cards-in', posting: null, posted: null });
    expect(answer.text).not.toMatch(/"marks"|"score"/);
  });
});

describe('words as they are looked up', () => {
  test('lose accents and case, and keep what they are made of', () => {
    expect(askedWords(' Ärger, ŁÓDŹ-süd ')).toEqual(['arger', 'lodz', 'sud']);
    expect(foundWords('Müller Weiß')).toEqual(['muller', 'weiss', 'mueller']);
    expect(askedWords('ﬁne Ⅳ ½')).toEqual(['fine', 'iv', '1⁄2'].flatMap((word) => word.split('⁄')));
    expect(foundWords('')).toEqual([]);
  });
});
