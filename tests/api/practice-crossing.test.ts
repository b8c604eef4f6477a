import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { goOf } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Pass, type PhonePass, passFor } from '../support/test-passes.ts';
import { signedBody, statementOf } from '../support/test-phone.ts';
import { addressOf } from './matrix/ask.ts';
import { examples } from './matrix/examples.ts';
import { expected } from './matrix/expected.ts';
import { bundle, type Made, totalRule } from './office-client.ts';
import { judgeAndPost, type RehearsedShow, rehearsedShow, rowsOfShow } from './practice-show.ts';

type Ids = Readonly<Record<string, string>>;

let service: TestApp;
let found: RehearsedShow;
/** Records of the official show and of its rehearsal, by the same names. */
let official: Ids;
let practice: Ids;
/** Phones of the same judge: one paired at the official show, one at the rehearsal. */
let officialJudge: PhonePass;
let practiceJudge: PhonePass;
let practiceCard: Made;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  found = await rehearsedShow(service);
  const { manager, office, rehearsal } = found;
  const showId: string = rehearsal.id;
  const { id: classId } = await service.parts.db.prisma.showClass.findFirstOrThrow({
    where: { showId, number: 2 },
  });
  await judgeAndPost(service, { showId, classId, office: manager });
  practice = await idsOf(showId);
  official = await idsOf(office.showId);
  officialJudge = await passFor(service, seatOf(official));
  practiceJudge = await passFor(service, seatOf(practice));
  practiceCard = (
    await call(practiceJudge, 'post', `/v1/classes/${practice.openClassId}/cards`, {
      seatId: practice.openSeatId,
    })
  ).body;
  expect(practiceCard.id).toEqual(expect.any(String));
}, 120_000);
afterAll(() => service.close());

const seatOf = ({ showId = '', openSeatId = '' }: Ids) => ({
  role: 'judge' as const,
  showId,
  seatId: openSeatId,
});

/** `classId`, `cardId`, `postingId` are of the class that is judged and posted; `open...` of the one that is not. */
async function idsOf(showId: string): Promise<Ids> {
  const { prisma } = service.parts.db;
  const ofClass = async (number: number) => {
    const { id: classId } = await prisma.showClass.findFirstOrThrow({ where: { showId, number } });
    const seat = await prisma.panelSeat.findFirstOrThrow({
      where: { classId, withdrawnAt: null, person: { name: 'Judge Odell' } },
    });
    const entry = await prisma.classEntry.findFirstOrThrow({ where: { classId, goPosition: 1 } });
    return { classId, seatId: seat.id, personId: seat.personId, classEntryId: entry.id };
  };
  const [open, judged] = [await ofClass(1), await ofClass(2)];
  const card = await prisma.card.findFirstOrThrow({ where: { classId: judged.classId } });
  const posting = await prisma.posting.findFirstOrThrow({ where: { classId: judged.classId } });
  const entry = await prisma.entry.findFirstOrThrow({ where: { showId, backNumber: 214 } });
  const invited = await call(found.manager, 'post', `/v1/shows/${showId}/invitations`, { role: 'gate' });
  const paper = await call(found.manager, 'post', `/v1/classes/${open.classId}/paper-cards`, {
    seatId: open.seatId,
  });
  expect([invited.status, paper.status]).toEqual([201, 201]);
  const ownerId = service.parts.ids.next();
  const createdAt = service.parts.clock.now();
  await prisma.owner.create({ data: { id: ownerId, showId, name: 'Practice Stables', createdAt } });
  return {
    ...judged,
    ...{ showId, openClassId: open.classId, openSeatId: open.seatId, openClassEntryId: open.classEntryId },
    ...{ otherClassId: open.classId, cardId: card.id, postingId: posting.id, revision: '1' },
    ...{ entryId: entry.id, exhibitorId: entry.exhibitorId, horseId: entry.horseId, ownerId },
    ringId: (await prisma.ring.findFirstOrThrow({ where: { showId } })).id,
    patternId: (await prisma.pattern.findFirstOrThrow({ where: { showId } })).id,
    phoneId: (await prisma.phone.findFirstOrThrow({ where: { showId } })).id,
    ...{ invitationId: invited.body.id, paperCardId: paper.body.id, backNumber: '214' },
  };
}

