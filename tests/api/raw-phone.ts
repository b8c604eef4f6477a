/** A phone made by hand for the tests: everything that it sends can be made wrong on purpose. */
import { createHash, randomUUID } from 'node:crypto';
import {
  type CryptoKey,
  calculateJwkThumbprint,
  exportJWK,
  generateKeyPair,
  type JWK,
  type JWTHeaderParameters,
  SignJWT,
} from 'jose';
import request from 'supertest';
import type { TestApp } from '../support/test-app.ts';
import type { Office } from './office-client.ts';

/** What supertest's requests come to, with the port left out, because the test names the host itself. */
export const address = 'http://show.test';

type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

export interface ProofChanges {
  readonly claims?: object;
  readonly header?: object;
  readonly key?: CryptoKey | Uint8Array;
}

interface Sent {
  readonly body?: object;
  readonly token?: string;
  /** The proof as it is; left out: a good one is made. */
  readonly proof?: string;
  readonly nonce?: string;
  readonly changes?: ProofChanges;
}

export interface RawPhone {
  readonly publicKey: JWK;
  readonly privateKey: CryptoKey;
  readonly thumbprint: string;
  readonly proof: (method: Method, path: string, sent?: Sent) => Promise<string>;
  readonly send: (method: Method, path: string, sent?: Sent) => Promise<request.Response>;
  /** Fetches the nonce first, as a phone does that has none. */
  readonly pair: (code: string) => Promise<request.Response>;
  readonly nextToken: () => Promise<string>;
  /** A whole honest request. */
  readonly ask: (method: Method, path: string, body?: object) => Promise<request.Response>;
}

/** The nonce of the service now. */
export async function nonceOf(service: TestApp): Promise<string> {
  const answer = await request(service.app.server).post('/v1/phone-tokens').set('host', 'show.test');
  return answer.headers['dpop-nonce'] ?? '';
}

export async function rawPhone(service: TestApp): Promise<RawPhone> {
  const { publicKey: publicHalf, privateKey } = await generateKeyPair('ES256', { extractable: true });
  const publicKey = await exportJWK(publicHalf);

  const proof: RawPhone['proof'] = (method, path, { token, nonce, changes = {} } = {}) => {
    const claims = {
      jti: randomUUID(),
      htm: method.toUpperCase(),
      htu: address + path.split('?')[0],
      iat: Math.floor(Date.now() / 1_000),
      ...(nonce === undefined ? {} : { nonce }),
      ...(token === undefined ? {} : { ath: createHash('sha256').update(token).digest('base64url') }),
      ...changes.claims,
    };
    const header = { alg: 'ES256', typ: 'dpop+jwt', jwk: publicKey, ...changes.header };
    return new SignJWT(claims)
      .setProtectedHeader(header as JWTHeaderParameters)
      .sign(changes.key ?? privateKey);
  };

  const send: RawPhone['send'] = async (method, path, sent = {}) => {
    const asked = request(service.app.server)[method](path).set('host', 'show.test');
    asked.set('dpop', sent.proof ?? (await proof(method, path, sent)));
    if (sent.token !== undefined) asked.set('authorization', `DPoP ${sent.token}`);
    return sent.body === undefined ? asked : asked.send(sent.body);
  };

  const nextToken = async () => {
    const answer = await send('post', '/v1/phone-tokens', { nonce: await nonceOf(service) });
    if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
    return answer.body.accessToken as string;
  };

  return {
    publicKey,
    privateKey,
    thumbprint: await calculateJwkThumbprint(publicKey),
    proof,
    send,
    nextToken,
    pair: async (code) =>
      send('post', '/v1/pairings', { body: { code, publicKey }, nonce: await nonceOf(service) }),
    ask: async (method, path, body) => {
      const honest = { token: await nextToken(), nonce: await nonceOf(service) };
      return send(method, path, body === undefined ? honest : { ...honest, body });
    },
  };
}

/** Paired by an invitation that the office makes for it; `id` is the phone's. */
export async function pairedRawPhone(
  service: TestApp,
  office: Office,
  invitation: object,
): Promise<RawPhone & { readonly id: string }> {
  const phone = await rawPhone(service);
  const { code } = await office.done('post', '/invitations', invitation);
  const { body, status } = await phone.pair(code);
  if (status !== 201) throw new Error(JSON.stringify(body));
  return { ...phone, id: body.id };
}
