import { exportJWK, generateKeyPair } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Made, type Office, openOffice } from './office-client.ts';
import { nonceOf, type ProofChanges, pairedRawPhone, type RawPhone } from './raw-phone.ts';

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
const forged = async (changes: ProofChanges) =>
  refusal(await phone.send('get', path, { token, nonce: await nonceOf(service), changes }));

it('an honest phone is let in, with as many requests at once as it likes, and is told the next nonce', async () => {
  const nonce = await nonceOf(service);
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => phone.send('get', path, { token, nonce })),
  );
  expect(answers.map(({ status }) => status)).toEqual(Array(20).fill(200));
  expect(answers[0]?.headers['dpop-nonce']).toBe(nonce);
  expect(answers[0]?.body).toMatchObject({ role: 'judge', judge: { personId: judgeId } });
});

describe('a stolen token', () => {
  it('without the key opens nothing, as Bearer or as DPoP', async () => {
    const bare = (authorization: string) =>
      request(service.app.server).get(path).set('host', 'show.test').set('authorization', authorization);
    expect(refusal(await bare(`DPoP ${token}`))).toEqual({ status: 401, code: 'proof_missing' });
    expect(refusal(await bare(`Bearer ${token}`))).toMatchObject({ status: 401 });
    expect(refusal(await bare(token))).toEqual({ status: 401, code: 'token_invalid' });
  });

  it('with a proof by the key of the thief opens nothing, though his phone is paired too', async () => {
    const thief = await pairedPhone();
    const answer = await thief.send('get', path, { token, nonce: await nonceOf(service) });
    expect(refusal(answer)).toEqual(invalid);
    expect(answer.body.detail).toMatch(/another key/);
  });

  it('with the public key of its phone in the header of a proof by another key opens nothing', async () => {
    const { privateKey } = await generateKeyPair('ES256');
    expect(await forged({ key: privateKey })).toEqual(invalid);
  });
});

describe('a proof that was overheard', () => {
  it('opens nothing a second time', async () => {
    const proof = await phone.proof('get', path, { token, nonce: await nonceOf(service) });
    expect((await phone.send('get', path, { token, proof })).status).toBe(200);
    const again = await phone.send('get', path, { token, proof });
    expect(refusal(again)).toEqual({ status: 401, code: 'proof_replayed' });
  });

  it('sent ten times at the same moment opens once, in two processes too', async () => {
    const beside = await buildTestApp({ beside: service });
    const proof = await phone.proof('get', path, { token, nonce: await nonceOf(service) });
    const replay = (to: TestApp) =>
      request(to.app.server)
        .get(path)
        .set({ host: 'show.test', authorization: `DPoP ${token}`, dpop: proof });
    const answers = await Promise.all(
      Array.from({ length: 10 }, (_, at) => replay(at % 2 === 0 ? service : beside)),
    );
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    const others = answers.filter(({ status }) => status !== 200).map(refusal);
    expect(others).toEqual(Array(9).fill({ status: 401, code: 'proof_replayed' }));
    await beside.close();
  });

  it('opens no other method, no other address, and not with another token', async () => {
    const nonce = await nonceOf(service);
    const post = await phone.proof('post', path, { token, nonce });
    expect(refusal(await phone.send('get', path, { token, proof: post }))).toEqual(invalid);
    const elsewhere = await phone.proof('get', `/v1/shows/${office.showId}/classes`, { token, nonce });
    expect(refusal(await phone.send('get', path, { token, proof: elsewhere }))).toEqual(invalid);
    const ofAnotherToken = await phone.proof('get', path, { token: await phone.nextToken(), nonce });
    expect(refusal(await phone.send('get', path, { token, proof: ofAnotherToken }))).toEqual(invalid);
    const ofNoToken = await phone.proof('get', path, { nonce });
    expect(refusal(await phone.send('get', path, { token, proof: ofNoToken }))).toEqual(invalid);
  });

  it('opens no other service: the host is part of the address', async () => {
    const nonce = await nonceOf(service);
    const proof = await phone.proof('get', path, { token, nonce });
    const moved = await request(service.app.server)
      .get(path)
      .set({ host: 'elsewhere.test', authorization: `DPoP ${token}`, dpop: proof });
    expect(refusal(moved)).toEqual(invalid);
  });

  it('gets no token either, a second time or for a request with one', async () => {
    const nonce = await nonceOf(service);
    const proof = await phone.proof('post', '/v1/phone-tokens', { nonce });
    expect((await phone.send('post', '/v1/phone-tokens', { proof })).status).toBe(201);
    const again = await phone.send('post', '/v1/phone-tokens', { proof });
    expect(refusal(again)).toEqual({ status: 401, code: 'proof_replayed' });
  });

  it('two in one request are none', async () => {
    const nonce = await nonceOf(service);
    const proofs = [
      await phone.proof('get', path, { token, nonce }),
      await phone.proof('get', path, { token, nonce }),
    ];
    const answer = await phone.send('get', path, { token, proof: proofs.join(', ') });
    expect(refusal(answer)).toEqual(invalid);
  });
});

