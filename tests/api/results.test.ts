import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { replay } from '../../src/engine/placing/replay.ts';
import type { TieBreak } from '../../src/engine/placing/types.ts';
import { addEntry, addPlaces, goOf } from '../support/card-setting.ts';
import { goesOf, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

const places = (body: { results: { placings: { backNumber: number; place: number }[] }[] }) =>
  body.results[0]?.placings.map(({ backNumber, place }) => [backNumber, place]);

describe('from signed cards to a posted result', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  test('the preview names the cards that are missing, and nothing can be posted before they are in', async () => {
    const found = await setUpJudgedClass(service, { judges: 2 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const preview = await found.get('/tabulation', found.office).expect(200);
    expect(preview.body.state).toBe('under-way');
    expect(preview.body.cardsMissing).toMatchObject([{ seatOrder: 2, judge: 'Judge 2', why: 'not-signed' }]);
    const refused = await found.publish('provisional');
    expect([refused.status, refused.body.code]).toEqual([409, 'cards_missing']);
  });

  test('three judges added: provisional, official, and read by everyone with the reasons', async () => {
    const found = await setUpJudgedClass(service, { judges: 3 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.sign(1, goesOf(['0', '0', '0'], ['0.5', '0', '0'], ['2', '0', '0']));
    await found.sign(2, goesOf(['0', '0', '-1'], ['0', '0', '0'], ['2', '1', '0']));
    await found.get('/result').expect(409);
    const posted = await found.publish('provisional');
    expect(posted.status).toBe(201);
    expect(posted.body).toMatchObject({ version: 1, state: 'provisional', reason: null });
    const result = (await found.get('/result').expect(200)).body;
    expect(places(result)).toEqual([
      [103, 1],
      [102, 2],
      [101, 3],
    ]);
    // 73 + two for the trot, three judges: 75 + 75 + 76
    expect(result.results[0].placings[0]).toMatchObject({
      total: '226',
      tied: false,
      name: 'Exhibitor 3',
      because: ['First: 75 + 75 + 76 = 226.'],
    });
    expect(result.cards).toHaveLength(3);
    expect(result.cards[2].goes[2].parts).toContain('Base 70.');
    expect((await found.publish('official')).body).toMatchObject({ version: 2, state: 'official' });
    expect((await found.publish('official')).body.code).toBe('class_already_official');
    expect((await found.publish('provisional')).body.code).toBe('class_already_official');
    const { postings } = (await found.get('/postings').expect(200)).body;
    expect(postings.map(({ state }: { state: string }) => state)).toEqual(['provisional', 'official']);
  });

  test('a posting can be repeated by anyone: its hash from its body, its places from its reasons', async () => {
    const found = await setUpJudgedClass(service, {
      judges: 3,
      merge: addPlaces,
      rule: { ties: [{ code: 'share' }] },
    });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.sign(1, goesOf(['3', '0', '0'], ['0.5', '0', '0'], ['2', '0', '0']));
    await found.sign(2, goesOf(['-1', '0', '0'], ['0', '0', '0'], ['2', '1', '0']));
    const { body: summary } = await found.publish('provisional');
    const posting = (await request(service.app.server).get(`/v1/postings/${summary.id}`).expect(200)).body;
    const text = canonicalize(posting.body) ?? '';
    expect(createHash('sha256').update(text).digest('hex')).toBe(posting.bodyHash);
    const [result] = posting.body.results;
    const entries = posting.body.entries.map(({ id }: { id: string }) => id);
    const order = replay(entries, result.reasons).flat();
    expect(order).toEqual(result.placed.map(({ entry }: { entry: string }) => entry));
    expect(JSON.stringify(posting.body)).not.toContain('Exhibitor');
  });

  test('a correction says why, the old posting stays readable, and an amendment alone changes nothing posted', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.publish('provisional');
    await found.publish('official');
    await found.amend(0, goesOf(['1', '0', '0'], ['3', '0', '0'], ['2', '0', '0']), 'a 3 was written as a 0');
    expect(places((await found.get('/result').expect(200)).body)).toEqual([
      [103, 1],
      [101, 2],
      [102, 3],
    ]);
    expect((await found.get('/tabulation', found.office)).body.changedSincePosting).toBe(true);
    expect((await found.publish('corrected')).body.code).toBe('correction_reason_missing');
    const corrected = await found.publish('corrected', 'Judge 1 amended a transposed mark of 102.');
    expect(corrected.body).toMatchObject({ version: 3, state: 'corrected' });
    const { body } = await found.get('/result').expect(200);
    expect(body.posting.reason).toBe('Judge 1 amended a transposed mark of 102.');
    expect(places(body)).toEqual([
      [102, 1],
      [103, 2],
      [101, 3],
    ]);
    expect((await found.publish('corrected', 'again')).body.code).toBe('correction_changes_nothing');
    const { postings } = (await found.get('/postings')).body;
    const first = await request(service.app.server).get(`/v1/postings/${postings[0].id}`).expect(200);
    expect(first.body.body.results[0].placed[0].entry).toBe(found.entryIds[2]);
  });

  test('a provisional result does not change without a word either', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.publish('provisional');
    await found.amend(0, goesOf(['1', '0', '0'], ['3', '0', '0'], ['2', '0', '0']), 'written as a 0');
    expect((await found.publish('official')).body.code).toBe('posting_out_of_date');
    expect((await found.publish('provisional')).body.code).toBe('correction_reason_missing');
    expect((await found.publish('provisional', 'A mark of 102 was amended.')).body.version).toBe(2);
  });

  test('nothing is posted unseen: without If-Match, or with the ETag of an older preview', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const blind = await found.post('/postings', { state: 'provisional' });
    expect([blind.status, blind.body.code]).toEqual([428, 'if_match_required']);
    const { etag } = (await found.get('/tabulation', found.office)).headers;
    await found.amend(0, goesOf(['1', '0', '0'], ['3', '0', '0'], ['2', '0', '0']), 'written as a 0');
    const headers = { 'if-match': String(etag) };
    const late = await found.post('/postings', { state: 'provisional' }, { headers });
    expect([late.status, late.body.code]).toEqual([412, 'stale_version']);
  });

  test('a posting that is sent twice with one Idempotency-Key is one posting', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const { etag } = (await found.get('/tabulation', found.office)).headers;
    const headers = {
      'if-match': String(etag),
      'idempotency-key': 'post-class-1',
    };
    const first = await found.post('/postings', { state: 'provisional' }, { headers });
    const second = await found.post('/postings', { state: 'provisional' }, { headers });
    expect([first.status, second.status]).toEqual([201, 201]);
    expect(second.body).toEqual(first.body);
    const other = await found.post('/postings', { state: 'official' }, { headers });
    expect([other.status, other.body.code]).toEqual([409, 'idempotency_key_reused']);
    expect((await found.get('/postings')).body.postings).toHaveLength(1);
  });

  test('two offices post at once: one posting', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const answers = await Promise.all([found.publish('provisional'), found.publish('provisional')]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect((await found.get('/postings')).body.postings).toHaveLength(1);
  });
});

