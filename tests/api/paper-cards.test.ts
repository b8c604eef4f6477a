/** A card that came in on paper: two people of the office enter it, and it counts like one that was signed. */
import { createHash } from 'node:crypto';
import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { canonicalText } from '../../src/evidence/index.ts';
import { addPlaces, goOf, setUpClass } from '../support/card-setting.ts';
import { openPaper, type PaperSetting, setUpPaper } from '../support/paper-setting.ts';
import { goesOf } from '../support/posted-class.ts';
import { signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';

let service: TestApp;
let paper: PaperSetting;
beforeAll(async () => {
  service = await buildTestApp();
});
afterAll(() => service.close());
beforeEach(async () => {
  paper = await setUpPaper(service, { judges: 2, entries: 2 });
});

const http = () => request(service.app.server);
const goes = goesOf(['1', '0.5', '0'], ['0', '0', '-0.5']);
const others = goesOf(['1', '-0.5', '0'], ['0', '0', '-0.5']);

async function lines(showId: string, ...types: string[]) {
  const found = await service.parts.db.prisma.ledgerLine.findMany({
    where: { ledgerId: showId, ...(types.length === 0 ? {} : { type: { in: types } }) },
    orderBy: { sequence: 'asc' },
  });
  return found.map(({ type, body, actor }) => ({ type, body, actor }));
}

describe('two people of the office enter a paper card', () => {
  test('and where both read the same it is a revision of the card, marked as paper, with both accounts', async () => {
    const { first, second } = paper;
    const opened = await paper.takeUp(first).expect(201);
    expect(opened.body).toMatchObject({
      ...{ classId: paper.classId, seatId: paper.seatIds[0], revision: 1, previousHash: null, reason: null },
      ...{ status: 'open', overtaken: false, createdBy: first.accountId, entries: [], mine: null },
      ...{ differences: null, photo: null },
    });
    const entered = await paper.enter(first, goes).expect(200);
    expect(entered.body).toMatchObject({ status: 'open', mine: { version: 1 }, differences: null });
    expect(entered.headers.etag).toBe('"1"');
    const accepted = await paper.enter(second, goes).expect(200);
    expect(accepted.body).toMatchObject({ status: 'accepted', differences: null, overtaken: false });
    expect(accepted.body.entries.map(({ accountId }: { accountId: string }) => accountId)).toEqual([
      first.accountId,
      second.accountId,
    ]);

    const { cardId } = opened.body;
    const revisions = await http().get(`/v1/cards/${cardId}/revisions`).use(first).expect(200);
    expect(revisions.body.items).toMatchObject([
      {
        ...{ revision: 1, previousHash: null, reason: null, origin: 'paper', paperCardId: opened.body.id },
        ...{ enteredBy: first.accountId, checkedBy: second.accountId },
      },
    ]);
    const card = await http().get(`/v1/cards/${cardId}`).use(first).expect(200);
    expect(card.body).toMatchObject({ state: 'signed', revisions: revisions.body.items });
    expect(card.body.goes[0].score.score).toBe('74.5');
    const progress = await http().get(`/v1/classes/${paper.classId}/cards`).use(first).expect(200);
    expect(progress.body.items).toMatchObject([{ signed: { origin: 'paper' } }, { signed: null }]);
  });

  test('each line of the ledger names who did it, and the one that everyone hears gives no mark away', async () => {
    const { first, second } = paper;
    await paper.takeUp(first).expect(201);
    await paper.enter(first, goes).expect(200);
    await paper.enter(second, goes).expect(200);
    const found = await lines(paper.showId);
    const { id: paperCardId, cardId } = paper.current();
    const body = { classId: paper.classId, seatId: paper.seatIds[0], cardId, paperCardId };
    const stored = await service.parts.db.prisma.paperCard.findUniqueOrThrow({
      where: { id: paperCardId },
      include: { accepted: true },
    });
    const revision = stored.accepted;
    // RFC 8785 by the library, SHA-256 by Node.js: what a reader with content and salt computes.
    const sealed = canonicalText({ content: revision?.content, salt: stored.salt });
    const saltedHash = createHash('sha256').update(sealed).digest('hex');
    const [enteredBy, checkedBy] = [first.accountId, second.accountId];
    expect(found.slice(-4)).toEqual([
      { type: 'card.paper-opened', body: { ...body, revision: 1 }, actor: actorOf(first) },
      {
        type: 'card.paper-entered',
        body: { ...body, accountId: enteredBy, version: 1 },
        actor: actorOf(first),
      },
      {
        type: 'card.paper-entered',
        body: { ...body, accountId: checkedBy, version: 1 },
        actor: actorOf(second),
      },
      {
        type: 'card.paper-accepted',
        body: { ...body, revisionId: revision?.id, revision: 1, enteredBy, checkedBy, saltedHash },
        actor: actorOf(second),
      },
    ]);
    expect(stored.salt).toMatch(/^[0-9a-f]{32}$/);
    expect(saltedHash).not.toBe(revision?.contentHash);
    expect(JSON.stringify(found)).not.toContain(stored.salt);
    expect(JSON.stringify(found)).not.toContain(revision?.contentHash);
  });

  test('and what they mean is compared, not how they spelled it', async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goesOf(['1.0', '0.50', '0'], ['0', '0.0', '-0.5'])).expect(200);
    const turned = goes.map((go) => ({ ...go, maneuvers: [...(go.maneuvers ?? [])].reverse() }));
    const accepted = await paper.enter(paper.second, turned).expect(200);
    expect(accepted.body.status).toBe('accepted');
    expect(accepted.body.mine.content).toEqual(paper.contentOf(goes));
  });

  test('the same entry sent again changes nothing, also after the card was accepted', async () => {
    await paper.takeUp(paper.first).expect(201);
    for (const pass of [paper.first, paper.first, paper.second, paper.second, paper.first]) {
      await paper.enter(pass, goes).expect(200);
    }
    expect(await lines(paper.showId, 'card.paper-entered', 'card.paper-accepted')).toHaveLength(3);
    expect((await paper.enter(paper.first, others).expect(409)).body.code).toBe('paper_card_closed');
  });

  test('at the same moment: the card is accepted once', async () => {
    await paper.takeUp(paper.first).expect(201);
    const answers = await Promise.all(
      [paper.first, paper.second, paper.first, paper.second].map((pass) => paper.enter(pass, goes)),
    );
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200]);
    expect(await lines(paper.showId, 'card.paper-accepted')).toHaveLength(1);
    expect((await paper.read(paper.first).expect(200)).body.status).toBe('accepted');
  });
});

