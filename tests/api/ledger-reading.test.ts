import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { compactVerify, createLocalJWKSet } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ofTheService } from '../../src/evidence/index.ts';
import { announceKeys } from '../../src/ledger/index.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, type OfficePass, type Pass, type PhonePass, passFor } from '../support/test-passes.ts';
import { bundle, type Made, type Office, openOffice, send } from './office-client.ts';

let service: TestApp;
let office: Office;
let classIds: readonly string[];
let judge: PhonePass;
let manager: OfficePass;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  await announceKeys(service.parts);
  office = await openOffice(service);
  manager = await passFor(service, { role: 'manager' });
  classIds = [(await office.addClass(1)).id, (await office.addClass(2)).id];
  const { id: personId } = await office.done('post', '/people', { name: 'A' });
  const panels = classIds.map((id) =>
    office.done('put', `/classes/${id}/panel`, { seats: [{ personId }] }, { 'if-match': '"1"' }),
  );
  const seatIds = (await Promise.all(panels)).map(({ seats }) => seats[0].id);
  await office.enter(classIds[0] ?? '', (await office.addEntry(214)).id);
  await office.done('post', `/classes/${classIds[0]}/order-of-go/draws`, {});
  judge = await passFor(service, { role: 'judge', showId: office.showId, seatId: seatIds[0] });
  const opened = await send(service, 'post', `/v1/classes/${classIds[0]}/cards`, {
    ...{ pass: judge, body: { seatId: seatIds[0] } },
  });
  expect(opened.status).toBe(201);
});
afterAll(() => service.close());

const ledger = (query = '', pass: Pass = office.pass) => office.call('get', `/ledger${query}`, { pass });
const lines = async (query = ''): Promise<Made[]> => {
  const answer = await ledger(query);
  expect(answer.status).toBe(200);
  return answer.body.items;
};
const sequences = (found: readonly Made[]) => found.map(({ sequence }) => sequence);
const code = (answer: { status: number; body: Made }) => [answer.status, answer.body.code];

