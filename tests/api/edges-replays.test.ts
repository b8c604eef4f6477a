import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';
import { signedBody, statementOf } from '../support/test-phone.ts';
import { type done, headersOf, type PreparedShow, prepareShow } from './matrix/prepared-show.ts';

let service: TestApp;
let here: PreparedShow;
beforeAll(async () => {
  service = await buildTestApp();
  here = await prepareShow(service);
});
afterAll(() => service.close());

type Sending = Parameters<typeof done>[1];

async function send({ pass, method, address, body, headers = {} }: Sending) {
  const answer = await service.app.inject({
    method,
    url: address,
    headers: { ...headers, ...headersOf(pass, method, address) },
    ...(body === undefined ? {} : { payload: body }),
  });
  return { status: answer.statusCode, headers: answer.headers, body: JSON.parse(answer.payload || '{}') };
}

describe('a request that comes a second time, late, or in another order', () => {
  const showId = () => here.ids.unsigned.showId ?? '';
  const { manager, judge } = { manager: () => here.passes.manager, judge: () => here.passes.judge };

  test('with its key is done once, though it comes ten times at the same moment', async () => {
    const ring = (name: string) => ({
      ...{ pass: manager(), method: 'POST' as const, address: `/v1/shows/${showId()}/rings` },
      ...{ body: { name }, headers: { 'idempotency-key': 'ring-once' } },
    });
    const answers = await Promise.all(Array.from({ length: 10 }, () => send(ring('Ring 9'))));
    expect(new Set(answers.map(({ status, body }) => `${status} ${body.id}`)).size).toBe(1);
    expect(await service.parts.db.prisma.ring.count({ where: { showId: showId(), name: 'Ring 9' } })).toBe(1);
    const other = await send(ring('Ring 10'));
    expect(other).toMatchObject({ status: 409, body: { code: 'idempotency_key_reused' } });
  });

  test("somebody else's key is nobody's: the kept answer is told to its sender alone", async () => {
    const address = `/v1/shows/${showId()}/rings`;
    const headers = { 'idempotency-key': 'ring-of-one' };
    const first = await send({
      pass: manager(),
      method: 'POST',
      address,
      headers,
      body: { name: 'Ring 11' },
    });
    expect(first.status).toBe(201);
    const gate = await send({
      pass: here.passes.gate,
      method: 'POST',
      address,
      headers,
      body: { name: 'Ring 11' },
    });
    expect(gate.status).toBe(403);
    const there = await prepareShow(service);
    const elsewhere = `/v1/shows/${there.ids.posted.showId}/rings`;
    const sent = { pass: there.passes.manager, method: 'POST' as const, headers, body: { name: 'Ring 11' } };
    const other = await send({ ...sent, address: elsewhere });
    expect(other.status).toBe(201);
    expect(other.body.id).not.toBe(first.body.id);
  });

  // RFC 9110, 13.1.1: If-Match is for lost updates.
  test('of two changes of one version the later one is refused, and so is the earlier sent again', async () => {
    const address = `/v1/shows/${showId()}`;
    const change = (name: string) =>
      send({ pass: manager(), method: 'PATCH', address, body: { name }, headers: { 'if-match': '"1"' } });
    const both = await Promise.all([change('Larch Valley One'), change('Larch Valley Two')]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 412]);
    expect((await change('Larch Valley One')).status).toBe(412);
  });

  test('a go that was saved before and comes late does not undo the newer one', async () => {
    const { cardId, classEntryId } = here.ids.unsigned;
    const address = `/v1/cards/${cardId}/goes/${classEntryId}`;
    const read = await send({ pass: judge(), method: 'GET', address: `/v1/cards/${cardId}` });
    const version = read.body.goes[0].version;
    const save = (measure: string) =>
      send({
        pass: judge(),
        method: 'PUT',
        address,
        body: { measure },
        headers: { 'if-match': `"${version}"` },
      });
    expect((await save('20.001')).status).toBe(200);
    const late = await save('19.999');
    expect(late).toMatchObject({ status: 412, body: { code: 'draft_changed_meanwhile' } });
  });

  test('a signature sent again is the same one; after an amendment it is not taken back', async () => {
    const { cardId = '', classEntryId = '' } = here.ids.signed;
    const card = await send({ pass: judge(), method: 'GET', address: `/v1/cards/${cardId}` });
    const content = { goes: { [classEntryId]: card.body.goes[0].content } };
    const first = { ...statementOf(card.body, content), signedAt: card.body.revisions[0].signedAt };
    const amended = {
      ...first,
      ...{ revision: 2, reason: 'the watch was misread', previousHash: card.body.revisions[0].contentHash },
      content: { goes: { [classEntryId]: { measure: '33.333' } } },
    };
    const amend = (statement: object) =>
      send({
        ...{ pass: judge(), method: 'POST', address: `/v1/cards/${cardId}/amendments` },
        body: signedBody(judge().phone, statement),
      });
    expect((await amend(amended)).status).toBe(201);
    const again = await amend({ ...amended, content: { goes: { [classEntryId]: { measure: '34.444' } } } });
    expect(again.status).toBe(409);
    const old = await send({
      ...{ pass: judge(), method: 'POST', address: `/v1/cards/${cardId}/signatures` },
      body: signedBody(judge().phone, {
        ...first,
        signedAt: '2026-05-02T16:00:00.000Z',
        content: amended.content,
      }),
    });
    expect(old.status).toBeGreaterThanOrEqual(400);
    const revisions = await service.parts.db.prisma.cardRevision.count({ where: { cardId } });
    expect(revisions).toBe(2);
  });
});