describe('until both have entered', () => {
  beforeEach(async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
  });

  test('everyone at the office sees who has, and nobody but she herself what', async () => {
    const third = await paper.another();
    for (const pass of [paper.second, third]) {
      const seen = await paper.read(pass).expect(200);
      expect(seen.body.entries).toMatchObject([{ accountId: paper.first.accountId, version: 1 }]);
      expect(seen.body).toMatchObject({ mine: null, differences: null });
      expect(seen.headers.etag).toBeUndefined();
      const listed = await http().get(`/v1/classes/${paper.classId}/paper-cards`).use(pass).expect(200);
      expect(listed.body.items).toEqual([seen.body]);
      expect(JSON.stringify([seen.body, listed.body])).not.toContain('"mark"');
    }
    const own = await paper.read(paper.first).expect(200);
    expect(own.body.mine).toEqual({ content: paper.contentOf(goes), version: 1 });
    const { cardId } = paper.current();
    expect((await http().get(`/v1/cards/${cardId}`).use(paper.second).expect(403)).body.code).toBe(
      'card_hidden',
    );
  });

  test('one account cannot be both, however often it enters', async () => {
    const again = await paper.enter(paper.first, others, '"1"').expect(200);
    expect(again.body).toMatchObject({ status: 'open', mine: { version: 2 }, differences: null });
    expect((await paper.enter(paper.first, others, '"2"').expect(200)).body.status).toBe('open');
  });

  test('her own entry is changed by naming the version of it that she has seen', async () => {
    expect((await paper.enter(paper.first, others).expect(428)).body.code).toBe('if_match_required');
    expect((await paper.enter(paper.first, others, '"7"').expect(412)).body.code).toBe('stale_version');
    expect((await paper.enter(paper.second, goes, '"1"').expect(412)).body.code).toBe('stale_version');
    await paper.enter(paper.first, others, '"1"').expect(200);
  });
});

