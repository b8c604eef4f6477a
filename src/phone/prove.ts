/** Proof of possession for one request (DPoP, RFC 9449, section 4.2). */
import { base64url, SignJWT } from 'jose';
import { evidenceAlgorithm } from '../evidence/index.ts';
import type { PhoneKey } from './phone-key.ts';

export interface ProofOf {
  readonly method: string;
  /** Absolute; query and fragment are left out of the proof. */
  readonly url: string;
  /** Of the header DPoP-Nonce of an answer before; left out: none was heard yet. */
  readonly nonce?: string | undefined;
  /** The token that is sent with it; left out: none. */
  readonly token?: string | undefined;
}

/** The value of the header `DPoP`, good for this one request. */
export async function prove(key: PhoneKey, { method, url, nonce, token }: ProofOf): Promise<string> {
  const claims = {
    ...{ htm: method, htu: withoutQuery(url) },
    ...(nonce === undefined ? {} : { nonce }),
    ...(token === undefined ? {} : { ath: await hashOfToken(token) }),
  };
  return new SignJWT(claims)
    .setProtectedHeader({ alg: evidenceAlgorithm, typ: 'dpop+jwt', jwk: { ...key.publicKey } })
    .setJti(crypto.randomUUID())
    .setIssuedAt()
    .sign(key.privateKey);
}

function withoutQuery(address: string): string {
  const { origin, pathname } = new URL(address);
  return origin + pathname;
}

async function hashOfToken(token: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(token));
  return base64url.encode(new Uint8Array(hash));
}