describe('ties that the rule leaves', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  const tied = goesOf(['1', '0', '0'], ['0', '1', '0'], ['-1', '0', '0']);
  async function withTie(ties: readonly TieBreak[]) {
    const found = await setUpJudgedClass(service, { judges: 1, rule: { ties } });
    await found.sign(0, tied);
    return found;
  }

  test('an open tie cannot be posted; the preview says what may be ruled', async () => {
    const found = await withTie([]);
    const { body } = await found.get('/tabulation', found.office).expect(200);
    expect(body.openTies).toMatchObject([{ place: 1, backNumbers: [101, 102], waitsFor: 'chain-ended' }]);
    expect(body.openTies[0].mayBeRuled).toContain('share');
    expect(body.ownTies).toMatchObject([{ judge: 'Judge 1', backNumbers: [101, 102] }]);
    const refused = await found.publish('provisional');
    expect([refused.status, refused.body.code]).toEqual([409, 'ties_open']);
    expect(refused.body.errors[0].message).toContain('101, 102 are tied for place 1');
  });

  test('a run-off waits for its ruling, which the result then gives as the reason', async () => {
    const found = await withTie([{ code: 'run-off' }]);
    expect((await found.get('/tabulation', found.office)).body.openTies[0].waitsFor).toBe('run-off');
    const ruling = {
      kind: 'run-off',
      order: [[found.entryIds[1]], [found.entryIds[0]]],
      decidedBy: 'Judge 1',
      why: 'both went again, 102 kept the lead',
    };
    await found.post('/rulings', ruling).expect(201);
    expect((await found.publish('provisional')).status).toBe(201);
    const { body } = await found.get('/result').expect(200);
    expect(places(body)?.slice(0, 2)).toEqual([
      [102, 1],
      [101, 2],
    ]);
    expect(body.results[0].placings[0].because.join(' ')).toContain(
      'ruled by Judge 1: both went again, 102 kept the lead',
    );
    expect((await found.get('/rulings', found.office)).body.rulings).toMatchObject([ruling]);
  });

  test('a declined run-off goes on with the chain', async () => {
    const found = await withTie([{ code: 'run-off' }, { code: 'maneuvers', order: [2] }]);
    const [one, two] = found.entryIds;
    await found
      .post('/rulings', {
        kind: 'declined',
        order: [[one, two]],
        decidedBy: 'the riders',
        why: 'both declined',
      })
      .expect(201);
    await found.publish('provisional');
    expect(places((await found.get('/result')).body)?.[0]).toEqual([102, 1]);
  });

  test('a ruling fits one open tie, each entry once, with who and why', async () => {
    const found = await withTie([]);
    const [one, two, three] = found.entryIds;
    const rule = (order: unknown, kind = 'coin') =>
      found.post('/rulings', { kind, order, decidedBy: 'show management', why: 'a coin' });
    for (const order of [[[one], [three]], [[one], [two], [three]], [[one], [one]], [[one]]]) {
      const refused = await rule(order);
      expect([refused.status, refused.body.code]).toEqual([422, 'ruling_does_not_fit']);
    }
    expect((await rule([[one], [two]], 'share')).body.code).toBe('ruling_does_not_fit');
    const nameless = await found.post('/rulings', {
      kind: 'coin',
      order: [[one], [two]],
      decidedBy: ' ',
      why: '',
    });
    expect(nameless.body.errors.map(({ field }: { field: string }) => field)).toEqual(['/decidedBy', '/why']);
    await rule([[one, two]], 'share').expect(201);
    await found.publish('provisional');
    const { placings } = (await found.get('/result')).body.results[0];
    expect(
      placings.map(({ place, tied: isTied }: { place: number; tied: boolean }) => [place, isTied]),
    ).toEqual([
      [1, true],
      [1, true],
      [3, false],
    ]);
  });

  test('rulings and postings are evidence: the database refuses to change them', async () => {
    const found = await withTie([{ code: 'share' }]);
    await found.publish('provisional');
    const { pool } = service.parts.db;
    await expect(pool.query(`UPDATE posting SET state = 'official'`)).rejects.toThrow();
    await expect(pool.query('DELETE FROM posting')).rejects.toThrow();
    await expect(pool.query('TRUNCATE posting')).rejects.toThrow();
    await expect(pool.query('DELETE FROM ledger_line')).rejects.toThrow();
  });
});

