import { createHmac, randomUUID } from 'node:crypto';
import { SignJWT } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp, testSecret } from '../support/test-app.ts';
import { type Made, type Office, openOffice } from './office-client.ts';
import { nonceOf, pairedRawPhone, type RawPhone, rawPhone } from './raw-phone.ts';

let service: TestApp;
let office: Office;
let judgeId: string;
let phone: RawPhone;
let token: string;

/** What a phone may read at any time. */
const path = '/v1/phones/current';

beforeAll(async () => {
  service = await buildTestApp();
  office = await openOffice(service);
  judgeId = (await office.done('post', '/people', { name: 'Ines Halloway' })).id;
  phone = await pairedPhone();
  token = await phone.nextToken();
});
afterAll(() => service.close());

const pairedPhone = () => pairedRawPhone(service, office, { role: 'judge', personId: judgeId });
const refusal = ({ status, body }: Made) => ({ status, code: body.code });
const invalid = { status: 401, code: 'proof_invalid' };

describe('a token that is forged', () => {
  const key = new TextEncoder().encode(testSecret);
  const claims = () => ({ cnf: { jkt: phone.thumbprint }, sub: paired().sub });
  const paired = () => JSON.parse(Buffer.from(token.split('.')[1] ?? '', 'base64url').toString());
  const tokenOf = (
    more: object = {},
    { secret = key, alg = 'HS256', typ = 'at+jwt', aud = 'ringledger phones' } = {},
  ) =>
    new SignJWT({ ...claims(), jti: randomUUID(), ...more })
      .setProtectedHeader({ alg, typ })
      .setIssuer('ringledger')
      .setAudience(aud)
      .setIssuedAt()
      .setExpirationTime('10m')
      .sign(secret);
  const sent = async (made: string) =>
    refusal(await phone.send('get', path, { token: made, nonce: await nonceOf(service) }));

  it('in the very form of the service is the measure: only with the secret is it taken', async () => {
    expect(await sent(await tokenOf())).toEqual({ status: 200, code: undefined });
  });

  it.each([
    [
      'signed by another secret',
      () => tokenOf({}, { secret: new TextEncoder().encode('another secret'.repeat(3)) }),
    ],
    ['of another type', () => tokenOf({}, { typ: 'JWT' })],
    ['by another algorithm', () => tokenOf({}, { alg: 'HS512' })],
    ['for someone else', () => tokenOf({}, { aud: 'ringledger' })],
    ['of no phone', () => tokenOf({ sub: randomUUID() })],
    ['of something that is no id', () => tokenOf({ sub: "' OR 1=1 --" })],
    ['bound to no key', () => tokenOf({ cnf: undefined })],
    [
      'with alg none',
      async () => `${part({ alg: 'none', typ: 'at+jwt' })}.${(await tokenOf()).split('.')[1]}.x`,
    ],
    [
      'with another body under its signature',
      async () => {
        const [head, , signature] = token.split('.');
        return `${head}.${part({ ...paired(), exp: 4_000_000_000 })}.${signature}`;
      },
    ],
    [
      'by HS256 over its own header alone',
      async () => {
        const head = part({ alg: 'HS256', typ: 'at+jwt' });
        return `${head}.${part(claims())}.${createHmac('sha256', 'x').update(head).digest('base64url')}`;
      },
    ],
  ])('%s is refused', async (_, make) => {
    expect(await sent(await make())).toEqual({ status: 401, code: 'token_invalid' });
  });

  it('bound to another key than the one that proves is refused', async () => {
    expect(await sent(await tokenOf({ cnf: { jkt: 'A'.repeat(43) } }))).toEqual(invalid);
  });

  const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');

  it('is good for a quarter of an hour by the clock of the service', async () => {
    const beside = await buildTestApp({ beside: service });
    const inMinutes = async (minutes: number) => {
      beside.clock.set(new Date(service.clock.now().getTime() + minutes * 60_000).toISOString());
      const nonce = await nonceOf(beside);
      const proof = await phone.proof('get', path, { token, nonce });
      const answer = await request(beside.app.server)
        .get(path)
        .set({ host: 'show.test', authorization: `DPoP ${token}`, dpop: proof });
      return refusal(answer);
    };
    expect(await inMinutes(14)).toEqual({ status: 200, code: undefined });
    expect(await inMinutes(16)).toEqual({ status: 401, code: 'token_expired' });
    await beside.close();
  });
});

describe('a phone whose clock is wrong', () => {
  it.each([-9, 9])('by %i hours is as good as any other', async (hours) => {
    const iat = Math.floor(Date.now() / 1_000) + hours * 3_600;
    const changes = { claims: { iat } };
    const made = await rawPhone(service);
    const { code } = await office.done('post', '/invitations', { role: 'gate' });
    const body = { code, publicKey: made.publicKey };
    const sent = async () => ({ nonce: await nonceOf(service), changes });
    expect((await made.send('post', '/v1/pairings', { body, ...(await sent()) })).status).toBe(201);
    const next = await made.send('post', '/v1/phone-tokens', await sent());
    expect(next.status).toBe(201);
    expect(next.body).toMatchObject({ tokenType: 'DPoP', endsInSeconds: 900 });
    const own = await made.send('get', path, { token: next.body.accessToken, ...(await sent()) });
    expect(own.status).toBe(200);
  });
});

describe('a key that is not paired', () => {
  it('gets no token, and leaves nothing behind', async () => {
    const spent = () => service.parts.db.prisma.spentProof.count();
    const before = await spent();
    const stranger = await rawPhone(service);
    const answer = await stranger.send('post', '/v1/phone-tokens', { nonce: await nonceOf(service) });
    expect(refusal(answer)).toEqual({ status: 401, code: 'phone_unknown' });
    await stranger.pair('0000-0000');
    expect(await spent()).toBe(before);
  });

  it('that came with an archive gets none either', async () => {
    const imported = await rawPhone(service);
    const { kty, crv, x, y } = imported.publicKey;
    await service.parts.db.prisma.phone.create({
      data: {
        ...{ id: service.parts.ids.next(), showId: office.showId, role: 'judge', personId: judgeId },
        publicKey: { kty: kty ?? '', crv: crv ?? '', x: x ?? '', y: y ?? '' },
        ...{ thumbprint: imported.thumbprint, pairedAt: service.clock.now() },
      },
    });
    const answer = await imported.send('post', '/v1/phone-tokens', { nonce: await nonceOf(service) });
    expect(refusal(answer)).toEqual({ status: 401, code: 'phone_unknown' });
  });
});

it('proofs whose nonce is over are forgotten when a phone fetches its next token', async () => {
  const old = { hash: 'f'.repeat(64), spentAt: new Date(service.clock.now().getTime() - 21 * 60_000) };
  const recent = { hash: 'e'.repeat(64), spentAt: new Date(service.clock.now().getTime() - 9 * 60_000) };
  await service.parts.db.prisma.spentProof.createMany({ data: [old, recent] });
  await phone.nextToken();
  const kept = await service.parts.db.prisma.spentProof.findMany({
    where: { hash: { in: [old.hash, recent.hash] } },
  });
  expect(kept.map(({ hash }) => hash)).toEqual([recent.hash]);
});
