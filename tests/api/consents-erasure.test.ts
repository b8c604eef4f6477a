import { importJWK } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { verifyArchive } from '../../src/archive/offline.ts';
import { evidenceTypes, kidOf, readJws } from '../../src/evidence/index.ts';
import { firstBreak, readSealedLines } from '../../src/ledger/index.ts';
import { fingerprint } from '../../src/platform/canonical-json.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';
import { allReadings, child, givesAway, type PostedChild, postedChild } from './consents-readers.ts';
import { bundle } from './office-client.ts';
import { rehearsedShow } from './practice-show.ts';

let service: TestApp;
let posted: PostedChild;

beforeAll(async () => {
  service = await buildTestApp();
});
beforeEach(async () => {
  posted = await postedChild(service);
});
afterAll(() => service.close());

const wanted = { reason: 'asked-by-family', backNumber: 101 };
const at = () => `/v1/shows/${posted.showId}/exhibitors/${posted.exhibitorId}`;
const manager = (method: 'get' | 'post' | 'patch', address: string) =>
  request(service.app.server)[method](address).use(posted.manager);
const erase = (body: object = wanted) => manager('post', `${at()}/erasures`).send(body);
const stored = () =>
  service.parts.db.prisma.exhibitor.findUniqueOrThrow({ where: { id: posted.exhibitorId } });