describe('the ledger of a show', () => {
  it('is read by the office line by line, each with what it means and who did it', async () => {
    const [first, ...others] = await lines();
    expect(first).toEqual({
      ...{ sequence: 1, type: 'show.created', what: 'A show was set up.', previousHash: null },
      at: expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/),
      actor: { as: 'office', account: expect.any(String), session: expect.any(String) },
      body: { showId: office.showId, kind: 'official' },
      hash: expect.stringMatching(/^[0-9a-f]{64}$/),
      seal: expect.stringMatching(/^[\w-]+\.\.[\w-]+$/),
    });
    expect(others.length).toBeGreaterThan(10);
    const opened = others.find(({ type }) => type === 'card.opened');
    expect(opened.actor).toMatchObject({ as: 'judge', phone: judge.phoneId });
  });

  it('can be checked from what is read: each hash and seal is over the line in the form of RFC 8785', async () => {
    let previousHash: string | null = null;
    const jwks = createLocalJWKSet({ keys: service.parts.keys.publicKeys.map(({ jwk }) => jwk) });
    for (const { what: _words, hash, seal, ...line } of await lines('?limit=500')) {
      const text = canonicalize({ ledgerId: office.showId, ...line }) ?? '';
      expect(createHash('sha256').update(text).digest('hex')).toBe(hash);
      // RFC 7515, appendix F: the payload is put back before the signature is checked.
      await compactVerify(seal.replace('..', `.${Buffer.from(text).toString('base64url')}.`), jwks);
      expect(line.previousHash).toBe(previousHash);
      previousHash = hash;
    }
    expect((await ledger()).body.head.hash).toBe(previousHash);
  });

  it('comes in pages that make the whole', async () => {
    const whole = sequences(await lines('?limit=500'));
    const read: number[] = [];
    let after: number | null = 0;
    while (after !== null) {
      const { body } = await ledger(`?limit=4&after=${after}`);
      read.push(...sequences(body.items));
      after = body.nextAfter;
    }
    expect(read).toEqual(whole);
    expect(read).toEqual(read.map((_, at) => at + 1));
  });

  it('is looked through by type, by several types, and by class', async () => {
    const all = await lines('?limit=500');
    const of = (...types: readonly string[]) => sequences(all.filter(({ type }) => types.includes(type)));
    expect(sequences(await lines('?type=class.created'))).toEqual(of('class.created'));
    const both = await lines('?type=class.created&type=panel.changed');
    expect(sequences(both)).toEqual(of('class.created', 'panel.changed'));
    expect(of('class.created', 'panel.changed').length).toBeGreaterThan(of('class.created').length);
    const ofSecond = await lines(`?classId=${classIds[1]?.toUpperCase()}`);
    expect(ofSecond.map(({ type }) => type)).toEqual(['class.created', 'panel.changed']);
    expect(await lines(`?classId=${classIds[1]}&type=card.opened`)).toEqual([]);
  });

  it('is looked through by who did it: an account, a phone, a person', async () => {
    const byPhone = await lines(`?actor=${judge.phoneId}`);
    expect(byPhone.map(({ type }) => type)).toContain('card.opened');
    const { person } = byPhone[0].actor;
    expect(sequences(await lines(`?actor=${person}`))).toEqual(sequences(byPhone));
    const byOffice = await lines(`?limit=500&actor=${office.pass.accountId}`);
    expect(byOffice.length).toBeGreaterThan(5);
    expect(byOffice.every(({ actor }) => actor.account === office.pass.accountId)).toBe(true);
    expect(await lines(`?actor=${service.parts.ids.next()}`)).toEqual([]);
  });

  it('is looked through by time: from a moment on, and up to one', async () => {
    const all = await lines('?limit=500');
    const at = all[4].at;
    const later = sequences(all.filter((line) => line.at >= at));
    expect(sequences(await lines(`?limit=500&from=${at}`))).toEqual(later);
    const earlier = sequences(all.filter((line) => line.at < at));
    expect(sequences(await lines(`?limit=500&to=${at}`))).toEqual(earlier);
    const elsewhere = encodeURIComponent(at.replace('Z', '+00:00'));
    expect(sequences(await lines(`?limit=500&to=${elsewhere}`))).toEqual(earlier);
  });

  it.each([
    ['?type=card.eaten', 'query/type'],
    ['?type=card.signed&type=x', 'query/type/1'],
    ['?classId=7', 'query/classId'],
    ['?actor=me', 'query/actor'],
    ['?from=yesterday', 'query/from'],
    ['?limit=0', 'query/limit'],
    ['?limit=501', 'query/limit'],
    ['?after=-1', 'query/after'],
    ['?order=up', 'query/order'],
  ])('refuses %s and names %s', async (query, field) => {
    const { status, body } = await ledger(query);
    expect([status, body.code]).toEqual([400, 'invalid_request']);
    expect(body.errors.map((error: Made) => error.field)).toEqual([field]);
    expect(body.errors[0].message).not.toBe('Invalid input');
  });

  it('is for the office of that show alone', async () => {
    const { showId } = office;
    const other = await openOffice(service);
    const refused = [
      [noPass, 401, 'token_missing'],
      [judge, 403, 'not_allowed'],
      [await passFor(service, { role: 'gate', showId }), 403, 'not_allowed'],
      [await passFor(service, { role: 'points-secretary', showId }), 403, 'not_allowed'],
      [other.pass, 403, 'other_show'],
    ] as const;
    for (const [pass, ...answer] of refused) expect(code(await ledger('', pass))).toEqual(answer);
    expect((await ledger('', manager)).status).toBe(200);
  });
});

describe('the head of a ledger', () => {
  const head = (showId = office.showId) =>
    send(service, 'get', `/v1/shows/${showId}/ledger/head`, { pass: noPass });

  it('is there for everyone, and moves with every change', async () => {
    const before = await head();
    const last = (await lines('?limit=500')).at(-1);
    expect([before.status, before.body]).toEqual([200, { sequence: last.sequence, hash: last.hash }]);
    await office.done('post', '/rings', { name: 'East' });
    const { body } = await head();
    expect(body.sequence).toBe(before.body.sequence + 1);
    const [added] = await lines(`?after=${before.body.sequence}`);
    expect(added).toMatchObject({ type: 'ring.created', previousHash: before.body.hash, hash: body.hash });
  });

  it('of a show that is not here is not found', async () => {
    expect(code(await head(service.parts.ids.next()))).toEqual([404, 'not_found']);
    expect((await head('7')).status).toBe(400);
  });
});

describe('the ledger of the service itself', () => {
  const read = (pass: Pass, query = '') => send(service, 'get', `/v1/ledger${query}`, { pass });

  it('is read by managers of the whole service', async () => {
    const { status, body } = await read(manager, '?type=signing-key.added');
    expect([status, body.ledgerId]).toEqual([200, ofTheService]);
    expect(body.items.map(({ actor, body: told }: Made) => [actor, told])).toEqual([
      [{ as: 'service' }, { kid: service.parts.keys.kid }],
    ]);
    expect(body.head).toEqual({ sequence: expect.any(Number), hash: expect.any(String) });
  });

  it('is no business of anybody else', async () => {
    const { showId } = office;
    expect(code(await read(noPass))).toEqual([401, 'token_missing']);
    for (const pass of [
      office.pass,
      judge,
      await passFor(service, { role: 'manager', showId }),
      await passFor(service, { role: 'secretary' }),
    ]) {
      expect(code(await read(pass))).toEqual([403, 'not_allowed']);
    }
  });
});
