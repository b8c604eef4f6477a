import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { bundle, type Made, type Office, openOffice, send } from './office-client.ts';
import { pairedRawPhone, type RawPhone, rawPhone } from './raw-phone.ts';

let service: TestApp;
let office: Office;
/** Two judges on the panels of class 7 and class 12, and one on that of class 12 only. */
let judges: readonly string[];
let classes: readonly Made[];
let entryId: string;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  office = await openOffice(service);
  const names = ['Ines Halloway', 'Tobias Renner', 'Maud Okafor'];
  judges = await inTurn(names, async (name) => (await office.done('post', '/people', { name })).id);
  classes = await inTurn([7, 12], (number) => office.addClass(number));
  await seat(0, judges.slice(0, 2));
  await seat(1, judges);
  const rider = await office.addEntry(301);
  entryId = (await office.enter(classes[0]?.id, rider.id)).id;
});
afterAll(() => service.close());

async function inTurn<From, To>(all: readonly From[], make: (one: From) => Promise<To>): Promise<To[]> {
  const made: To[] = [];
  for (const one of all) made.push(await make(one));
  return made;
}

const seat = (at: number, people: readonly string[]) => {
  const seats = people.map((personId) => ({ personId }));
  return office.done('put', `/classes/${classes[at]?.id}/panel`, { seats }, { 'if-match': '"1"' });
};

const pairedPhone = (role: 'judge' | 'scribe' | 'gate', judge = 0) =>
  pairedRawPhone(service, office, role === 'gate' ? { role } : { role, personId: judges[judge] });

const refusal = ({ status, body }: Made) => ({ status, code: body.code });
const current = async (phone: RawPhone): Promise<Made> => (await phone.ask('get', '/v1/phones/current')).body;
const revoke = (id: string, why = 'lost') =>
  office.call('delete', `/phones/${id}?why=${encodeURIComponent(why)}`);