describe('classes at the edge', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  const out = { ruling: { code: 'disqualified' as const } };

  test('a class without judges cannot be posted', async () => {
    const found = await setUpJudgedClass(service, { judges: 0 });
    expect((await found.publish('provisional')).body.code).toBe('cards_missing');
  });

  test('a class with one entry places it first', async () => {
    const found = await setUpJudgedClass(service, { judges: 3, entries: 1 });
    for (const seat of [0, 1, 2]) await found.sign(seat, goesOf(['1', '0', '0']));
    await found.publish('provisional');
    expect(places((await found.get('/result')).body)).toEqual([[101, 1]]);
  });

  test('with everyone disqualified nobody is placed, and each one reads why', async () => {
    const found = await setUpJudgedClass(service, { judges: 2 });
    for (const seat of [0, 1]) await found.sign(seat, [out, out, out]);
    await found.publish('provisional');
    const [result] = (await found.get('/result')).body.results;
    expect(result.placings).toEqual([]);
    expect(result.unplaced[0].why).toBe('101 may not be placed: ruled disqualified by judge 1 and judge 2.');
  });

  test('off pattern is placed below all who kept the pattern, whatever the marks', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    const off = { ...goOf(['3', '3', '3']), ruling: { code: 'off-pattern' as const } };
    await found.sign(0, [off, ...goesOf(['-3', '0', '0'], ['-1', '0', '0'])]);
    await found.publish('provisional');
    const { body } = await found.get('/result');
    expect(places(body)).toEqual([
      [103, 1],
      [102, 2],
      [101, 3],
    ]);
    expect(body.results[0].placings[2].because[0]).toContain('laced below all who kept the pattern');
  });

  test('a maneuver that was not seen goes with the result', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    const hidden = {
      maneuvers: [
        { position: 1, mark: '1' },
        { position: 2, notSeen: true as const },
        { position: 3, mark: '0' },
      ],
      extras: { 'form-and-effectiveness': '3' },
    };
    await found.sign(0, [hidden, ...goesOf(['0', '0', '0'], ['-1', '0', '0'])]);
    await found.publish('provisional');
    const [first] = (await found.get('/result')).body.results[0].placings;
    expect(first.because.at(-1)).toBe(
      'Judge 1 could not see maneuver 2 (Jog a circle left); it is left out of that score, neither a zero nor a fault.',
    );
  });

  test('an entry added after the signature makes the card wait for its amendment; a scratch closes it up', async () => {
    const found = await setUpJudgedClass(service, { judges: 1 });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    const late = await addEntry(service, { showId: found.showId, classId: found.classId, go: 4 });
    const { cardsMissing } = (await found.get('/tabulation', found.office)).body;
    expect(cardsMissing).toMatchObject([{ seatOrder: 1, why: 'to-be-amended' }]);
    for (const id of [late, found.entryIds[2] ?? '']) {
      await service.parts.db.prisma.classEntry.update({
        where: { id },
        data: { status: 'scratched', statusReason: 'lame' },
      });
    }
    await found.publish('provisional');
    const { body } = await found.get('/result');
    expect(places(body)).toEqual([
      [101, 1],
      [102, 2],
    ]);
    expect(body.didNotGo.map(({ backNumber }: { backNumber: number }) => backNumber).sort()).toEqual([
      103, 104,
    ]);
  });

  test('each judge separately: a result for each', async () => {
    const found = await setUpJudgedClass(service, { judges: 2, merge: { method: 'separate' } });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.sign(1, goesOf(['3', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.publish('provisional');
    const { results } = (await found.get('/result')).body;
    expect(results.map(({ judge }: { judge: { name: string } }) => judge.name)).toEqual([
      'Judge 1',
      'Judge 2',
    ]);
    expect(results[1].placings[0].backNumber).toBe(101);
  });
});

describe('who reads what', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  async function posted(publishCards = 'with-posting') {
    const found = await setUpJudgedClass(service, { judges: 3, publishCards });
    await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await found.sign(1, goesOf(['1', '0', '0'], ['0.5', '0', '0'], ['0', '0', '0']));
    await found.sign(2, goesOf(['1', '0', '0'], ['0', '1', '0'], ['2', '0', '0']));
    await found.publish('provisional');
    return found;
  }

  test('cards are published never, with the posting, or once it is official', async () => {
    const never = await posted('never');
    expect((await never.get('/result')).body.cards).toEqual([]);
    const later = await posted('when-official');
    expect((await later.get('/result')).body.cards).toEqual([]);
    await later.publish('official');
    expect((await later.get('/result')).body.cards).toHaveLength(3);
  });

  test('a reader who has the result gets 304; a change of a name rule shows at once', async () => {
    const found = await posted();
    const { headers } = await found.get('/result').expect(200);
    await found.get('/result').set('if-none-match', String(headers.etag)).expect(304);
    const { exhibitor } = await service.parts.db.prisma.entry.findFirstOrThrow({
      where: { showId: found.showId, backNumber: 101 },
      include: { exhibitor: true },
    });
    const address = `/v1/shows/${found.showId}/exhibitors/${exhibitor.id}`;
    const consent = {
      publicName: 'back-number',
      givenBy: 'exhibitor',
      givenOn: '2026-05-01',
      how: 'in-person',
    };
    await service.parts.db.prisma.exhibitor.update({
      where: { id: exhibitor.id },
      data: { bornOn: new Date('1990-01-01') },
    });
    await request(service.app.server).post(`${address}/consents`).use(found.office).send(consent).expect(201);
    const { placings } = (await found.get('/result').expect(200)).body.results[0];
    const line = placings.find(({ backNumber }: { backNumber: number }) => backNumber === 101);
    expect(line).toMatchObject({ name: 'No. 101', horse: null });
  });

  test('one entry: place, reasons and its goes on each card', async () => {
    const found = await posted();
    const { body } = await found.get('/result/entries/101').expect(200);
    expect(body.results[0]).toMatchObject({ place: 2, of: 3, total: '222' });
    expect(body.cards.map(({ goes }: { goes: unknown[] }) => goes.length)).toEqual([1, 1, 1]);
    await found.get('/result/entries/999').expect(404);
  });

  test('how close it was and how far the judges agree is for the office', async () => {
    const found = await posted();
    const { margins } = (await found.get('/margins', found.office).expect(200)).body;
    expect(margins[0]).toMatchObject({ ahead: 103, behind: 101, change: { by: 'points', size: '1.5' } });
    expect(margins[0].sentence).toMatch(/would have put 101 ahead of 103\.$/);
    const { agreement, sentences, judges } = (await found.get('/agreement', found.office).expect(200)).body;
    expect(agreement.together).toMatchObject({ judges: 3 });
    expect(sentences[0]).toContain('judges agreed');
    expect(judges.map(({ seatOrder }: { seatOrder: number }) => seatOrder)).toEqual([1, 2, 3]);
    const [first] = judges;
    expect(first.goes.map(({ backNumber }: { backNumber: number }) => backNumber)).toEqual([101, 102, 103]);
    const scores = first.goes.map(({ score }: { score: string }) => Number(score));
    for (const { place, score } of first.goes) {
      expect(Number(place)).toBe(1 + scores.filter((other: number) => other > Number(score)).length);
    }
  });

  test('the preview, rulings, margins and posting are the office of this show alone', async () => {
    const found = await posted();
    const other = await (await setUpJudgedClass(service)).pass('office');
    const asked = ['/tabulation', '/rulings', '/margins', '/agreement'];
    for (const path of asked) {
      expect((await found.get(path)).status).toBe(401);
      expect((await found.get(path, await found.judge(0))).status).toBe(403);
      expect((await found.get(path, await found.pass('gate'))).status).toBe(403);
      expect((await found.get(path, other)).status).toBe(404);
    }
    const headers = { 'if-match': '"x"' };
    const foreign = await found.post('/postings', { state: 'official' }, { pass: other, headers });
    expect(foreign.status).toBe(404);
  });

  test('the board shows each class of the show and its state', async () => {
    const found = await posted();
    const { body } = await request(service.app.server).get(`/v1/shows/${found.showId}/board`).expect(200);
    expect(body.classes).toMatchObject([
      { number: 1, state: 'provisional', cardsIn: 3, cardsExpected: 3, postingVersion: 1 },
    ]);
  });

  test('posted classes are combined with weights; the last one breaks the tie', async () => {
    const found = await posted();
    const { prisma } = service.parts.db;
    const first = await prisma.showClass.findUniqueOrThrow({ where: { id: found.classId } });
    const second = service.parts.ids.next();
    await prisma.showClass.create({
      data: { ...first, id: second, number: 2, placingRule: first.placingRule as object },
    });
    const address = `/v1/shows/${found.showId}/combined-placing`;
    const ask = (query: string) => request(service.app.server).get(`${address}?${query}`);
    const unposted = await ask(`phase=${found.classId}:0.5&phase=${second}:1`);
    expect([unposted.status, unposted.body.code]).toEqual([409, 'class_not_posted']);
    const { rows } = await service.parts.db.pool.query('SELECT * FROM posting WHERE class_id = $1', [
      found.classId,
    ]);
    const [row] = rows;
    const [best, next, last] = row.snapshot.results[0].placed;
    const turned = [
      { ...next, place: 1 },
      { ...best, place: 2 },
      { ...last, place: 3 },
    ];
    const snapshot = { ...row.snapshot, results: [{ ...row.snapshot.results[0], placed: turned }] };
    await prisma.posting.create({
      data: {
        ...{ id: service.parts.ids.next(), classId: second, version: 1, state: 'official', snapshot },
        ...{ ruleHash: row.rule_hash, bodyHash: row.body_hash, cardRevisionIds: [], postedAt: row.posted_at },
        ...{ jws: row.jws, ledgerSequence: row.ledger_sequence, ledgerHash: row.ledger_hash },
      },
    });
    const equal = (await ask(`phase=${found.classId}:1&phase=${second}:1`).expect(200)).body;
    expect(
      equal.placings.map((line: { backNumber: number; place: number }) => [line.backNumber, line.place]),
    ).toEqual([
      [101, 1],
      [103, 2],
      [102, 3],
    ]);
    expect(equal.placings[0].because.join(' ')).toContain('class 2');
    const first4 = (await ask(`phase=${found.classId}:1.5&phase=${second}:1`).expect(200)).body.placings;
    expect(first4[0]).toMatchObject({ backNumber: 103, total: '3.5' });
    for (const query of [
      `phase=${found.classId}:1`,
      `phase=${found.classId}:0&phase=${second}:1`,
      'phase=x',
    ]) {
      expect((await ask(query)).status).toBe(400);
    }
  });

  test('what is not of the form is refused with the field', async () => {
    const found = await posted();
    const answer = await found.post('/postings', { state: 'final', note: 1 });
    expect(answer.status).toBe(400);
    expect(answer.body.errors.map(({ field }: { field: string }) => field).sort()).toEqual([
      '/note',
      '/state',
    ]);
    expect((await request(service.app.server).get('/v1/classes/12/result')).status).toBe(400);
  });
});
