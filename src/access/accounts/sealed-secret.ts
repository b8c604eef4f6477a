/**
 * The secret of a second factor as it is kept: AES-256-GCM under a key that is not in the database, so that whoever
 * reads the table cannot make codes. The account is sealed in with it: a secret moved to another account cannot be opened.
 */
import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';
import { keyFor } from '../derived-key.ts';

const algorithm = 'aes-256-gcm';
const nonceBytes = 12;
const tagBytes = 16;

interface Seal {
  /** The service's secret (TOKEN_SECRET), from which the key is derived. */
  readonly tokenKey: Uint8Array;
  readonly accountId: string;
}

/** Base64url of nonce, tag and enciphered secret. */
export function seal(secret: string, { tokenKey, accountId }: Seal): string {
  const nonce = randomBytes(nonceBytes);
  const cipher = createCipheriv(algorithm, keyFor(tokenKey, 'second factor'), nonce);
  cipher.setAAD(Buffer.from(accountId));
  const enciphered = Buffer.concat([cipher.update(secret, 'utf8'), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), enciphered]).toString('base64url');
}

/** `undefined`: it was altered, is another account's, or TOKEN_SECRET is no longer the one that it was sealed under. */
export function unseal(sealed: string, { tokenKey, accountId }: Seal): string | undefined {
  const bytes = Buffer.from(sealed, 'base64url');
  const nonce = bytes.subarray(0, nonceBytes);
  const tag = bytes.subarray(nonceBytes, nonceBytes + tagBytes);
  if (tag.length < tagBytes) return undefined;
  const options = { authTagLength: tagBytes };
  const decipher = createDecipheriv(algorithm, keyFor(tokenKey, 'second factor'), nonce, options);
  decipher.setAAD(Buffer.from(accountId));
  decipher.setAuthTag(tag);
  try {
    const opened = [decipher.update(bytes.subarray(nonceBytes + tagBytes)), decipher.final()];
    return Buffer.concat(opened).toString('utf8');
  } catch {
    return undefined;
  }
}
