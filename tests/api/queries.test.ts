/** "This looks wrong": a family asks, follows by a code, and the office answers. */
import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openEventStream } from '../support/event-stream.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';

let service: TestApp;
let found: JudgedClass;

beforeAll(async () => {
  service = await buildTestApp();
});
beforeEach(async () => {
  found = await setUpJudgedClass(service);
  await found.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
  await found.publish('provisional');
});
afterAll(() => service.close());

const words = 'We counted +1 on the second maneuver, and it says 0.';
const http = () => request(service.app.server);
const ask = (more: object = {}, key?: string) => {
  const sent = http().post(`/v1/classes/${found.classId}/queries`);
  if (key !== undefined) sent.set('idempotency-key', key);
  return sent.send({ about: 'marks', words, backNumber: 101, ...more });
};
const follow = (code: string) => http().get('/v1/queries/followed').set('query-follow-code', code);
const listed = async (pass = found.office) =>
  (await http().get(`/v1/shows/${found.showId}/queries`).use(pass).expect(200)).body.items;
const answer = (
  id: string,
  body: object = { words: 'The card says 0; the judge stands by it.', outcome: 'stands' },
) => http().post(`/v1/queries/${id}/answers`).use(found.office).send(body);
const stored = (id: string) => service.parts.db.prisma.classQuery.findUniqueOrThrow({ where: { id } });

/** Everything that is kept about queries, and everything that is kept for a request sent twice. */
async function wholeText(): Promise<string> {
  const tables = ['query', 'query_answer', 'idempotency_key', 'ledger_line'];
  const rows = await Promise.all(
    tables.map(
      async (name) => (await service.parts.db.pool.query(`SELECT kept::text AS row FROM ${name} kept`)).rows,
    ),
  );
  return JSON.stringify(rows);
}

describe('a family asks about a class', () => {
  test('without an account; the office reads it with the class, the number and the posting it is about', async () => {
    const asked = await ask({ reachedBy: 'stall 14' }).expect(201);
    expect(asked.headers['cache-control']).toBe('no-store');
    expect(asked.body.followCode).toMatch(/^[A-Za-z0-9_-]{27}$/);
    expect(await listed()).toMatchObject([
      {
        ...{ id: asked.body.id, backNumber: 101, postingVersion: 1, lastPostingVersion: 1, about: 'marks' },
        ...{ words, reachedBy: 'stall 14', state: 'open', answers: [] },
        class: { id: found.classId, number: 1, name: 'Class 1' },
      },
    ]);
  });

  test('sent twice on a bad connection it is one query with one code, and the code is kept nowhere', async () => {
    const first = await ask({}, 'one-query').expect(201);
    const again = await ask({}, 'one-query').expect(201);
    expect(again.body).toEqual(first.body);
    expect(again.headers['idempotency-replayed']).toBe('true');
    expect(await listed()).toHaveLength(1);
    expect((await wholeText()).includes(first.body.followCode)).toBe(false);
    expect((await ask({ words: 'Something else.' }, 'one-query')).body.code).toBe('idempotency_key_reused');
  });

  test('a number that is not in the class, and a posting that is not there, are refused in words', async () => {
    const strange = await ask({ backNumber: 999 });
    expect([strange.status, strange.body.code]).toEqual([422, 'back_number_not_in_class']);
    expect(strange.body.errors).toEqual([
      { field: '/backNumber', message: 'nobody in this class wears 999' },
    ]);
    expect((await ask({ postingVersion: 2 })).body.code).toBe('unknown_reference');
    expect((await ask({ words: 'a'.repeat(1001) })).body.code).toBe('invalid_request');
    expect((await ask({ words: '   ' })).body.code).toBe('invalid_request');
    const nowhere = http().post(`/v1/classes/${service.parts.ids.next()}/queries`);
    expect((await nowhere.send({ about: 'place', words })).status).toBe(404);
    expect(await listed()).toEqual([]);
  });

  test('about the class as a whole, and before anything is posted', async () => {
    found = await setUpJudgedClass(service);
    const { body } = await ask({ backNumber: null, about: 'who-rode' }).expect(201);
    expect((await listed())[0]).toMatchObject({ id: body.id, backNumber: null, postingVersion: null });
  });

  test('one number can make only so many wait, also by taking them back; the others still get through', async () => {
    const codes = [];
    for (let at = 0; at < 5; at += 1) codes.push((await ask().expect(201)).body.followCode);
    expect((await ask()).body.code).toBe('queries_waiting');
    for (const code of codes) {
      await http().post('/v1/queries/followed/withdrawals').set('query-follow-code', code).expect(200);
    }
    expect((await ask()).body.code).toBe('queries_waiting');
    await ask({ backNumber: 102 }).expect(201);
  });

  test('sent all at once, no more of them wait than one after the other', async () => {
    const answers = await Promise.all(Array.from({ length: 12 }, () => ask()));
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(5);
    expect(await listed()).toHaveLength(5);
  });
});