describe('what a phone is', () => {
  it("is told to a judge's phone: its show, and her own seats with where the classes stand", async () => {
    const phone = await pairedPhone('judge', 1);
    const { seats, ...rest } = await current(phone);
    expect(rest).toEqual({
      ...{ id: phone.id, role: 'judge', label: null, pairedAt: expect.any(String) },
      show: {
        ...{ id: office.showId, name: 'Aspen Hollow Open', place: 'Aspen Hollow', kind: 'official' },
        ...{ timeZone: 'America/Chicago', firstDay: '2026-10-31', lastDay: '2026-11-01' },
      },
      judge: { personId: judges[1], name: 'Tobias Renner' },
    });
    const none = { cardId: null, signedRevision: null, ring: null, scheduledAt: null, withdrawn: false };
    const own = { seatId: expect.any(String), seatOrder: 2, seatRole: 'judge', state: 'setting-up', ...none };
    expect(seats).toEqual([
      { ...own, classId: classes[0]?.id, number: 7, name: 'Class 7' },
      { ...own, classId: classes[1]?.id, number: 12, name: 'Class 12' },
    ]);
  });

  it('says nothing of the seats of others, of entries or of exhibitors', async () => {
    const seats = await service.parts.db.prisma.panelSeat.findMany({ where: { showId: office.showId } });
    const others = seats.filter(({ personId }) => personId !== judges[2]);
    expect(others).toHaveLength(4);
    const answer = await (await pairedPhone('judge', 2)).ask('get', '/v1/phones/current');
    expect(answer.body.seats).toHaveLength(1);
    for (const { id } of others) expect(answer.text).not.toContain(id);
    for (const name of ['Halloway', 'Renner', 'Rider', entryId]) expect(answer.text).not.toContain(name);
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it('is for a scribe the judge that she writes for, and for the gate the show alone', async () => {
    const scribe = await current(await pairedPhone('scribe', 2));
    expect(scribe).toMatchObject({ role: 'scribe', judge: { personId: judges[2], name: 'Maud Okafor' } });
    expect(scribe.seats).toMatchObject([{ number: 12, seatOrder: 3 }]);
    const gate = await current(await pairedPhone('gate'));
    expect(gate).toMatchObject({ role: 'gate', judge: null, seats: [] });
  });

  it('follows the panel: a judge who is seated later finds the new seat', async () => {
    const phone = await pairedPhone('judge', 2);
    const added = await office.addClass(15);
    expect((await current(phone)).seats).toHaveLength(1);
    const seats = [{ personId: judges[2] }];
    await office.done('put', `/classes/${added.id}/panel`, { seats }, { 'if-match': '"1"' });
    expect((await current(phone)).seats.map(({ number }: Made) => number)).toEqual([12, 15]);
  });

  it('is not for the office, nor for whoever comes without a pass', async () => {
    const byOffice = await send(service, 'get', '/v1/phones/current', { pass: office.pass });
    expect(refusal(byOffice)).toEqual({ status: 403, code: 'not_allowed' });
    const answer = await (await rawPhone(service)).send('get', '/v1/phones/current');
    expect(refusal(answer)).toEqual({ status: 401, code: 'token_missing' });
  });
});

describe('a phone that is lost', () => {
  const go = { maneuvers: [{ position: 1, mark: '0.5' }] };

  async function drafted(phone: RawPhone): Promise<string> {
    const { seats } = await current(phone);
    const { seatId, classId } = seats[0];
    const opened = await phone.ask('post', `/v1/classes/${classId}/cards`, { seatId });
    expect([200, 201]).toContain(opened.status);
    const saved = await phone.ask('put', `/v1/cards/${opened.body.id}/goes/${entryId}`, go);
    expect(saved.status).toBe(200);
    return opened.body.id;
  }

  it('is shut out at once, with the token that it holds and for every next one', async () => {
    const phone = await pairedPhone('judge');
    const token = await phone.nextToken();
    const nonce = (await phone.send('post', '/v1/phone-tokens')).headers['dpop-nonce'] ?? '';
    expect((await phone.send('get', '/v1/phones/current', { token, nonce })).status).toBe(200);
    expect((await revoke(phone.id)).status).toBe(204);
    const shutOut = { status: 401, code: 'phone_revoked' };
    expect(refusal(await phone.send('get', '/v1/phones/current', { token, nonce }))).toEqual(shutOut);
    expect(refusal(await phone.send('post', '/v1/phone-tokens', { nonce }))).toEqual(shutOut);
  });

  it('is replaced by another one, and the drafts are there', async () => {
    const lost = await pairedPhone('judge');
    const cardId = await drafted(lost);
    await revoke(lost.id, 'fell into the trough');
    const next = await pairedPhone('judge');
    const { seats } = await current(next);
    expect(seats[0]).toMatchObject({ cardId, number: 7, signedRevision: null, state: 'under-way' });
    const card = await next.ask('get', `/v1/cards/${cardId}`);
    expect(card.status).toBe(200);
    expect(card.body.goes[0].content).toEqual(go);
    expect(refusal(await lost.send('get', `/v1/cards/${cardId}`))).toMatchObject({ status: 401 });
  });

  it('stays in the list with when and why, and in the ledger once, without the words', async () => {
    const phone = await pairedPhone('gate');
    expect((await revoke(phone.id, 'the day is over')).status).toBe(204);
    expect((await revoke(phone.id, 'again')).status).toBe(204);
    const { items } = await office.done('get', '/phones');
    const listed = items.find(({ id }: Made) => id === phone.id);
    expect(listed).toMatchObject({
      ...{ role: 'gate', personId: null, personName: null, thumbprint: phone.thumbprint },
      ...{ revokedAt: expect.any(String), revokedWhy: 'the day is over' },
    });
    const told = await service.parts.db.prisma.ledgerLine.findMany({ where: { type: 'phone.revoked' } });
    expect(told.map(({ body }) => body)).toContainEqual({ phoneId: phone.id });
    expect(JSON.stringify(told)).not.toContain('the day is over');
    expect(told.filter(({ body }) => (body as Made).phoneId === phone.id)).toHaveLength(1);
  });

  it('needs a word why, and an office of its show', async () => {
    const phone = await pairedPhone('gate');
    expect((await office.call('delete', `/phones/${phone.id}`)).body.errors).toMatchObject([
      { field: 'query/why' },
    ]);
    expect((await revoke(phone.id, ' ')).status).toBe(400);
    const other = await openOffice(service);
    const foreign = await other.call('delete', `/phones/${phone.id}?why=lost`);
    expect(refusal(foreign)).toEqual({ status: 404, code: 'not_found' });
    const byItself = await phone.ask('delete', `/v1/shows/${office.showId}/phones/${phone.id}?why=lost`);
    expect(refusal(byItself)).toEqual({ status: 403, code: 'not_allowed' });
    expect((await current(phone)).id).toBe(phone.id);
  });
});

describe('a phone', () => {
  it("of one judge does not reach another judge's card", async () => {
    const [own, others] = [await pairedPhone('judge', 0), await pairedPhone('judge', 1)];
    const { seats } = await current(own);
    const opened = await own.ask('post', `/v1/classes/${seats[1].classId}/cards`, {
      seatId: seats[1].seatId,
    });
    const answers = [
      await others.ask('get', `/v1/cards/${opened.body.id}`),
      await others.ask('post', `/v1/classes/${seats[1].classId}/cards`, { seatId: seats[1].seatId }),
    ];
    expect(answers.map(refusal)).toEqual(Array(2).fill({ status: 403, code: 'other_seat' }));
  });

  it('of a scribe writes for her judge and does not sign', async () => {
    const scribe = await pairedPhone('scribe', 0);
    const { seats } = await current(scribe);
    const opened = await scribe.ask('post', `/v1/classes/${seats[1].classId}/cards`, {
      seatId: seats[1].seatId,
    });
    expect([200, 201]).toContain(opened.status);
    const signed = await scribe.ask('post', `/v1/cards/${opened.body.id}/signatures`, { jws: 'x.y.z' });
    expect(refusal(signed)).toEqual({ status: 403, code: 'not_allowed' });
  });
});
