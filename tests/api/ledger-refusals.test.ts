import type request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ofTheService } from '../../src/evidence/index.ts';
import { recordedRefusals } from '../../src/ledger/index.ts';
import { problemCatalogue } from '../../src/platform/problems/index.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, type Pass, passFor } from '../support/test-passes.ts';
import { makeTestPhone, signedBody, statementOf, type TestPhone } from '../support/test-phone.ts';
import { bundle, type Made, newShow, type Office, openOffice, send } from './office-client.ts';

let service: TestApp;
let office: Office;
let other: Office;
let classId: string;
let seatIds: readonly string[];

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  office = await openOffice(service);
  other = await openOffice(service);
  classId = (await office.addClass(1)).id;
  const people = await Promise.all(['A', 'B'].map((name) => office.done('post', '/people', { name })));
  const seats = people.map(({ id }) => ({ personId: id }));
  const panel = await office.done('put', `/classes/${classId}/panel`, { seats }, { 'if-match': '"1"' });
  seatIds = panel.seats.map(({ id }: Made) => id);
});
afterAll(() => service.close());

interface Line {
  readonly actor: object;
  readonly body: Made;
}

/** The refusals in a ledger, oldest first. */
async function refusalsIn(ledgerId: string): Promise<Line[]> {
  const found = await service.parts.db.pool.query(
    `SELECT actor, body FROM ledger_line WHERE ledger_id = $1 AND type = 'request.refused' ORDER BY sequence`,
    [ledgerId],
  );
  return found.rows;
}

/** Those that `work` leads to. */
async function newRefusals(ledgerId: string, work: () => Promise<unknown>): Promise<Line[]> {
  const before = (await refusalsIn(ledgerId)).length;
  await work();
  return (await refusalsIn(ledgerId)).slice(before);
}

const judgeOf = (seatId: string | undefined) =>
  passFor(service, { role: 'judge', showId: office.showId, seatId: seatId ?? '' });
const personOf = async (seatId = '') =>
  (await service.parts.db.prisma.panelSeat.findUniqueOrThrow({ where: { id: seatId } })).personId;

