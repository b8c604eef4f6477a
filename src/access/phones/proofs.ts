/**
 * Proof of possession (DPoP, RFC 9449): a JWT for one request, signed by the key of the phone that sends it. A stolen
 * token without the key opens nothing, and a stolen proof opens nothing a second time or elsewhere.
 */
import { createHash } from 'node:crypto';
import {
  type CryptoKey,
  calculateJwkThumbprint,
  decodeProtectedHeader,
  errors,
  importJWK,
  jwtVerify,
} from 'jose';
import { LRUCache } from 'lru-cache';
import { z } from 'zod';
import { type Problem, problem } from '../../platform/problems/index.ts';

const algorithm = 'ES256';

/** The public half of a key of the curve P-256, with nothing else in it (RFC 7518, section 6.2.1). */
export interface PublicKey {
  readonly kty: 'EC';
  readonly crv: 'P-256';
  readonly x: string;
  readonly y: string;
}

const coordinate = z.string().regex(/^[\w-]{43}$/, 'it must be 32 bytes in base64url');

/** Other public members, such as `ext` and `key_ops`, are left out; the private one is refused. */
export const publicKeySchema = z
  .looseObject({ kty: z.literal('EC'), crv: z.literal('P-256'), x: coordinate, y: coordinate })
  .refine((key) => !('d' in key), {
    path: ['d'],
    error: 'this is the private half of the key: never send it, make a new key',
  })
  .transform(({ kty, crv, x, y }): PublicKey => ({ kty, crv, x, y }));

/** Section 4.2. `iat` must be there but is not read: the clock of a phone may be hours off, the nonce is not. */
const claims = z.object({
  jti: z.string().min(12).max(128),
  htm: z.string(),
  htu: z.string().max(2_000),
  iat: z.number(),
  nonce: z.string().optional(),
  ath: z.string().optional(),
});

/** What the proof must be for. */
export interface ProvenRequest {
  readonly method: string;
  readonly isAddress: (htu: string) => boolean;
  readonly isNonce: (nonce: string) => boolean;
  /** The token that comes with it; `undefined`: none does. */
  readonly token?: string;
}

export interface CheckedProof {
  readonly publicKey: PublicKey;
  /** RFC 7638, SHA-256. */
  readonly thumbprint: string;
  /** SHA-256 of thumbprint and `jti` as hex: what is remembered, so that it is taken once. */
  readonly hash: string;
}

/** Throws proof_missing, proof_invalid, proof_nonce_needed. Whether it was used before is for the database to say. */
export async function checkProof(
  header: string | readonly string[] | undefined,
  asked: ProvenRequest,
): Promise<CheckedProof> {
  if (header === undefined) throw refusal('proof_missing');
  if (typeof header !== 'string' || header.length > 4_096)
    throw invalid('There must be one, of ordinary length.');
  const { publicKey, thumbprint, payload } = await verified(header);
  const read = claims.safeParse(payload);
  if (!read.success) throw invalid('It needs "jti" (12 to 128 characters), "htm", "htu" and "iat".');
  mustBeFor(read.data, asked);
  return { publicKey, thumbprint, hash: sha256(`${thumbprint} ${read.data.jti}`, 'hex') };
}

async function verified(proof: string) {
  try {
    const { key, ...signer } = await signerOf(proof);
    const { payload } = await jwtVerify(proof, key, { algorithms: [algorithm], typ: 'dpop+jwt' });
    return { ...signer, payload };
  } catch (error) {
    if (error instanceof errors.JOSEError || isNoPoint(error)) throw notSigned();
    throw error;
  }
}

interface Signer {
  readonly publicKey: PublicKey;
  readonly thumbprint: string;
  readonly key: CryptoKey;
}

/**
 * By the text of the header: a phone sends the same one with each proof, and reading its key takes longer than checking
 * its signature.
 */
const signers = new LRUCache<string, Signer>({ max: 1_000 });

async function signerOf(proof: string): Promise<Signer> {
  const header = proof.slice(0, proof.indexOf('.'));
  const known = signers.get(header);
  if (known !== undefined) return known;
  const { alg, jwk } = headerOf(proof);
  if (alg !== algorithm) throw invalid(`Its "alg" must be ${algorithm}.`);
  const read = publicKeySchema.safeParse(jwk);
  if (!read.success)
    throw invalid('Its header "jwk" must be a public key of the curve P-256, and only that.');
  const publicKey = read.data;
  const key = await importJWK({ ...publicKey }, algorithm);
  if (key instanceof Uint8Array) throw new Error('a point on a curve was read as a secret');
  const signer = { publicKey, key, thumbprint: await calculateJwkThumbprint({ ...publicKey }) };
  signers.set(header, signer);
  return signer;
}

function headerOf(proof: string) {
  try {
    return decodeProtectedHeader(proof);
  } catch {
    throw notSigned();
  }
}

/** What WebCrypto says of a point that is not on the curve. */
const isNoPoint = (error: unknown): boolean => error instanceof DOMException && error.name === 'DataError';

const notSigned = () => invalid('It must be a JWT of the type dpop+jwt, signed by the key of its header.');

function mustBeFor(proof: z.infer<typeof claims>, asked: ProvenRequest): void {
  if (proof.htm !== asked.method) throw invalid('"htm" names another method.');
  if (!asked.isAddress(proof.htu)) throw invalid('"htu" names another address.');
  if (asked.token !== undefined && proof.ath !== sha256(asked.token, 'base64url')) {
    throw invalid('"ath" is not the SHA-256 of the token.');
  }
  if (proof.nonce === undefined || !asked.isNonce(proof.nonce)) throw refusal('proof_nonce_needed');
}

const sha256 = (text: string, as: 'hex' | 'base64url') => createHash('sha256').update(text).digest(as);

const invalid = (detail: string): Problem => refusal('proof_invalid', detail);

/** `WWW-Authenticate` as sections 7.1 and 9 want it. */
function refusal(code: 'proof_missing' | 'proof_invalid' | 'proof_nonce_needed', detail?: string): Problem {
  const error = code === 'proof_nonce_needed' ? 'use_dpop_nonce' : 'invalid_dpop_proof';
  return problem(code, {
    ...(detail === undefined ? {} : { detail }),
    headers: { 'www-authenticate': `DPoP error="${error}", algs="ES256"` },
  });
}
