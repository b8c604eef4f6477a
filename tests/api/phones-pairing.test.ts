import { exportJWK } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Made, type Office, openOffice } from './office-client.ts';
import { type RawPhone, rawPhone } from './raw-phone.ts';

let service: TestApp;
let office: Office;
let judgeId: string;

beforeAll(async () => {
  service = await buildTestApp();
  office = await openOffice(service);
  judgeId = (await office.done('post', '/people', { name: 'Ines Halloway' })).id;
});
afterAll(() => service.close());

const invite = (body: object = {}): Promise<Made> =>
  office.done('post', '/invitations', { role: 'judge', personId: judgeId, ...body });
const refusal = ({ status, body }: Made) => ({ status, code: body.code });
const later = (minutes: number) =>
  service.clock.set(new Date(service.clock.now().getTime() + minutes * 60_000).toISOString());
const lines = async (type: string) => {
  const rows = await service.parts.db.prisma.ledgerLine.findMany({
    where: { ledgerId: office.showId, type },
    orderBy: { sequence: 'asc' },
  });
  return rows.map(({ body, actor }) => ({ body, actor }) as Made);
};

describe('pairing', () => {
  it('makes the phone one of the show, with the role and the judge of the invitation', async () => {
    const { id: invitationId, code } = await invite({ label: 'Ring 2' });
    const phone = await rawPhone(service);
    const paired = await phone.pair(code);
    expect(paired.status).toBe(201);
    expect(paired.body).toEqual({
      ...{ id: expect.any(String), showId: office.showId, role: 'judge', personId: judgeId, label: 'Ring 2' },
      ...{ thumbprint: phone.thumbprint, pairedAt: expect.any(String) },
    });
    const { items } = await office.done('get', '/invitations');
    const listed = items.find(({ id }: Made) => id === invitationId);
    expect(listed).toMatchObject({ state: 'used', phoneId: paired.body.id });
    const [line] = (await lines('phone.paired')).slice(-1);
    expect(line?.body).toEqual({
      ...{ phoneId: paired.body.id, invitationId, role: 'judge', personId: judgeId },
      thumbprint: phone.thumbprint,
    });
    expect(line?.actor).toEqual({ as: 'everyone' });
  });

  it('takes the code as people type it', async () => {
    const { code } = await invite();
    const answer = await (await rawPhone(service)).pair(` ${code.toLowerCase().replace('-', ' ')} `);
    expect(answer.status).toBe(201);
  });

  it('keeps the public key and nothing of the private one', async () => {
    const phone = await rawPhone(service);
    const { body } = await phone.pair((await invite()).code);
    const stored = await service.parts.db.prisma.phone.findUniqueOrThrow({ where: { id: body.id } });
    expect(stored.publicKey).toEqual({ kty: 'EC', crv: 'P-256', x: phone.publicKey.x, y: phone.publicKey.y });
  });

  it('works once: a second phone with the same code is refused', async () => {
    const { code } = await invite();
    expect((await (await rawPhone(service)).pair(code)).status).toBe(201);
    const second = await (await rawPhone(service)).pair(code);
    expect(refusal(second)).toEqual({ status: 409, code: 'pairing_code_used' });
  });

  it('of two phones with one code at the same moment lets in one', async () => {
    for (let round = 0; round < 5; round += 1) {
      const { id, code } = await invite();
      const phones = await Promise.all([0, 1, 2, 3].map(() => rawPhone(service)));
      const answers = await Promise.all(phones.map((phone) => phone.pair(code)));
      expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409, 409]);
      expect(await service.parts.db.prisma.phone.count({ where: { invitationId: id } })).toBe(1);
    }
  });

  it('answers the same phone the same again, when the answer was lost', async () => {
    const { id, code } = await invite();
    const phone = await rawPhone(service);
    const first = await phone.pair(code);
    const again = await phone.pair(code);
    expect(again.status).toBe(201);
    expect(again.body).toEqual(first.body);
    const [one, two] = await Promise.all([phone.pair(code), phone.pair(code)]);
    expect([one?.body, two?.body]).toEqual([first.body, first.body]);
    expect(await service.parts.db.prisma.phone.count({ where: { invitationId: id } })).toBe(1);
    expect((await lines('phone.paired')).filter(({ body }) => body.phoneId === first.body.id)).toHaveLength(
      1,
    );
  });

  it('with a code that nobody made is refused, and the field is named', async () => {
    const answer = await (await rawPhone(service)).pair('0000-0000');
    expect(refusal(answer)).toEqual({ status: 422, code: 'pairing_code_unknown' });
    expect(answer.body.errors[0].field).toBe('/code');
    const misread = await (await rawPhone(service)).pair('XK7P-4M2U');
    expect(refusal(misread)).toEqual({ status: 400, code: 'invalid_request' });
    expect(misread.body.errors[0].field).toBe('/code');
  });

  it('with a code that has ended, or was taken back, is refused', async () => {
    const ended = await invite({ minutes: 5 });
    later(5);
    expect(refusal(await (await rawPhone(service)).pair(ended.code))).toEqual({
      ...{ status: 410, code: 'pairing_code_ended' },
    });
    const revoked = await invite();
    const takeBack = () => office.call('delete', `/invitations/${revoked.id}`);
    expect([(await takeBack()).status, (await takeBack()).status]).toEqual([204, 204]);
    expect(refusal(await (await rawPhone(service)).pair(revoked.code))).toEqual({
      ...{ status: 410, code: 'pairing_code_ended' },
    });
    const { items } = await office.done('get', '/invitations');
    const stateOf = (id: string) => items.find((item: Made) => item.id === id).state;
    expect([stateOf(ended.id), stateOf(revoked.id)]).toEqual(['ended', 'revoked']);
    const told = (await lines('invitation.revoked')).filter(({ body }) => body.invitationId === revoked.id);
    expect(told).toHaveLength(1);
  });

  it('that happened cannot be undone by taking the invitation back: the phone is named', async () => {
    const { id, code } = await invite();
    const { body } = await (await rawPhone(service)).pair(code);
    const answer = await office.call('delete', `/invitations/${id}`);
    expect(refusal(answer)).toEqual({ status: 409, code: 'invitation_used' });
    expect(answer.body.phoneId).toBe(body.id);
  });

  it('of one key happens once', async () => {
    const phone = await rawPhone(service);
    await phone.pair((await invite()).code);
    const second = await invite();
    expect(refusal(await phone.pair(second.code))).toEqual({ status: 409, code: 'key_already_paired' });
    expect((await (await rawPhone(service)).pair(second.code)).status).toBe(201);
  });

  it('leads into the show of the code and into no other', async () => {
    const other = await openOffice(service);
    const { code } = await other.done('post', '/invitations', { role: 'gate' });
    const phone = await rawPhone(service);
    const { body } = await phone.pair(code);
    expect(body.showId).toBe(other.showId);
    const elsewhere = await phone.ask('get', `/v1/shows/${office.showId}/classes`);
    expect(refusal(elsewhere)).toEqual({ status: 403, code: 'other_show' });
  });

  it('is slowed after ten wrong codes from one address, for the right one too, and then goes on', async () => {
    const beside = await buildTestApp({ beside: service });
    const { code } = await invite();
    const guess = async (at: number) =>
      (await rawPhone(beside)).pair(`0000-00${String(at).padStart(2, '0')}`);
    const tries = await Promise.all(Array.from({ length: 12 }, (_, at) => guess(at)));
    const statuses = tries.map(({ status }) => status).sort();
    expect(statuses).toEqual([...Array(10).fill(422), 429, 429]);
    const slowed = await (await rawPhone(beside)).pair(code);
    expect(refusal(slowed)).toEqual({ status: 429, code: 'pairing_slowed' });
    expect(Number(slowed.headers['retry-after'])).toBeGreaterThan(0);
    await beside.close();
    expect((await (await rawPhone(service)).pair(code)).status).toBe(201);
  });
});