describe('a pass of one kind', () => {
  const address = () => `/v1/shows/${here.ids.posted.showId}/rings`;
  const ask = (authorization: string, more: Record<string, string> = {}) =>
    service.app.inject({ url: address(), headers: { authorization, ...more } });

  // RFC 8725, 3.11 and 3.12: a token of one kind must not pass for one of another.
  test('is none of another: no token, card, seal or posting opens what it was not made for', async () => {
    const { prisma } = service.parts.db;
    const office = await passFor(service, { role: 'manager' });
    const phone = here.passes.judge.headers('GET', `http://localhost:80${address()}`);
    const phoneToken = phone.authorization?.slice('DPoP '.length) ?? '';
    const { jws } = await prisma.cardRevision.findFirstOrThrow({ where: { jws: { not: null } } });
    const { seal } = await prisma.ledgerLine.findFirstOrThrow();
    const posting = await prisma.posting.findFirstOrThrow();
    const wrong = [
      `Bearer ${phoneToken}`,
      `DPoP ${office.token}`,
      ...[jws, seal, posting.jws].flatMap((text) => [`Bearer ${text}`, `DPoP ${text}`]),
      `Bearer ${office.sessionId}`,
      `Bearer ${office.accountId}`,
      `Bearer ${office.token}x`,
      `Bearer ${office.token.slice(0, -1)}`,
      `Bearer ${office.token.toUpperCase()}`,
      `Bearer ${office.token} ${office.token}`,
      `Basic ${Buffer.from(`manager:${office.token}`).toString('base64')}`,
      `Token ${office.token}`,
      'Bearer ',
      'Bearer null',
    ];
    for (const authorization of wrong) {
      const answer = await ask(authorization, phone.dpop === undefined ? {} : { dpop: phone.dpop });
      expect(answer.statusCode, authorization.slice(0, 40)).toBe(401);
    }
    expect((await ask(`Bearer ${office.token}`)).statusCode).toBe(200);
  });

  test('is not kept as it is: whoever reads the database can send none of them', async () => {
    const office = await passFor(service, { role: 'manager' });
    const { rows } = await service.parts.db.pool.query<{ name: string }>(
      "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'",
    );
    for (const { name } of rows) {
      const text = `SELECT count(*)::int AS found FROM "${name}" t WHERE t::text LIKE '%' || $1 || '%'`;
      const answer = await service.parts.db.pool.query(text, [office.token]).catch(() => undefined);
      expect(answer?.rows[0]?.found ?? 0, name).toBe(0);
    }
  });
});

describe('a posted result as CSV', () => {
  const csv = (classId = here.ids.posted.classId) =>
    service.app.inject({ url: `/v1/classes/${classId}/result.csv` });

  test('is for everyone once it is posted, and nothing before', async () => {
    const answer = await csv();
    expect(answer.statusCode).toBe(200);
    expect(answer.headers).toMatchObject({
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': 'attachment; filename="class-3-result-1.csv"',
      'cache-control': 'no-cache',
    });
    const again = await service.app.inject({
      url: `/v1/classes/${here.ids.posted.classId}/result.csv`,
      headers: { 'if-none-match': String(answer.headers.etag) },
    });
    expect(again.statusCode).toBe(304);
    expect((await csv(here.ids.signed.classId)).statusCode).toBe(409);
  });

  test('shows names as the family allows, and a horse called like a formula as text', async () => {
    const { prisma } = service.parts.db;
    const { horseId = '', exhibitorId = '' } = here.ids.posted;
    await prisma.horse.update({
      where: { id: horseId },
      data: { name: '=HYPERLINK("https://x.example","Copper")' },
    });
    const adult = new Date('1980-03-04');
    await prisma.exhibitor.update({ where: { id: exhibitorId }, data: { bornOn: adult } });
    const rows = parse<Record<string, string>>((await csv()).payload, { bom: true, columns: true });
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      ...{ class: '3', state: 'provisional', place: '1', 'back number': '101', exhibitor: 'Ada Kessler' },
      horse: `'=HYPERLINK("https://x.example","Copper")`,
    });
    await prisma.exhibitor.update({ where: { id: exhibitorId }, data: { bornOn: new Date('2015-03-04') } });
    const [careful] = parse<Record<string, string>>((await csv()).payload, { bom: true, columns: true });
    expect(careful).toMatchObject({ exhibitor: 'No. 101', horse: '' });
  });
});
