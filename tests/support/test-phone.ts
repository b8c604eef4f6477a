/** A phone's key, by Node.js's own cryptography instead of the library that the service uses. */
import { createHash, generateKeyPairSync, sign } from 'node:crypto';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import { canonicalText, type SignedCard } from '../../src/evidence/index.ts';

export interface TestPhone {
  readonly publicKey: { readonly kty: 'EC'; readonly crv: 'P-256'; readonly x: string; readonly y: string };
  readonly thumbprint: string;
  /** A proof with these claims (RFC 9449). */
  readonly prove: (claims: object) => string;
  /** A compact JWS over this text, with this header beside `alg` and `kid`. */
  readonly sign: (text: string, header?: object) => string;
}

export function makeTestPhone(): TestPhone {
  const { privateKey, publicKey: point } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const { x = '', y = '' } = point.export({ format: 'jwk' });
  const publicKey = { kty: 'EC', crv: 'P-256', x, y } as const;
  // RFC 7638, section 3.2: the members that are needed, in the order of their names.
  const thumbprint = createHash('sha256')
    .update(`{"crv":"P-256","kty":"EC","x":"${x}","y":"${y}"}`)
    .digest('base64url');
  const jws = (header: object, text: string) => {
    const signed = `${part(JSON.stringify(header))}.${part(text)}`;
    const signature = sign('sha256', Buffer.from(signed), { key: privateKey, dsaEncoding: 'ieee-p1363' });
    return `${signed}.${signature.toString('base64url')}`;
  };
  return {
    publicKey,
    thumbprint,
    prove: (claims) => jws({ alg: 'ES256', typ: 'dpop+jwt', jwk: publicKey }, JSON.stringify(claims)),
    sign: (text, header = { typ: 'ringledger-card+jws' }) =>
      jws({ alg: 'ES256', kid: thumbprint, ...header }, text),
  };
}

const part = (text: string) => Buffer.from(text).toString('base64url');

/** A card as `GET /v1/cards/:cardId` shows it, as far as a signature needs it. */
export interface CardToSign {
  readonly id: string;
  readonly showId: string;
  readonly classId: string;
  readonly seatId: string;
  readonly sheet: { readonly code: string; readonly version: number; readonly hash: string };
}

/** What a phone signs first. */
export function statementOf(
  { id: cardId, showId, classId, seatId, sheet: { code, version, hash } }: CardToSign,
  content: CardContent,
): SignedCard {
  return {
    ...{ form: 'ringledger signed card 1', showId, classId, seatId, cardId, sheet: { code, version, hash } },
    ...{ revision: 1, previousHash: null, reason: null, signedAt: '2026-05-02T15:00:00.000Z', content },
  };
}

/** The body of a signature or an amendment. */
export const signedBody = (phone: TestPhone, statement: object) => ({
  jws: phone.sign(canonicalText(statement)),
});