describe('a proof that is forged', () => {
  it('with "alg" none is refused', async () => {
    const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');
    const [, claims = '', signature = ''] = (
      await phone.proof('get', path, { token, nonce: await nonceOf(service) })
    ).split('.');
    const head = part({ alg: 'none', typ: 'dpop+jwt', jwk: phone.publicKey });
    for (const proof of [`${head}.${claims}.`, `${head}.${claims}.${signature}`]) {
      expect(refusal(await phone.send('get', path, { token, proof }))).toEqual(invalid);
    }
  });

  it('by HS256 with the public key as its secret is refused', async () => {
    for (const secret of [JSON.stringify(phone.publicKey), `${phone.publicKey.x}${phone.publicKey.y}`]) {
      const changes = { header: { alg: 'HS256' }, key: new TextEncoder().encode(secret) };
      expect(await forged(changes)).toEqual(invalid);
    }
  });

  it('by RS256 is refused', async () => {
    const { publicKey, privateKey } = await generateKeyPair('RS256');
    const header = { alg: 'RS256', jwk: await exportJWK(publicKey) };
    expect(await forged({ header, key: privateKey })).toEqual(invalid);
  });

  it('with the private key in its header is refused, and nothing of it comes back', async () => {
    const jwk = await exportJWK(phone.privateKey);
    const proof = await phone.proof('get', path, {
      token,
      nonce: await nonceOf(service),
      changes: { header: { jwk } },
    });
    const answer = await phone.send('get', path, { token, proof });
    expect(refusal(answer)).toEqual(invalid);
    expect(answer.text).not.toContain(jwk.d);
  });

  it('with a foreign key in its header, signed by that key, is refused', async () => {
    const { publicKey, privateKey } = await generateKeyPair('ES256');
    expect(await forged({ header: { jwk: await exportJWK(publicKey) }, key: privateKey })).toEqual(invalid);
  });

  it('with an old nonce, an invented one or none is refused, and the present one is told', async () => {
    const nonce = await nonceOf(service);
    const later = await buildTestApp({ beside: service });
    later.clock.set(new Date(service.clock.now().getTime() + 11 * 60_000).toISOString());
    const old = await request(later.app.server)
      .get(path)
      .set({
        host: 'show.test',
        authorization: `DPoP ${token}`,
        dpop: await phone.proof('get', path, { token, nonce }),
      });
    expect(refusal(old)).toEqual({ status: 401, code: 'proof_nonce_needed' });
    expect(old.headers['www-authenticate']).toBe('DPoP error="use_dpop_nonce", algs="ES256"');
    expect(old.headers['dpop-nonce']).toMatch(/^[\w-]{22}$/);
    expect(old.headers['dpop-nonce']).not.toBe(nonce);
    await later.close();
    for (const wrong of ['AAAAAAAAAAAAAAAAAAAAAA', '']) {
      const answer = await phone.send('get', path, { token, nonce: wrong });
      expect(refusal(answer)).toEqual({ status: 401, code: 'proof_nonce_needed' });
    }
    const none = await phone.send('get', path, { token });
    expect(refusal(none)).toEqual({ status: 401, code: 'proof_nonce_needed' });
    expect((await phone.send('get', path, { token, nonce: none.headers['dpop-nonce'] ?? '' })).status).toBe(
      200,
    );
  });

  it('with a wrong "ath" is refused', async () => {
    expect(await forged({ claims: { ath: 'fUHyO2r2Z3DZ53EsNrWBb0xWXoaNy59IiKCAqksmQEo' } })).toEqual(invalid);
    expect(await forged({ claims: { ath: undefined } })).toEqual(invalid);
  });
});