describe('a refusal', () => {
  it('for want of a right is a line of the show that it was about, before its answer goes out', async () => {
    const judge = await judgeOf(seatIds[0]);
    const lines = await newRefusals(office.showId, async () => {
      const answer = await office.call('post', '/exhibitors?name=Rowan', {
        pass: judge,
        body: { name: 'Rowan' },
      });
      expect([answer.status, answer.body.code]).toEqual([403, 'not_allowed']);
    });
    expect(lines).toEqual([
      {
        actor: { as: 'judge', phone: judge.phoneId, person: await personOf(seatIds[0]) },
        body: { code: 'not_allowed', method: 'POST', route: '/v1/shows/:showId/exhibitors', times: 1 },
      },
    ]);
    expect(JSON.stringify(lines)).not.toContain('Rowan');
  });

  it('at the door of another show is told there, with the account that knocked', async () => {
    const { accountId, sessionId } = other.pass;
    const lines = await newRefusals(office.showId, () =>
      office.call('get', '/exhibitors', { pass: other.pass }),
    );
    expect(lines).toEqual([
      {
        actor: { as: 'office', account: accountId, session: sessionId },
        body: { code: 'other_show', method: 'GET', route: '/v1/shows/:showId/exhibitors', times: 1 },
      },
    ]);
  });

  it("of a reach for another judge's card is a line of the show that the card is of", async () => {
    const [judge, stranger] = [await judgeOf(seatIds[0]), await judgeOf(seatIds[1])];
    await office.enter(classId, (await office.addEntry(214)).id);
    await office.done('post', `/classes/${classId}/order-of-go/draws`, {});
    const opened = await send(service, 'post', `/v1/classes/${classId}/cards`, {
      ...{ pass: judge, body: { seatId: seatIds[0] } },
    });
    const lines = await newRefusals(office.showId, async () => {
      const answer = await send(service, 'get', `/v1/cards/${opened.body.id}`, { pass: stranger });
      expect(answer.body.code).toBe('other_seat');
    });
    expect(lines.map(({ body }) => body)).toEqual([
      { code: 'other_seat', method: 'GET', route: '/v1/cards/:cardId', times: 1 },
    ]);
  });

  it('of a card that another key signed is a line that says so, and holds nothing of the card', async () => {
    const judge = await judgeOf(seatIds[0]);
    const opened = await send(service, 'post', `/v1/classes/${classId}/cards`, {
      ...{ pass: judge, body: { seatId: seatIds[0] } },
    });
    const statement = statementOf(opened.body, { goes: {} });
    const lines = await newRefusals(office.showId, async () => {
      const body = signedBody(makeTestPhone(), statement);
      const path = `/v1/cards/${opened.body.id}/signatures`;
      const answer = await send(service, 'post', path, { pass: judge, body });
      expect([answer.status, answer.body.code]).toEqual([422, 'signature_invalid']);
    });
    expect(lines).toEqual([
      {
        actor: { as: 'judge', phone: judge.phoneId, person: await personOf(seatIds[0]) },
        body: { code: 'signature_invalid', method: 'POST', route: '/v1/cards/:cardId/signatures', times: 1 },
      },
    ]);
  });

  it('that is about no show, or about one that is not here, is a line of the service itself', async () => {
    const { accountId } = office.pass;
    const nowhere = `/v1/shows/${service.parts.ids.next()}/exhibitors`;
    const lines = await newRefusals(ofTheService, async () => {
      await send(service, 'post', '/v1/shows', { pass: office.pass, body: newShow });
      await send(service, 'get', nowhere, { pass: office.pass });
    });
    expect(lines.map(({ actor, body }) => [actor, body.code])).toEqual([
      [expect.objectContaining({ account: accountId }), 'not_allowed'],
      [expect.objectContaining({ account: accountId }), 'other_show'],
    ]);
  });

  it('of everyday work is no line: a wrong form, a record that is not there, a stale version', async () => {
    const lines = await newRefusals(office.showId, async () => {
      await office.call('post', '/exhibitors', { body: { nonsense: true } });
      await office.call('get', `/classes/${service.parts.ids.next()}`);
      await office.call('put', `/classes/${classId}/panel`, {
        body: { seats: [] },
        headers: { 'if-match': '"9"' },
      });
    });
    expect(lines).toEqual([]);
  });

  it('of a stranger is no line, with no pass or with one that nobody gave him', async () => {
    const passes = [noPass, bearer('rls_nonsense'), bearer(`rls_${'A'.repeat(43)}`), bearer('a.b.c')];
    const before = (await refusalsIn(ofTheService)).length;
    const lines = await newRefusals(office.showId, async () => {
      for (const pass of passes) {
        expect((await office.call('get', '/exhibitors', { pass })).status).toBe(401);
      }
    });
    expect(lines).toEqual([]);
    expect(await refusalsIn(ofTheService)).toHaveLength(before);
  });
});

/** Whatever `headers` says goes with each request. */
const sending = (headers: Pass['headers']): Pass =>
  Object.assign((test: request.Test) => void test.set(headers(test.method, test.url)), { headers });

const bearer = (token: string) => sending(() => ({ authorization: `Bearer ${token}` }));