type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

function call(pass: Pass, method: Method, path: string, body?: object, headers: Record<string, string> = {}) {
  const sent = request(service.app.server)[method](path).use(pass).set(headers);
  return body === undefined ? sent : sent.send(body);
}

const rowsOfBoth = async () => [
  await rowsOfShow(service, found.office.showId),
  await rowsOfShow(service, found.rehearsal.id),
];

/** Each route as "POST /v1/shows/:showId", out of the table of who is let in where. */
const routes = Object.keys(expected).map((name) => {
  const [method = '', url = ''] = name.split(' ');
  return { name, method, url };
});

describe('between a show and its rehearsal', () => {
  const withTwoIds = routes.filter(({ url }) => /:showId\/.*:(?!backNumber)/.test(url));

  test.each(withTwoIds)(
    '$name does not find a record of the one at the other',
    async ({ name, method, url }) => {
      const before = await rowsOfBoth();
      for (const [here, there] of [
        [practice, official],
        [official, practice],
      ] as const) {
        const address = addressOf({ method, url }, { ...there, showId: here.showId ?? '' });
        const { body, headers, query } = examples[name]?.(there) ?? {};
        const path = query === undefined ? address : `${address}?${query}`;
        const sent = body === undefined && method !== 'GET' ? {} : body;
        const answer = await call(found.manager, method.toLowerCase() as Method, path, sent as object, {
          ...headers,
        });
        expect([name, answer.status, answer.body.code]).toEqual([name, 404, 'not_found']);
      }
      expect(await rowsOfBoth()).toEqual(before);
    },
  );

  test('there are such routes: as many as stand below a record of a show', () => {
    expect(withTwoIds.length).toBeGreaterThan(25);
  });
});

interface Named {
  /** "POST /v1/shows/{showId}/entries /exhibitorId", as the API description names the field. */
  readonly field: string;
  readonly send: () => Promise<request.Response> | request.Test;
  readonly refused: readonly [status: number, code: string];
}

const rowsAt = (path: string) => `/v1/shows/${practice.showId}${path}`;
const office = (method: Method, path: string, body: object, headers = {}) =>
  call(found.manager, method, rowsAt(path), body, headers);
const ifMatch = (version: number) => ({ 'if-match': `"${version}"` });
const unknown = [422, 'unknown_reference'] as const;
const openClass = () => `/classes/${practice.openClassId}`;
const versionOf = async (path: string) => (await call(found.manager, 'get', rowsAt(path))).body.version;
const pair = (over: Ids) => ({
  ...{ exhibitorId: practice.exhibitorId, horseId: practice.horseId },
  ...over,
});
const newClass = (over: object) => ({
  ...{ number: 90, name: 'Class 90', discipline: 'Horsemanship', sheet: { code: 'horsemanship' } },
  ...{ patternId: practice.patternId, placingRule: totalRule, ...over },
});
const changeOpenClass = async (body: object) =>
  office('patch', openClass(), body, ifMatch(await versionOf(openClass())));
const ties = (judge: string | undefined) => [
  { code: 'tie-judge', judges: [judge], alternate: false },
  ...totalRule.ties,
];
/** An entry of the rehearsal that no card was signed with. */
const freshEntry = async () => {
  const { body } = await office('post', '/entries', { backNumber: 901, ...pair({}) });
  return `/entries/${body.id ?? (await entryNumbered(901))}`;
};
const entryNumbered = async (backNumber: number) =>
  (
    await service.parts.db.prisma.entry.findFirstOrThrow({
      where: { showId: practice.showId ?? '', backNumber },
    })
  ).id;
const changeEntry = async (body: object) => office('patch', await freshEntry(), body, ifMatch(1));