describe('what is asked of the key', () => {
  let phone: RawPhone;
  let code: string;
  beforeAll(async () => {
    phone = await rawPhone(service);
    code = (await invite()).code;
  });

  it('is a proof that the phone holds it: none, or one by another key, pairs nothing', async () => {
    const other = await rawPhone(service);
    const body = { code, publicKey: other.publicKey };
    const swapped = await phone.send('post', '/v1/pairings', { body, nonce: await nonce() });
    expect(refusal(swapped)).toEqual({ status: 401, code: 'proof_invalid' });
    const bare = await request(service.app.server).post('/v1/pairings').send(body);
    expect(refusal(bare)).toEqual({ status: 401, code: 'proof_missing' });
    expect(bare.headers['dpop-nonce']).toMatch(/^[\w-]{22}$/);
  });

  it('is the public half alone: whoever sends the private one is told to make a new key', async () => {
    const publicKey = await exportJWK(phone.privateKey);
    const answer = await phone.send('post', '/v1/pairings', {
      body: { code, publicKey },
      nonce: await nonce(),
    });
    expect(refusal(answer)).toEqual({ status: 400, code: 'invalid_request' });
    expect(answer.body.errors).toEqual([
      { field: '/publicKey/d', message: expect.stringMatching(/make a new key/) },
    ]);
    expect(answer.text).not.toContain(publicKey.d);
  });

  it('is the curve P-256', async () => {
    for (const wrong of [{ crv: 'P-384' }, { kty: 'RSA' }, { x: 'short' }, { y: undefined }]) {
      const body = { code, publicKey: { ...phone.publicKey, ...wrong } };
      const answer = await phone.send('post', '/v1/pairings', { body, nonce: await nonce() });
      expect(refusal(answer)).toEqual({ status: 400, code: 'invalid_request' });
    }
  });

  it('may carry the public members that a browser adds', async () => {
    const publicKey = { ...phone.publicKey, ext: true, key_ops: ['verify'] };
    const answer = await phone.send('post', '/v1/pairings', {
      body: { code, publicKey },
      nonce: await nonce(),
    });
    expect(answer.status).toBe(201);
  });

  async function nonce() {
    return (await phone.send('post', '/v1/phone-tokens')).headers['dpop-nonce'] ?? '';
  }
});
