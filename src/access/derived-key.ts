import { hkdfSync } from 'node:crypto';

type Purpose = 'pairing code' | 'proof nonce' | 'second factor' | 'follow code';

/** A key of its own for each purpose out of the service's one secret (HKDF, RFC 5869), so that none can stand for another. */
export function keyFor(tokenKey: Uint8Array, purpose: Purpose): Uint8Array {
  return new Uint8Array(hkdfSync('sha256', tokenKey, '', `ringledger ${purpose}`, 32));
}