/** Each field of a request body that names a record, with the record of the official show in it. */
const named: readonly Named[] = [
  {
    field: 'POST /v1/shows/{showId}/entries /exhibitorId',
    send: () =>
      office('post', '/entries', { backNumber: 900, ...pair({ exhibitorId: official.exhibitorId ?? '' }) }),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/entries /horseId',
    send: () => office('post', '/entries', { backNumber: 900, ...pair({ horseId: official.horseId ?? '' }) }),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/entries /ownerId',
    send: () => office('post', '/entries', { backNumber: 900, ...pair({ ownerId: official.ownerId ?? '' }) }),
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/entries/{entryId} /exhibitorId',
    send: () => changeEntry({ exhibitorId: official.exhibitorId }),
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/entries/{entryId} /horseId',
    send: () => changeEntry({ horseId: official.horseId }),
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/entries/{entryId} /ownerId',
    send: () => changeEntry({ ownerId: official.ownerId }),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/classes /patternId',
    send: () => office('post', '/classes', newClass({ patternId: official.patternId })),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/classes /ringId',
    send: () => office('post', '/classes', newClass({ ringId: official.ringId })),
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/classes/{classId} /patternId',
    send: async () => {
      const { body } = await office('post', '/classes', newClass({ number: 93 }));
      return office('patch', `/classes/${body.id}`, { patternId: official.patternId }, ifMatch(1));
    },
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/classes/{classId} /ringId',
    send: () => changeOpenClass({ ringId: official.ringId }),
    refused: unknown,
  },
  {
    field: 'PATCH /v1/shows/{showId}/classes/{classId} /placingRule',
    send: () => changeOpenClass({ placingRule: { ...totalRule, ties: ties(official.openSeatId) } }),
    refused: [422, 'rule_invalid'],
  },
  {
    field: 'POST /v1/shows/{showId}/classes/{classId}/entries /entryId',
    send: () => office('post', `${openClass()}/entries`, { entryId: official.entryId, reason: 'late' }),
    refused: unknown,
  },
  {
    field: 'PUT /v1/shows/{showId}/classes/{classId}/panel /seats/*/personId',
    send: async () => {
      const { body } = await office('post', '/classes', newClass({ number: 91 }));
      const seats = [{ personId: official.personId }];
      return office('put', `/classes/${body.id}/panel`, { seats }, ifMatch(1));
    },
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/classes/{classId}/panel/{seatId}/withdrawal /replacementId',
    send: () =>
      office('post', `${openClass()}/panel/${practice.openSeatId}/withdrawal`, {
        ...{ reason: 'ill', replacementId: official.personId },
      }),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/classes/{classId}/splits /into/*/classEntryIds/*',
    send: () => {
      const into = [{ number: 92, name: 'Class 92', classEntryIds: [official.openClassEntryId] }];
      return office('post', `${openClass()}/splits`, { reason: 'many', into });
    },
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/classes/{classId}/combinations /classIds/*',
    send: () =>
      office('post', `${openClass()}/combinations`, { reason: 'few', classIds: [official.openClassId] }),
    refused: [404, 'not_found'],
  },
  {
    field: 'PUT /v1/shows/{showId}/classes/{classId}/order-of-go /order/*',
    send: async () => {
      const { body } = await call(found.manager, 'get', rowsAt(`${openClass()}/order-of-go`));
      const [, ...others] = body.goes.map(({ classEntryId }: Made) => classEntryId);
      const order = [official.openClassEntryId, ...others];
      return office('put', `${openClass()}/order-of-go`, { order, reason: 'a wish' });
    },
    refused: [422, 'order_incomplete'],
  },
  {
    field: 'POST /v1/shows/{showId}/exhibitors/{exhibitorId}/erasures /exhibitorId',
    send: () =>
      office('post', `/exhibitors/${practice.exhibitorId}/erasures`, {
        ...{ reason: 'entered-in-error', exhibitorId: official.exhibitorId },
      }),
    refused: [422, 'erasure_not_confirmed'],
  },
  {
    field: 'POST /v1/shows/{showId}/exhibitors/{exhibitorId}/erasures /ownerIds/*',
    send: () =>
      office('post', `/exhibitors/${practice.exhibitorId}/erasures`, {
        ...{ reason: 'entered-in-error', exhibitorId: practice.exhibitorId, ownerIds: [official.ownerId] },
      }),
    refused: unknown,
  },
  {
    field: 'POST /v1/shows/{showId}/invitations /personId',
    send: () => office('post', '/invitations', { role: 'judge', personId: official.personId }),
    refused: unknown,
  },
  {
    field: 'POST /v1/classes/{classId}/rulings /order/*/*',
    send: () =>
      call(found.manager, 'post', `/v1/classes/${practice.classId}/rulings`, {
        ...{ kind: 'coin', decidedBy: 'the steward', why: 'a tie' },
        order: [[official.classEntryId], [practice.classEntryId]],
      }),
    refused: [422, 'ruling_does_not_fit'],
  },
  {
    field: 'POST /v1/classes/{classId}/cards /seatId',
    send: () =>
      call(practiceJudge, 'post', `/v1/classes/${practice.openClassId}/cards`, {
        seatId: official.openSeatId,
      }),
    refused: [403, 'other_seat'],
  },
  {
    field: 'POST /v1/classes/{classId}/paper-cards /seatId',
    send: () =>
      call(found.manager, 'post', `/v1/classes/${practice.openClassId}/paper-cards`, {
        seatId: official.openSeatId,
      }),
    refused: [404, 'not_found'],
  },
  {
    field: 'PUT /v1/cards/{cardId}/order CardOrderInput',
    send: () =>
      call(practiceJudge, 'put', `/v1/cards/${practiceCard.id}/order`, {
        ownOrder: [[official.openClassEntryId], [practice.openClassEntryId]],
      }),
    refused: [422, 'card_illegal'],
  },
  {
    field: 'PUT /v1/paper-cards/{paperCardId}/entries/mine CardContentInput',
    send: () =>
      call(found.manager, 'put', `/v1/paper-cards/${practice.paperCardId}/entries/mine`, {
        goes: { [official.openClassEntryId ?? '']: goOf(['0', '0', '0']) },
      }),
    refused: [422, 'card_incomplete'],
  },
];