describe('two entries that differ', () => {
  const field = { part: 'maneuver', position: 2, code: null, backNumber: 101 };
  beforeEach(async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
    await paper.enter(paper.second, others).expect(200);
  });

  test('are shown field by field to the two who entered them, and to nobody else', async () => {
    const classEntryId = paper.entryIds[0];
    const mine = await paper.read(paper.first).expect(200);
    expect(mine.body).toMatchObject({ status: 'open', overtaken: false });
    expect(mine.body.differences).toEqual([{ ...field, classEntryId, mine: '0.5', other: '-0.5' }]);
    const hers = await paper.read(paper.second).expect(200);
    expect(hers.body.differences).toEqual([{ ...field, classEntryId, mine: '-0.5', other: '0.5' }]);
    const third = await paper.read(await paper.another()).expect(200);
    expect(third.body).toMatchObject({ mine: null, differences: null });
    expect(third.body.entries).toHaveLength(2);
  });

  test('make no card: nothing between them is taken, and the class waits', async () => {
    const tabulation = await http().get(`/v1/classes/${paper.classId}/tabulation`).use(paper.first);
    const waits = await http()
      .post(`/v1/classes/${paper.classId}/postings`)
      .use(paper.first)
      .set('if-match', String(tabulation.headers.etag))
      .send({ state: 'provisional' })
      .expect(409);
    expect(waits.body.code).toBe('cards_missing');
    const progress = await http().get(`/v1/classes/${paper.classId}/cards`).use(paper.first).expect(200);
    expect(progress.body.items[0].signed).toBeNull();
    expect(await lines(paper.showId, 'card.paper-accepted')).toEqual([]);
  });

  test('become one when either corrects her own; who then read the same has checked it', async () => {
    const accepted = await paper.enter(paper.first, others, '"1"').expect(200);
    expect(accepted.body.status).toBe('accepted');
    const { cardId } = paper.current();
    const revision = await http().get(`/v1/cards/${cardId}/revisions/1`).use(paper.first).expect(200);
    expect(revision.body).toMatchObject({
      ...{ origin: 'paper', enteredBy: paper.second.accountId, checkedBy: paper.first.accountId },
      content: paper.contentOf(others),
    });
    const [line] = await lines(paper.showId, 'card.paper-accepted');
    expect(line?.body).toMatchObject({
      enteredBy: paper.second.accountId,
      checkedBy: paper.first.accountId,
    });
  });

  test('are not for a third account to decide', async () => {
    const third = await paper.another();
    for (const content of [goes, others]) {
      const refused = await paper.enter(third, content).expect(409);
      expect(refused.body.code).toBe('paper_card_has_both');
    }
    expect((await paper.read(third).expect(200)).body.entries).toHaveLength(2);
  });
});

