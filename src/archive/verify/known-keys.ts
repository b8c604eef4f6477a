/** Which keys of the service are believed: those of the archive, or only those that somebody brought from outside. */
import { type CryptoKey, calculateJwkThumbprint, importJWK, type JWK } from 'jose';
import { evidenceAlgorithm } from '../../evidence/index.ts';
import type { KnownKeys } from '../../ledger/offline.ts';
import type { Archive } from '../form/archive.ts';
import { type Fault, fault } from './fault.ts';

export interface KeysRead {
  readonly keys: KnownKeys;
  readonly faults: readonly Fault[];
}

/**
 * A key goes by the thumbprint that is computed from it, never by the one that is claimed.
 * Without `trusted` the keys of the archive are believed: then the check shows that all of it comes from the same
 * keys, but not whose they are.
 */
export async function knownKeys(archive: Archive, trusted: readonly JWK[] | undefined): Promise<KeysRead> {
  const own = await Promise.all(archive.keys.map(({ kid, jwk }) => readKey(jwk, kid)));
  const faults = own.flatMap(({ claimed, thumbprint }) =>
    claimed === thumbprint ? [] : [fault('key_thumbprint_wrong', `key ${claimed}`)],
  );
  const believed = trusted === undefined ? own : await Promise.all(trusted.map((jwk) => readKey(jwk)));
  const keys = believed.flatMap(({ thumbprint, key }): [string, CryptoKey][] =>
    thumbprint === undefined || key === undefined ? [] : [[thumbprint, key]],
  );
  return { keys: new Map(keys), faults };
}

interface KeyRead {
  readonly claimed: string | undefined;
  /** `undefined`: it is no key of the kind that is used here. */
  readonly thumbprint: string | undefined;
  readonly key: CryptoKey | undefined;
}

export async function readKey({ kty, crv, x, y }: JWK, claimed?: string): Promise<KeyRead> {
  try {
    const jwk = { kty, crv, x, y } as JWK;
    const key = await importJWK(jwk, evidenceAlgorithm);
    if (!('algorithm' in key)) return { claimed, thumbprint: undefined, key: undefined };
    return { claimed, thumbprint: await calculateJwkThumbprint(jwk), key };
  } catch {
    return { claimed, thumbprint: undefined, key: undefined };
  }
}
