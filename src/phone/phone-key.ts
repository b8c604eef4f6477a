/** The key pair of a phone: made on it by WebCrypto, and its private half can never be read, not even by this code. */
import { type CryptoKey, calculateJwkThumbprint, exportJWK, generateKeyPair } from 'jose';
import { evidenceAlgorithm } from '../evidence/index.ts';

export interface PhoneKey {
  /** Can sign, and cannot be exported. It may be kept in IndexedDB as it is. */
  readonly privateKey: CryptoKey;
  readonly publicKey: PublicJwk;
  /** RFC 7638, SHA-256. */
  readonly thumbprint: string;
}

/** RFC 7518, section 6.2.1. */
export interface PublicJwk {
  readonly kty: 'EC';
  readonly crv: 'P-256';
  readonly x: string;
  readonly y: string;
}

/** Rejects where there is no WebCrypto: a page that came neither over https nor from localhost. */
export async function makePhoneKey(): Promise<PhoneKey> {
  const { privateKey, publicKey } = await generateKeyPair(evidenceAlgorithm, { extractable: false });
  const { x, y } = await exportJWK(publicKey);
  if (x === undefined || y === undefined) throw new Error('a key of the curve P-256 without its point');
  const jwk: PublicJwk = { kty: 'EC', crv: 'P-256', x, y };
  return { privateKey, publicKey: jwk, thumbprint: await calculateJwkThumbprint({ ...jwk }) };
}