/** Schemas that hold no id of a record of a show, or hold what cannot cross: accounts serve several shows. */
const holdNoRecord = [
  'POST /v1/accounts /showIds/*',
  'PATCH /v1/accounts/{accountId} /showIds/*',
  'PUT /v1/cards/{cardId}/goes/{classEntryId} GoInput',
  'POST /v1/score-sheets ScoreSheetInput',
  // Letters of cones and positions in a pattern.
  'POST /v1/shows/{showId}/patterns /drawing PatternDrawingInput',
  'PUT /v1/shows/{showId}/patterns/{patternId} /drawing PatternDrawingInput',
  // A class has no seats yet when it is made; what its rule names is held against the panel as soon as there is one.
  'POST /v1/shows/{showId}/classes PlacingRuleInput',
];

describe('a record of the official show that is named in a request to the rehearsal', () => {
  test.each(named)('is not there: $field', async ({ send, refused }) => {
    const { showId } = found.office;
    const before = await rowsOfShow(service, showId);
    const answer = await send();
    expect([answer.status, answer.body.code]).toEqual(refused);
    expect(await rowsOfShow(service, showId)).toEqual(before);
    const copied = JSON.stringify(await rowsOfShow(service, found.rehearsal.id));
    const ids = Object.entries(official).filter(([, id]) => id.length === 36 && id !== showId);
    expect(ids.filter(([, id]) => copied.includes(id))).toEqual([]);
  });

  test('all fields are in the table: it is held against the description of the API', async () => {
    const { paths } = (await service.app.inject('/openapi.json')).json();
    const all = Object.entries<Record<string, Made>>(paths).flatMap(([path, operations]) =>
      Object.entries(operations).flatMap(([method, { requestBody }]) =>
        idFields(requestBody?.content?.['application/json']?.schema, `${method.toUpperCase()} ${path} `),
      ),
    );
    const known = [...named.map(({ field }) => field), ...holdNoRecord];
    expect([...new Set(all)].filter((field) => !known.includes(field))).toEqual([]);
    expect(all.length).toBeGreaterThan(25);
  });

  /** Fields of the form of an id, and schemas that are named elsewhere. */
  function idFields(schema: Made, at: string): string[] {
    if (typeof schema !== 'object' || schema === null) return [];
    if (schema.$ref !== undefined) {
      const name = String(schema.$ref).split('/').at(-1);
      return [
        at.endsWith('/placingRule') && at.startsWith('PATCH')
          ? at
          : `${at.split(' /placing')[0]?.trim()} ${name}`,
      ];
    }
    if (schema.format === 'uuid') return [at];
    const parts = Object.entries(schema.properties ?? {}).map(([name, part]) => [name, part] as const);
    if (schema.items !== undefined) parts.push(['*', schema.items]);
    const own = parts.flatMap(([name, part]) => idFields(part, `${at}/${name}`.replace(/ \//, ' /')));
    const choices = ['anyOf', 'oneOf', 'allOf'].flatMap((kind) => schema[kind] ?? []);
    return [...own, ...choices.flatMap((choice: Made) => idFields(choice, at))];
  }

  test('classes of both are not combined into one placing', async () => {
    const phases = `phase=${practice.classId}:1&phase=${official.classId}:1`;
    for (const showId of [practice.showId, official.showId]) {
      const answer = await call(found.manager, 'get', `/v1/shows/${showId}/combined-placing?${phases}`);
      expect([answer.status, answer.body.code]).toEqual([404, 'not_found']);
    }
  });

  test('a go of the one is not written on a card of the other, nor a card signed for the other', async () => {
    const address = `/v1/cards/${practiceCard.id}`;
    const go = goOf(['0', '0', '0']);
    const written = await call(practiceJudge, 'put', `${address}/goes/${official.openClassEntryId}`, go);
    expect([written.status, written.body.code]).toEqual([422, 'go_not_in_class']);
    const goes = Object.fromEntries(practiceCard.goes.map(({ classEntryId }: Made) => [classEntryId, go]));
    const right = statementOf({ ...practiceCard, showId: practice.showId ?? '' }, { goes });
    const wrong = [
      { showId: official.showId ?? '' },
      { classId: official.openClassId ?? '' },
      { seatId: official.openSeatId ?? '' },
      { cardId: official.cardId ?? '' },
      { content: { goes: { ...goes, [official.openClassEntryId ?? '']: go } } },
    ];
    for (const over of wrong) {
      const body = signedBody(practiceJudge.phone, { ...right, ...over });
      const answer = await call(practiceJudge, 'post', `${address}/signatures`, body);
      expect([Object.keys(over), answer.status]).toEqual([Object.keys(over), 422]);
    }
    const stolen = signedBody(officialJudge.phone, right);
    const answer = await call(practiceJudge, 'post', `${address}/signatures`, stolen);
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(await service.parts.db.prisma.cardRevision.count({ where: { cardId: practiceCard.id } })).toBe(0);
  });
});

describe('a phone that is paired to the one', () => {
  /** What a phone can do at all, and is not for everyone alike. */
  const forPhones = routes.filter(({ name }) => {
    const row = expected[name];
    const isOpen = row?.open.some((role) => ['judge', 'scribe', 'gate'].includes(role));
    return isOpen === true && row?.within !== 'anywhere';
  });

  test.each(['judge', 'scribe', 'gate'] as const)('does nothing at the other: %s', async (role) => {
    const answers: string[] = [];
    for (const [here, there] of [
      [official, practice],
      [practice, official],
    ] as const) {
      const pass = await passFor(
        service,
        role === 'gate' ? { role, showId: here.showId ?? '' } : { ...seatOf(here), role },
      );
      const before = await rowsOfShow(service, there.showId ?? '');
      for (const { name, method, url } of forPhones) {
        const { body, headers } = examples[name]?.(there) ?? {};
        const sent = method === 'GET' ? undefined : ((body ?? {}) as object);
        const address = addressOf({ method, url }, there);
        const answer = await call(pass, method.toLowerCase() as Method, address, sent, { ...headers });
        if (![403, 404].includes(answer.status))
          answers.push(`${name}: ${answer.status} ${answer.body.code}`);
        if (/:showId/.test(url) && expected[name]?.open.includes(role)) {
          expect([name, answer.body.code]).toEqual([name, 'other_show']);
        }
      }
      expect(await rowsOfShow(service, there.showId ?? '')).toEqual(before);
    }
    expect(answers).toEqual([]);
    expect(forPhones.length).toBeGreaterThan(12);
  });
});