/** Every row of every table as text: what somebody with the whole database would find. */
async function wholeDatabase(): Promise<string> {
  const { pool } = service.parts.db;
  const tables = await pool.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class WHERE relnamespace = 'public'::regnamespace AND relkind = 'r'
       AND relname <> '_prisma_migrations'`,
  );
  const texts = [];
  for (const { name } of tables.rows) {
    const { rows } = await pool.query(`SELECT kept::text AS row FROM "${name}" AS kept`);
    texts.push(...rows.map(({ row }: { row: string }) => `${name} ${row}`));
  }
  expect(tables.rows.length).toBeGreaterThan(25);
  return texts.join('\n');
}

async function keys() {
  const { publicKeys } = service.parts.keys;
  return new Map(
    await Promise.all(publicKeys.map(async ({ kid, jwk }) => [kid, await publicKey(jwk)] as const)),
  );
}

async function publicKey(jwk: object) {
  const key = await importJWK(jwk, 'ES256');
  if (key instanceof Uint8Array) throw new Error('a public key is no secret');
  return key;
}

/** The chain with its seals, and each posting with its signature and fingerprint. */
async function evidence() {
  const { db } = service.parts;
  const lines = await readSealedLines(db.sql, { showId: posted.showId, after: 0, limit: 10_000 });
  const known = await keys();
  expect(await firstBreak(lines, known)).toBeUndefined();
  const postings = await db.prisma.posting.findMany({ where: { classId: posted.classId } });
  for (const { jws, snapshot, bodyHash } of postings) {
    const kid = kidOf(jws) ?? '';
    const key = known.get(kid);
    if (key === undefined) throw new Error('signed by nobody');
    expect((await readJws(jws, { key, kid, typ: evidenceTypes.posting })).ok).toBe(true);
    expect(fingerprint(snapshot)).toBe(bodyHash);
  }
  return { lines, postings };
}

describe('an erasure', () => {
  test('takes name, birthday and consents out of the whole database, kept answers too', async () => {
    await posted.consent('full');
    const path = `/v1/shows/${posted.showId}/exhibitors`;
    await manager('patch', at())
      .set({ 'if-match': '"3"', 'idempotency-key': 'a' })
      .send({ name: child.name });
    await manager('post', `${at()}/consents`)
      .set('idempotency-key', 'b')
      .send({ publicName: 'full', givenBy: 'parent', givenOn: '2026-09-01', how: 'e-mail' });
    await manager('post', path).set('idempotency-key', 'c').send({ name: 'Somebody Else' }).expect(201);
    const entry = `/v1/shows/${posted.showId}/entries/${posted.ids.entryId}`;
    const entered = await manager('patch', entry)
      .set({ 'if-match': '"1"', 'idempotency-key': 'd' })
      .send({ ownerId: null })
      .expect(200);
    expect(entered.text).toMatch(/Adamaris/);
    const status = `/v1/shows/${posted.showId}/classes/${posted.classId}/entries/${posted.entryIds[0]}/status`;
    const set = await request(service.app.server)
      .put(status)
      .use(posted.manager)
      .set('idempotency-key', 'e')
      .send({ status: 'checked-in' })
      .expect(200);
    expect(set.text).toMatch(/Adamaris/);
    expect(await wholeDatabase()).toMatch(/Adamaris/);

    const answer = await erase().expect(201);
    expect(answer.body).toMatchObject({
      exhibitorId: posted.exhibitorId,
      ...{ consentsRemoved: 2, ownersErased: 0, answersForgotten: 4, stillWritten: [] },
    });
    expect(await wholeDatabase()).not.toMatch(/Adamaris|Kesslerby|2013-05-02/);
    expect(await stored()).toMatchObject({ name: 'Name erased', bornOn: null, publicName: 'back-number' });
  });

  test('leaves the chain of the ledger and every posting as they were: they verify before and after', async () => {
    await posted.consent('full');
    const before = await evidence();
    await erase().expect(201);
    const after = await evidence();
    expect(after.postings).toEqual(before.postings);
    expect(after.lines.slice(0, before.lines.length)).toEqual(before.lines);
    expect(after.lines.slice(before.lines.length)).toMatchObject([
      { type: 'names.changed', body: {} },
      {
        type: 'exhibitor.erased',
        body: { exhibitorId: posted.exhibitorId, reason: 'asked-by-family', ownerIds: [] },
      },
    ]);
  });

  test('leaves a show whose archive verifies, with every posting placed again from its cards, and no name', async () => {
    await bundle(service, 'horsemanship');
    const { office, ids, manager: pass } = await rehearsedShow(service);
    const path = `/exhibitors/${ids.exhibitorId}`;
    const given = { publicName: 'full', givenBy: 'parent', givenOn: '2026-09-01', how: 'signed-form' };
    await office.done('post', `${path}/consents`, given);
    const archived = async () => (await office.call('get', '/archive')).body;
    const before = await archived();
    expect((await verifyArchive(before)).faults).toEqual([]);
    expect(JSON.stringify(before)).toMatch(/Ottilie/);
    const body = { reason: 'asked-by-family', backNumber: 214, ownerIds: [ids.ownerId] };
    expect((await office.call('post', `${path}/erasures`, { pass, body })).status).toBe(201);
    const after = await archived();
    expect((await verifyArchive(after)).faults).toEqual([]);
    expect(after.postings).toEqual(before.postings);
    expect(JSON.stringify(after)).not.toMatch(/Ottilie|Brambleford|2012-04-03|Marchbank Stables/);
    // Whoever has the older archive cannot bring the name back with it.
    const brought = await request(service.app.server).post('/v1/archives').use(pass).send(before);
    expect([brought.status, brought.body.showId]).toEqual([200, office.showId]);
    expect(JSON.stringify(await archived())).not.toMatch(/Ottilie|Brambleford/);
  });

  test('shows at once: the result goes by back number, places and reasons stand', async () => {
    await posted.consent('full');
    const read = () => request(service.app.server).get(`/v1/classes/${posted.classId}/result`).expect(200);
    const places = ({ body }: request.Response) =>
      body.results[0].placings.map(({ backNumber, place, because }: Record<string, unknown>) => ({
        ...{ backNumber, place, because },
      }));
    const before = await read();
    await erase().expect(201);
    const after = await read();
    expect(places(after)).toEqual(places(before));
    const readings = await allReadings(service, posted);
    expect(readings.filter(({ text }) => givesAway.test(text)).map(({ address }) => address)).toEqual([]);
  });

  test('is for good: no name, no consent, no second erasure, and the database refuses a name too', async () => {
    await erase().expect(201);
    const refused = async (answer: request.Test) => {
      const { status, body } = await answer;
      return [status, body.code];
    };
    const gone = [409, 'exhibitor_erased'];
    const headers = { 'if-match': '"3"' };
    expect(await refused(manager('patch', at()).set(headers).send({ name: 'Ada' }))).toEqual(gone);
    const consent = { publicName: 'full', givenBy: 'parent', givenOn: '2026-09-01', how: 'e-mail' };
    expect(await refused(manager('post', `${at()}/consents`).send(consent))).toEqual(gone);
    expect(await refused(erase())).toEqual(gone);
    const back = (set: string) =>
      service.parts.db.pool.query(`UPDATE exhibitor SET ${set} WHERE id = $1`, [posted.exhibitorId]);
    await expect(back("name = 'Ada'")).rejects.toThrow(/an erased name stays erased/);
    await expect(back('erased_at = NULL')).rejects.toThrow(/an erased name stays erased/);
    await expect(back("public_name = 'full'")).rejects.toThrow(/exhibitor_erased_is_nameless/);
    expect((await manager('get', at()).expect(200)).body).toMatchObject({
      ...{ name: 'Name erased', bornOn: null, publicName: 'back-number' },
      erasedAt: expect.any(String),
    });
  });

  test('sent again under its key, a request that the name was in is neither answered nor done again', async () => {
    const path = `/v1/shows/${posted.showId}/exhibitors`;
    const add = () =>
      manager('post', path).set('idempotency-key', 'once').send({ name: child.name, bornOn: child.bornOn });
    const { body } = await add().expect(201);
    await manager('post', `${path}/${body.id}/erasures`)
      .send({ reason: 'entered-in-error', exhibitorId: body.id })
      .expect(201);
    const again = await add();
    expect([again.status, again.body.code]).toEqual([410, 'answer_erased']);
    expect(again.text).not.toMatch(givesAway);
    const where = { showId: posted.showId, name: child.name };
    expect(await service.parts.db.prisma.exhibitor.count({ where })).toBe(1);
  });

  test('waits for an answer with the name in it that is being written', async () => {
    const status = `/v1/shows/${posted.showId}/classes/${posted.classId}/entries/${posted.entryIds[0]}/status`;
    const set = request(service.app.server)
      .put(status)
      .use(posted.manager)
      .set('idempotency-key', 'just-now')
      .send({ status: 'checked-in' });
    let erased: Promise<request.Response> | undefined;
    let written: Promise<request.Response> | undefined;
    await inSqlTransaction(service.parts.db, async (tx) => {
      const lock = 'SELECT id FROM show_class WHERE id = $1 FOR NO KEY UPDATE';
      await tx.sql.row({ name: 'test.hold-class', text: lock }, [posted.classId]);
      written = set.then((answer) => answer);
      await new Promise((done) => setTimeout(done, 500));
      erased = erase().then((answer) => answer);
      await new Promise((done) => setTimeout(done, 500));
    });
    expect([(await written)?.status, (await erased)?.status]).toEqual([200, 201]);
    expect((await written)?.text).toMatch(/Adamaris/);
    expect((await erased)?.body.answersForgotten).toBe(1);
    const kept = await service.parts.db.prisma.idempotencyKey.findFirstOrThrow({
      where: { key: 'just-now' },
    });
    expect(kept).toMatchObject({ status: 200, response: null, requestHash: '0'.repeat(64) });
  });

  test('asks for a back number or the id of just this exhibitor, and for a manager', async () => {
    const code = async (body: object) => (await erase(body)).body.code;
    const reason = 'asked-by-family';
    expect(await code({ reason })).toBe('invalid_request');
    expect(await code({ reason, backNumber: 102 })).toBe('erasure_not_confirmed');
    expect(await code({ reason, exhibitorId: posted.showId })).toBe('erasure_not_confirmed');
    expect(await code({ reason, backNumber: 101, exhibitorId: posted.showId })).toBe('erasure_not_confirmed');
    expect(await code({ reason: 'Adamaris asked', backNumber: 101 })).toBe('invalid_request');
    for (const role of ['secretary', 'points-secretary', 'gate'] as const) {
      const pass = await passFor(service, { role, showId: posted.showId });
      const answer = await request(service.app.server).post(`${at()}/erasures`).use(pass).send(wanted);
      expect([role, answer.status, answer.body.code]).toEqual([role, 403, 'not_allowed']);
    }
    expect((await stored()).erasedAt).toBeNull();
  });

  test('takes the owners with it that the family names, and no others', async () => {
    const { prisma } = service.parts.db;
    const { ids, clock } = service.parts;
    const { showId } = posted;
    const [own, other] = [ids.next(), ids.next()];
    await prisma.owner.createMany({
      data: [own, other].map((id) => ({ id, showId, name: 'Kesslerby Stables', createdAt: clock.now() })),
    });
    await prisma.entry.update({ where: { id: posted.ids.entryId ?? '' }, data: { ownerId: own } });
    const refused = await erase({ ...wanted, ownerIds: [own, other] });
    expect(refused.body).toMatchObject({ code: 'unknown_reference', errors: [{ field: '/ownerIds/1' }] });
    expect((await erase({ ...wanted, ownerIds: [own] }).expect(201)).body.ownersErased).toBe(1);
    const owners = await prisma.owner.findMany({ where: { showId }, orderBy: { id: 'asc' } });
    expect(owners.map(({ name }) => name)).toEqual(['Name erased', 'Kesslerby Stables']);
  });

  test('says where words of the name still stand in what people wrote', async () => {
    const { prisma } = service.parts.db;
    const id = posted.entryIds[0] ?? '';
    const why = (statusReason: string) => prisma.classEntry.update({ where: { id }, data: { statusReason } });
    await why("ADAMARIS'S horse is lame");
    expect((await erase().expect(201)).body.stillWritten).toEqual([{ record: 'class-entry', id }]);
    posted = await postedChild(service);
    await prisma.classEntry.update({
      where: { id: posted.entryIds[0] ?? '' },
      data: { statusReason: 'Adamariss was somebody else' },
    });
    expect((await erase().expect(201)).body.stillWritten).toEqual([]);
  });
});