describe('at the door', () => {
  const look = (pass: Pass) =>
    send(service, 'get', `/v1/shows/${office.showId}/classes/${classId}/panel`, { pass });

  it('a session that was ended and is still used is told, with its account', async () => {
    const pass = await passFor(service, { role: 'office', showId: office.showId });
    await service.parts.db.prisma.session.update({
      where: { id: pass.sessionId },
      data: { endedAt: new Date() },
    });
    const lines = await newRefusals(office.showId, () => look(pass));
    expect(lines).toMatchObject([
      {
        actor: { as: 'office', account: pass.accountId, session: pass.sessionId },
        body: { code: 'token_revoked' },
      },
    ]);
  });

  it('a phone that was taken off the show and is still used is told', async () => {
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    await office.call('delete', `/phones/${gate.phoneId}?why=lost`);
    const lines = await newRefusals(office.showId, async () => {
      expect((await look(gate)).body.code).toBe('phone_revoked');
    });
    expect(lines).toMatchObject([
      { actor: { as: 'gate', phone: gate.phoneId }, body: { code: 'phone_revoked' } },
    ]);
  });

  it('a token that is used without its key is told as stolen, and puts nothing on the phone', async () => {
    const judge = await judgeOf(seatIds[0]);
    const thief = makeTestPhone();
    const stolen = stealing(judge, thief);
    const lines = await newRefusals(office.showId, async () => {
      const answer = await look(stolen);
      expect([answer.status, answer.body.code]).toEqual([401, 'proof_invalid']);
      expect(JSON.stringify(answer.body)).not.toContain(judge.phoneId);
    });
    expect(lines).toMatchObject([
      { actor: { as: 'everyone' }, body: { code: 'proof_invalid', phoneId: judge.phoneId } },
    ]);
  });

  it('a request that is sent a second time as it was is told', async () => {
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    let kept: Record<string, string> | undefined;
    const again = sending((method, url) => {
      kept ??= gate.headers(method, url);
      return kept;
    });
    const lines = await newRefusals(office.showId, async () => {
      const first = await look(again);
      expect(first.status).toBe(200);
      expect((await look(again)).body.code).toBe('proof_replayed');
    });
    expect(lines).toMatchObject([
      { actor: { as: 'gate', phone: gate.phoneId }, body: { code: 'proof_replayed' } },
    ]);
  });
});

/** The token of one phone with proofs by the key of another. */
const stealing = (owner: Pass, thief: TestPhone): Pass =>
  sending((method, url) => {
    const { authorization = '', dpop = '' } = owner.headers(method, url);
    const claims = JSON.parse(Buffer.from(dpop.split('.')[1] ?? '', 'base64url').toString());
    return { authorization, dpop: thief.prove(claims) };
  });

describe('many refusals', () => {
  it('that are equal are one line at once and one with their number, whoever stops in between', async () => {
    const beside = await buildTestApp({ beside: service });
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    const ask = (path: string) => send(beside, 'get', `/v1/shows/${office.showId}${path}`, { pass: gate });
    const lines = await newRefusals(office.showId, async () => {
      for (let at = 0; at < 5; at += 1) expect((await ask('/exhibitors')).status).toBe(403);
      await Promise.all(Array.from({ length: 4 }, () => ask('/exhibitors')));
      await ask('/entries');
      await beside.close();
    });
    const counted = lines.map(({ body }) => [body.route.split('/').at(-1), body.times]);
    expect(counted).toEqual([
      ['exhibitors', 1],
      ['entries', 1],
      ['exhibitors', 8],
    ]);
  });

  it('of two senders are told apart', async () => {
    const gates = await Promise.all(
      [1, 2].map(() => passFor(service, { role: 'gate', showId: office.showId })),
    );
    const lines = await newRefusals(office.showId, async () => {
      for (const gate of gates) await office.call('get', '/exhibitors', { pass: gate });
    });
    expect(lines.map(({ actor }) => actor)).toEqual(
      gates.map(({ phoneId }) => ({ as: 'gate', phone: phoneId })),
    );
  });

  it('are answered even while the ledger cannot be written, and told once it can', async () => {
    const beside = await buildTestApp({ beside: service });
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    const holder = await service.parts.db.pool.connect();
    const lines = await newRefusals(office.showId, async () => {
      await holder.query('BEGIN');
      await holder.query('SELECT FROM ledger_head WHERE ledger_id = $1 FOR UPDATE', [office.showId]);
      const answer = await send(beside, 'get', `/v1/shows/${office.showId}/exhibitors`, { pass: gate });
      expect([answer.status, answer.body.code]).toEqual([403, 'not_allowed']);
      await holder.query('ROLLBACK');
      holder.release();
      await beside.close();
    });
    expect(lines.map(({ body }) => body.times)).toEqual([1]);
  });
});

describe('the list of what is recorded', () => {
  it('has every refusal that says who may not', () => {
    const forbidden = Object.entries(problemCatalogue).filter(([, { status }]) => status === 403);
    expect(forbidden.length).toBeGreaterThan(3);
    expect(Object.keys(recordedRefusals)).toEqual(expect.arrayContaining(forbidden.map(([code]) => code)));
  });
});