describe('whoever has the code follows the query', () => {
  test('its state and its answers, without who of the office it was and without how she is reached', async () => {
    const { id, followCode } = (await ask({ reachedBy: 'ada@example.org' })).body;
    await answer(id).expect(201);
    const read = await follow(followCode).expect(200);
    expect(read.body).toMatchObject({
      ...{ id, words, state: 'answered', backNumber: 101, postingVersion: 1 },
      show: { id: found.showId, timeZone: 'America/Chicago', practice: false },
      answers: [{ words: 'The card says 0; the judge stands by it.', outcome: 'stands' }],
    });
    expect(read.text).not.toContain('ada@example.org');
    expect(read.text).not.toContain(found.office.accountId);
    expect(read.headers['cache-control']).toBe('no-store');
  });

  test('another code, or none, reads nothing', async () => {
    await ask();
    expect((await follow('A'.repeat(27))).body.code).toBe('follow_code_unknown');
    expect((await follow('short')).body.code).toBe('invalid_request');
    expect((await http().get('/v1/queries/followed')).body.code).toBe('invalid_request');
    const inAddress = await http().get(`/v1/queries/followed?query-follow-code=${'A'.repeat(27)}`);
    expect(inAddress.status).toBe(400);
  });

  test('taken back while it is open, its words are gone at once; answered, it stays', async () => {
    const withdraw = (code: string) =>
      http().post('/v1/queries/followed/withdrawals').set('query-follow-code', code);
    const open = (await ask({ reachedBy: 'stall 77' }, 'to-be-taken-back')).body;
    const taken = await withdraw(open.followCode).expect(200);
    expect(taken.body).toMatchObject({ state: 'withdrawn', words: null, answers: [] });
    expect((await withdraw(open.followCode).expect(200)).body.withdrawnAt).toBe(taken.body.withdrawnAt);
    expect(await stored(open.id)).toMatchObject({ words: null, reachedBy: null });
    expect((await wholeText()).includes('stall 77')).toBe(false);
    expect((await answer(open.id)).body.code).toBe('query_closed');
    // The request that asked it is not answered again: it would hold the fingerprint of the words.
    expect((await ask({ reachedBy: 'stall 77' }, 'to-be-taken-back')).body.code).toBe('answer_erased');

    const answered = (await ask()).body;
    await answer(answered.id).expect(201);
    expect((await withdraw(answered.followCode)).body.code).toBe('query_closed');
  });
});

describe('the office', () => {
  test('sees what is open first, then by class, and who answered', async () => {
    const [first, second] = [(await ask()).body, (await ask({ backNumber: 102 })).body];
    await answer(first.id, { words: 'Corrected: it was +1.', outcome: 'corrected' }).expect(201);
    await answer(first.id, { words: 'And the sheet at the gate too.', outcome: 'explained' }).expect(201);
    const items = await listed();
    expect(items.map(({ id, state }: { id: string; state: string }) => [id, state])).toEqual([
      [second.id, 'open'],
      [first.id, 'answered'],
    ]);
    expect(items[1].answers).toMatchObject([
      { outcome: 'corrected', answeredBy: { accountId: found.office.accountId } },
      { outcome: 'explained' },
    ]);
    expect(items[1].answers[0].answeredBy.name).toMatch(/^Office /);
  });

  test('of another show sees and answers nothing here', async () => {
    const { id } = (await ask()).body;
    const other = await setUpJudgedClass(service);
    const stranger = other.office;
    expect((await http().get(`/v1/shows/${found.showId}/queries`).use(stranger)).status).toBe(403);
    const there = await http()
      .post(`/v1/queries/${id}/answers`)
      .use(stranger)
      .send({ words, outcome: 'stands' });
    expect([there.status, there.body.code]).toEqual([404, 'not_found']);
    expect((await http().post(`/v1/queries/${id}/erasures`).use(stranger)).status).toBe(404);
    expect((await listed())[0]).toMatchObject({ id, state: 'open', answers: [] });
  });

  test('takes words out for good: of the query, of its answers, and where they are kept for a request sent twice', async () => {
    const { id, followCode } = (await ask({ words: 'It is about Adamaris.', reachedBy: 'Adamaris' }, 'k1'))
      .body;
    await http()
      .post(`/v1/queries/${id}/answers`)
      .use(found.office)
      .set('idempotency-key', 'k2')
      .send({ words: 'Adamaris was third.', outcome: 'explained' })
      .expect(201);
    expect((await wholeText()).includes('Adamaris')).toBe(true);
    const erased = await http().post(`/v1/queries/${id}/erasures`).use(found.office).expect(200);
    expect((await wholeText()).includes('Adamaris')).toBe(false);
    expect((await follow(followCode)).body).toMatchObject({
      ...{ state: 'answered', words: null, erasedAt: erased.body.erasedAt },
      answers: [{ words: null, outcome: 'explained' }],
    });
    const again = await http().post(`/v1/queries/${id}/erasures`).use(found.office).expect(200);
    expect(again.body).toEqual(erased.body);
    expect((await answer(id)).body.code).toBe('query_closed');
  });

  test('erasing an exhibitor erases the queries under her back number, and names those of others that hold her name', async () => {
    const { prisma } = service.parts.db;
    const entry = await prisma.entry.findFirstOrThrow({ where: { showId: found.showId, backNumber: 101 } });
    await prisma.exhibitor.update({ where: { id: entry.exhibitorId }, data: { name: 'Adamaris Kesslerby' } });
    const own = (await ask({ words: 'Adamaris kept the pattern.' })).body;
    const other = (await ask({ words: 'Was Kesslerby not behind us?', backNumber: 102 })).body;
    const manager = await passFor(service, { role: 'manager', showId: found.showId });
    const erased = await http()
      .post(`/v1/shows/${found.showId}/exhibitors/${entry.exhibitorId}/erasures`)
      .use(manager)
      .send({ reason: 'asked-by-family', backNumber: 101 })
      .expect(201);
    expect(erased.body).toMatchObject({
      queriesErased: 1,
      stillWritten: [{ record: 'query', id: other.id }],
    });
    expect(await stored(own.id)).toMatchObject({ words: null, state: 'withdrawn' });
    expect(await stored(other.id)).toMatchObject({ state: 'open' });
  });
});

