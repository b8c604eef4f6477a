/**
 * The keys by which the service signs postings and seals ledger lines. The private ones stand in a file of their own,
 * never in the database: whoever can write to the database can still not sign.
 */
import { existsSync, linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import {
  CompactSign,
  type CryptoKey,
  calculateJwkThumbprint,
  exportJWK,
  generateKeyPair,
  importJWK,
  type JWK,
} from 'jose';
import { z } from 'zod';
import { type EvidenceType, evidenceAlgorithm } from '../evidence/index.ts';

export interface PublicKey {
  /** Thumbprint (RFC 7638). */
  readonly kid: string;
  readonly jwk: JWK;
}

export interface ServiceKeys {
  /** Of the key that signs now. */
  readonly kid: string;
  /** A compact JWS over `text`. */
  readonly sign: (typ: EvidenceType, text: string) => Promise<string>;
  /** The one that signs now first, then those that signed before. */
  readonly publicKeys: readonly PublicKey[];
}

const storedKey = z.strictObject({
  kty: z.literal('EC'),
  crv: z.literal('P-256'),
  x: z.string(),
  y: z.string(),
  /** Left out of a key that no longer signs. */
  d: z.string().optional(),
});
const storedKeys = z.strictObject({
  /** The demo's keys say so, and are refused in production. */
  demo: z.boolean().optional(),
  keys: z.array(storedKey).min(1, 'it must hold at least one key'),
});
export type StoredKeys = z.infer<typeof storedKeys>;

/** Throws an Error that names the file where it cannot be used. */
export function readKeyFile(file: string): StoredKeys {
  try {
    return storedKeys.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch (cause) {
    throw new Error(
      `The signing keys in ${file} cannot be read: it must be a file that new-signing-key wrote.`,
      {
        cause,
      },
    );
  }
}

/** The keys of `file` with a new one in front; those before keep only their public part, which still checks. */
export async function nextSigningKeys(file: string): Promise<StoredKeys> {
  const { demo, keys } = readKeyFile(file);
  const old = keys.map(({ d: _private, ...publicPart }) => publicPart);
  return { ...(demo === undefined ? {} : { demo }), keys: [await newKey(), ...old] };
}

/** Written beside and moved into place: who reads at the same moment reads the old file or the new one, whole. */
export const saveSigningKeys = (file: string, stored: StoredKeys): void =>
  writeKeyFile(file, stored, renameSync);

/**
 * The keys of `file`; a first one is made where there is none. Of several processes at once one makes it.
 * `demo`: a made one is marked as the demo's, and refused in production.
 */
export async function ensureSigningKey(
  file: string,
  { demo = false }: { readonly demo?: boolean } = {},
): Promise<StoredKeys> {
  if (!existsSync(file)) {
    const first = { ...(demo ? { demo } : {}), ...(await firstSigningKeys()) };
    // A link is refused where the file is there, which renaming would write over.
    writeKeyFile(file, first, linkUnlessThere);
  }
  return readKeyFile(file);
}

/** One key, kept nowhere yet. */
export const firstSigningKeys = async (): Promise<StoredKeys> => ({ keys: [await newKey()] });

async function newKey() {
  const { privateKey } = await generateKeyPair(evidenceAlgorithm, { extractable: true });
  const { kty, crv, x, y, d } = await exportJWK(privateKey);
  return storedKey.required().parse({ kty, crv, x, y, d });
}

function writeKeyFile(file: string, stored: StoredKeys, place: (from: string, to: string) => void): void {
  mkdirSync(dirname(file), { recursive: true });
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, `${JSON.stringify(stored, null, 2)}\n`, { mode: 0o600 });
  try {
    place(beside, file);
  } finally {
    rmSync(beside, { force: true });
  }
}

function linkUnlessThere(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
}

export async function serviceKeys({ keys }: StoredKeys): Promise<ServiceKeys> {
  const publicKeys = await Promise.all(keys.map(publicKeyOf));
  const [signing] = keys;
  const kid = publicKeys[0]?.kid;
  if (signing?.d === undefined || kid === undefined) {
    throw new Error('The first of the signing keys cannot sign.');
  }
  const { d, ...publicPart } = signing;
  const key = (await importJWK({ ...publicPart, d }, evidenceAlgorithm)) as CryptoKey;
  const sign = (typ: EvidenceType, text: string) =>
    new CompactSign(new TextEncoder().encode(text))
      .setProtectedHeader({ alg: evidenceAlgorithm, kid, typ })
      .sign(key);
  return { kid, sign, publicKeys };
}

async function publicKeyOf({ kty, crv, x, y }: StoredKeys['keys'][number]): Promise<PublicKey> {
  const jwk = { kty, crv, x, y };
  const kid = await calculateJwkThumbprint(jwk);
  return { kid, jwk: { ...jwk, kid, alg: evidenceAlgorithm, use: 'sig' } };
}