describe('an entry is checked as a signature is', () => {
  test('what is missing, illegal or of an entry that does not go is named where it stands', async () => {
    await paper.takeUp(paper.first).expect(201);
    const [entry = ''] = paper.entryIds;
    const short = await paper.enter(paper.first, goes.slice(0, 1)).expect(422);
    expect(short.body.code).toBe('card_incomplete');
    const illegal = await paper
      .enter(paper.first, [goOf(['0', '0.25', '0']), goOf(['0', '0', '0'])])
      .expect(422);
    expect(illegal.body).toMatchObject({
      code: 'card_illegal',
      errors: [{ field: `/goes/${entry}/maneuvers/1/mark` }],
    });
    await service.parts.db.prisma.classEntry.update({
      where: { id: paper.entryIds[1] ?? '' },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    expect((await paper.enter(paper.first, goes).expect(409)).body.code).toBe('entry_not_going');
    expect((await paper.read(paper.first).expect(200)).body.entries).toEqual([]);
  });

  test('where the class merges places, a card with ties that nobody broke is not taken', async () => {
    paper = await setUpPaper(service, { merge: addPlaces, entries: 2 });
    await paper.takeUp(paper.first).expect(201);
    const tied = goesOf(['1', '0', '0'], ['0', '1', '0']);
    expect((await paper.enter(paper.first, tied).expect(422)).body.code).toBe('card_has_open_ties');
    const order = { ownOrder: [[...paper.entryIds].reverse()] };
    await paper.enter(paper.first, tied, undefined, order).expect(200);
    const accepted = await paper.enter(paper.second, tied, undefined, order).expect(200);
    expect(accepted.body.status).toBe('accepted');
  });

  test('an entry that was scratched after the first had entered is a difference until she takes it off', async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
    await service.parts.db.prisma.classEntry.update({
      where: { id: paper.entryIds[1] ?? '' },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    const seen = await paper.enter(paper.second, goes.slice(0, 1)).expect(200);
    expect(seen.body.status).toBe('open');
    expect(new Set(seen.body.differences.map((one: { backNumber: number }) => one.backNumber))).toEqual(
      new Set([102]),
    );
    const accepted = await paper.enter(paper.first, goes.slice(0, 1), '"1"').expect(200);
    expect(accepted.body.status).toBe('accepted');
  });

  test('what is no card at all is refused with the field', async () => {
    await paper.takeUp(paper.first).expect(201);
    const { id } = paper.current();
    for (const body of [{}, { goes: [] }, { goes: {}, salt: 'x' }, { goes: { [id]: { mark: 71 } } }, []]) {
      const refused = await http().put(`/v1/paper-cards/${id}/entries/mine`).use(paper.first).send(body);
      expect(refused.status).toBe(400);
      expect(refused.body.errors.length).toBeGreaterThan(0);
    }
  });
});

describe('a paper card is taken up', () => {
  test('once for a seat: whoever takes it up again finds it there', async () => {
    const opened = await paper.takeUp(paper.first).expect(201);
    const again = await paper.takeUp(paper.second).expect(200);
    expect(again.body.id).toBe(opened.body.id);
    expect(again.headers.location).toBe(`/v1/paper-cards/${opened.body.id}`);
    const many = await Promise.all([0, 1, 2].map(() => paper.takeUp(paper.first, { seat: 1 })));
    expect(many.map(({ status }) => status).sort()).toEqual([200, 200, 201]);
    expect(new Set(many.map(({ body }) => body.id)).size).toBe(1);
  });

  test('and opens the class where it is the first card of it', async () => {
    await paper.takeUp(paper.first, { reason: 'her phone has no power' }).expect(201);
    const found = await lines(paper.showId, 'class.opened', 'card.opened', 'card.paper-opened');
    expect(found.map(({ type }) => type)).toEqual(['class.opened', 'card.opened', 'card.paper-opened']);
    expect((await paper.read(paper.first)).body.reason).toBe('her phone has no power');
  });

  test('and what the judge has written on her phone stays as it is', async () => {
    const judge = await paper.judge();
    const cardId = await paper.openCard();
    const go = `/v1/cards/${cardId}/goes/${paper.entryIds[0]}`;
    await http()
      .put(go)
      .use(judge)
      .send(goOf(['3', '3', '3']))
      .expect(200);
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
    const drafts = () => service.parts.db.prisma.cardDraftGo.findMany({ where: { cardId } });
    const before = await drafts();
    await paper.enter(paper.second, goes).expect(200);
    expect(await drafts()).toEqual(before);
    const refused = await http().post(`/v1/cards/${cardId}/signatures`).use(judge);
    expect(refused.status).toBeGreaterThanOrEqual(400);
    const seen = await http().get(`/v1/cards/${cardId}`).use(judge).expect(200);
    expect(seen.body).toMatchObject({ state: 'signed', revisions: [{ origin: 'paper' }] });
  });

  test('not for a seat that is not of the class, that is withdrawn, or in a class that is cancelled', async () => {
    const elsewhere = await setUpClass(service);
    const foreign = await paper.takeUp(paper.first, { seatId: elsewhere.seatIds[0] ?? '' });
    expect([foreign.status, foreign.body.code]).toEqual([404, 'not_found']);
    const { prisma } = service.parts.db;
    const withdrawn = { withdrawnAt: service.parts.clock.now(), withdrawnWhy: 'ill' };
    await prisma.panelSeat.update({ where: { id: paper.seatIds[1] ?? '' }, data: withdrawn });
    const left = await paper.takeUp(paper.first, { seat: 1 });
    expect([left.status, left.body.code]).toEqual([409, 'seat_withdrawn']);
    await prisma.showClass.update({ where: { id: paper.classId }, data: { status: 'cancelled' } });
    const closed = await paper.takeUp(paper.first);
    expect([closed.status, closed.body.code]).toEqual([409, 'class_not_open']);
  });
});

describe('a signed card is amended on paper', () => {
  let cardId: string;
  let signedHash: string;
  beforeEach(async () => {
    cardId = await paper.openCard();
    const pass = await paper.judge();
    const signed = await http()
      .post(`/v1/cards/${cardId}/signatures`)
      .use(pass)
      .use(signedBy(service, { pass, cardId, asked: { content: paper.contentOf(goes) } }))
      .expect(201);
    signedHash = signed.body.contentHash;
  });
  const amendment = (changes: object = {}) =>
    paper.takeUp(paper.first, { reason: 'she saw her notes again', previousHash: signedHash, ...changes });

  test('with a reason and the revision that it amends: both stay readable, each with its origin', async () => {
    await amendment().expect(201);
    await paper.enter(paper.first, others).expect(200);
    await paper.enter(paper.second, others).expect(200);
    const { items } = (await http().get(`/v1/cards/${cardId}/revisions`).use(paper.first).expect(200)).body;
    expect(items).toMatchObject([
      { revision: 1, origin: 'phone', enteredBy: null, checkedBy: null, paperCardId: null },
      {
        ...{ revision: 2, origin: 'paper', previousHash: signedHash, reason: 'she saw her notes again' },
        ...{ enteredBy: paper.first.accountId, checkedBy: paper.second.accountId },
      },
    ]);
    const [line] = await lines(paper.showId, 'card.paper-accepted');
    expect(line?.body).toMatchObject({ revision: 2 });
  });

  test('not without either of them, and not over a revision that is not the last', async () => {
    expect((await paper.takeUp(paper.first).expect(409)).body.code).toBe('card_already_signed');
    const bare = await paper.takeUp(paper.first, { previousHash: signedHash }).expect(422);
    expect(bare.body.code).toBe('reason_missing');
    const stale = await amendment({ previousHash: 'a'.repeat(64) }).expect(409);
    expect(stale.body).toMatchObject({ code: 'stale_revision', revision: 1, contentHash: signedHash });
    const unsigned = await amendment({ seat: 1 }).expect(409);
    expect(unsigned.body.code).toBe('card_not_signed');
  });

  test('not where nothing changes', async () => {
    await amendment().expect(201);
    expect((await paper.enter(paper.first, goes).expect(422)).body.code).toBe('amendment_changes_nothing');
  });

  test('is overtaken where the judge amends on her phone first: it can only be withdrawn', async () => {
    await amendment().expect(201);
    await paper.enter(paper.first, others).expect(200);
    const pass = await paper.judge();
    const asked = {
      ...{ reason: 'numbers transposed', previousHash: signedHash, revision: 2 },
      content: paper.contentOf(goesOf(['2', '0.5', '0'], ['0', '0', '-0.5'])),
    };
    await http()
      .post(`/v1/cards/${cardId}/amendments`)
      .use(pass)
      .use(signedBy(service, { pass, cardId, asked }))
      .expect(201);
    expect((await paper.read(paper.first)).body).toMatchObject({ status: 'open', overtaken: true });
    expect((await paper.enter(paper.second, others).expect(409)).body.code).toBe('paper_card_overtaken');
    const { items } = (await http().get(`/v1/cards/${cardId}/revisions`).use(paper.first)).body;
    const newer = { previousHash: items.at(-1).contentHash };
    expect((await amendment(newer).expect(409)).body.code).toBe('paper_card_overtaken');
    await paper.withdraw(paper.second, 'she amended it herself').expect(200);
    await amendment(newer).expect(201);
  });
});

test('a card that the judge signs on her phone first overtakes the paper', async () => {
  await paper.takeUp(paper.first).expect(201);
  await paper.enter(paper.first, goes).expect(200);
  const { cardId } = paper.current();
  const pass = await paper.judge();
  await http()
    .post(`/v1/cards/${cardId}/signatures`)
    .use(pass)
    .use(signedBy(service, { pass, cardId, asked: { content: paper.contentOf(goes) } }))
    .expect(201);
  expect((await paper.enter(paper.second, goes).expect(409)).body.code).toBe('paper_card_overtaken');
  expect(await lines(paper.showId, 'card.paper-accepted')).toEqual([]);
});

test('a card that came in on paper is not signed once more on the phone, though it says the same', async () => {
  await paper.takeUp(paper.first).expect(201);
  await paper.enter(paper.first, goes).expect(200);
  await paper.enter(paper.second, goes).expect(200);
  const { cardId } = paper.current();
  const pass = await paper.judge();
  const refused = await http()
    .post(`/v1/cards/${cardId}/signatures`)
    .use(pass)
    .use(signedBy(service, { pass, cardId, asked: { content: paper.contentOf(goes) } }))
    .expect(409);
  expect(refused.body).toMatchObject({ code: 'card_already_signed', revision: 1 });
});

describe('a paper card is withdrawn', () => {
  test('with a reason while it is open, and may then be taken up anew', async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
    const withdrawn = await paper.withdraw(paper.second, 'it was the card of the other seat').expect(200);
    expect(withdrawn.body).toMatchObject({
      ...{ status: 'withdrawn', withdrawnWhy: 'it was the card of the other seat' },
    });
    await paper.withdraw(paper.second, 'it was the card of the other seat').expect(200);
    expect((await paper.withdraw(paper.second, 'no').expect(409)).body.code).toBe('paper_card_closed');
    expect((await paper.enter(paper.second, goes).expect(409)).body.code).toBe('paper_card_closed');
    expect(await lines(paper.showId, 'card.paper-withdrawn')).toHaveLength(1);
    await paper.takeUp(paper.first).expect(201);
  });

  test('not without a reason, and not after it was accepted', async () => {
    await paper.takeUp(paper.first).expect(201);
    expect((await paper.withdraw(paper.first, ' ').expect(400)).body.errors[0].field).toBe('/reason');
    await paper.enter(paper.first, goes).expect(200);
    await paper.enter(paper.second, goes).expect(200);
    expect((await paper.withdraw(paper.first, 'no').expect(409)).body.code).toBe('paper_card_closed');
  });
});

describe('paper cards are for the office of the show alone', () => {
  test('no phone, no points secretary, no other show and nobody without a pass comes near them', async () => {
    await paper.takeUp(paper.first).expect(201);
    await paper.enter(paper.first, goes).expect(200);
    const { id } = paper.current();
    const elsewhere = await setUpClass(service);
    const stranger = await passFor(service, { role: 'office', showId: elsewhere.showId });
    const points = await passFor(service, { role: 'points-secretary', showId: paper.showId });
    const senders = [
      [stranger, 403, 'other_show'],
      [points, 403, 'not_allowed'],
      [await paper.judge(), 403, 'not_allowed'],
      [await paper.scribe(), 403, 'not_allowed'],
      [await paper.pass('gate'), 403, 'not_allowed'],
      [await paper.pass('public'), 401, 'token_missing'],
    ] as const;
    for (const [pass, status, code] of senders) {
      const answers = [
        await paper.takeUp(pass),
        await http().get(`/v1/classes/${paper.classId}/paper-cards`).use(pass),
        await http().get(`/v1/paper-cards/${id}`).use(pass),
        await paper.enter(pass, goes),
        await http().post(`/v1/paper-cards/${id}/withdrawals`).use(pass).send({ reason: 'x' }),
      ];
      for (const answer of answers) expect([answer.status, answer.body.code]).toEqual([status, code]);
    }
    expect((await paper.read(paper.first)).body).toMatchObject({ status: 'open', entries: [{ version: 1 }] });
  });

  test('what is not there is not found', async () => {
    const none = service.parts.ids.next();
    const answers = [
      await http().get(`/v1/paper-cards/${none}`).use(paper.first),
      await http().get(`/v1/classes/${none}/paper-cards`).use(paper.first),
      await http().put(`/v1/paper-cards/${none}/entries/mine`).use(paper.first).send(paper.contentOf(goes)),
    ];
    for (const answer of answers) expect([answer.status, answer.body.code]).toEqual([404, 'not_found']);
  });
});

test('a posted result counts a paper card like one that was signed on a phone', async () => {
  const pass = await paper.judge(1);
  const cardId = await paper.openCard(1);
  await http()
    .post(`/v1/cards/${cardId}/signatures`)
    .use(pass)
    .use(signedBy(service, { pass, cardId, asked: { content: paper.contentOf(goes) } }))
    .expect(201);
  await openPaper(paper, goesOf(['0', '0', '0'], ['3', '3', '3']));
  const preview = await http().get(`/v1/classes/${paper.classId}/tabulation`).use(paper.first).expect(200);
  const posted = await http()
    .post(`/v1/classes/${paper.classId}/postings`)
    .use(paper.first)
    .set('if-match', String(preview.headers.etag))
    .send({ state: 'provisional' })
    .expect(201);
  expect(posted.body.version).toBe(1);
  const result = await http().get(`/v1/classes/${paper.classId}/result`).expect(200);
  // By hand: 101 has 74.5 on the phone and 73 on paper, 102 has 72.5 and 82.
  const text = JSON.stringify(result.body);
  expect(text).toContain('"154.5"');
  expect(text).toContain('"147.5"');
  expect(text.indexOf('"154.5"')).toBeLessThan(text.indexOf('"147.5"'));
  const { cardRevisionIds } = await service.parts.db.prisma.posting.findFirstOrThrow({
    where: { classId: paper.classId },
  });
  const counted = await service.parts.db.prisma.cardRevision.findMany({
    where: { id: { in: cardRevisionIds } },
  });
  expect(counted.map((revision) => revision.jws === null).sort()).toEqual([false, true]);
});

const actorOf = ({ accountId, sessionId }: { accountId: string; sessionId: string }) => ({
  ...{ as: 'office', account: accountId, session: sessionId },
});