describe('what is told of queries', () => {
  test('no reader from outside learns that a class has one', async () => {
    const { showId, classId } = found;
    const read = async () => {
      const texts = [];
      for (const address of [
        `shows/${showId}/board`,
        `classes/${classId}/result`,
        `shows/${showId}/numbers/101`,
      ]) {
        texts.push((await http().get(`/v1/${address}`).expect(200)).text);
      }
      return texts;
    };
    const before = await read();
    await ask();
    expect(await read()).toEqual(before);
  });

  test('the office hears that one was asked; everyone hears only that some query was answered', async () => {
    const address = await service.app.listeningOrigin;
    const path = `${address}/v1/shows/${found.showId}/events`;
    const [outside, inside] = [
      await openEventStream(path),
      await openEventStream(path, found.office.headers('GET', path)),
    ];
    const { id } = (await ask()).body;
    const given = (await answer(id).expect(201)).body;
    const heard = [await inside.next(), await inside.next()];
    expect(heard.map(({ event, data }) => [event, JSON.parse(data).body])).toEqual([
      ['query.asked', { queryId: id, classId: found.classId }],
      ['query.answered', { queryId: id, answerId: given.id }],
    ]);
    const told = await outside.next();
    expect([told.event, JSON.parse(told.data).body]).toEqual([
      'query.answered',
      { queryId: id, answerId: given.id },
    ]);
    outside.close();
    inside.close();
  });

  test('a practice show has queries like any other, and says in each that it is one', async () => {
    await service.parts.db.pool.query(
      `INSERT INTO show (id, name, place, time_zone, first_day, last_day, kind, created_at)
       SELECT $2, name, place, time_zone, first_day, last_day, 'practice', created_at FROM show WHERE id = $1`,
      [found.showId, service.parts.ids.next()],
    );
    const practice = await service.parts.db.prisma.show.findFirstOrThrow({ where: { kind: 'practice' } });
    const classId = service.parts.ids.next();
    const {
      id: _,
      showId: __,
      patternId: ___,
      placingRule,
      ...same
    } = await service.parts.db.prisma.showClass.findUniqueOrThrow({ where: { id: found.classId } });
    await service.parts.db.prisma.showClass.create({
      data: { ...same, id: classId, showId: practice.id, placingRule: placingRule as object },
    });
    const asked = await http()
      .post(`/v1/classes/${classId}/queries`)
      .send({ about: 'place', words })
      .expect(201);
    const read = (await follow(asked.body.followCode).expect(200)).body;
    expect([read.show.practice, /practice/i.test(read.show.name)]).toEqual([true, true]);
  });

  test('the archive of the show has none of their words', async () => {
    const { id } = (await ask({ words: 'It is about Adamaris.' })).body;
    await answer(id, { words: 'Adamaris was third.', outcome: 'explained' });
    const archive = await http().get(`/v1/shows/${found.showId}/archive?names=full`).use(found.office);
    expect(archive.status).toBe(200);
    expect(archive.text).not.toContain('Adamaris');
    expect(archive.text).toContain(id);
  });
});

describe('the door', () => {
  test('takes only so many queries a minute from one address', async () => {
    const narrow = await buildTestApp({ beside: service, environment: { SIGN_INS_PER_MINUTE: '3' } });
    const send = () =>
      request(narrow.app.server).post(`/v1/classes/${found.classId}/queries`).send({ about: 'place', words });
    const statuses = [];
    for (let at = 0; at < 5; at += 1) statuses.push((await send()).status);
    await narrow.close();
    expect(statuses).toEqual([201, 201, 201, 429, 429]);
  });
});
