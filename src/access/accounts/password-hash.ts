/**
 * Passwords are kept as argon2id (RFC 9106) with the parameters of the OWASP Password Storage Cheat Sheet: 19 MiB, two
 * passes, one lane; a salt of its own for each. A hash is never logged and never leaves the service.
 */
import { randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';

/** The package's default algorithm is argon2id, version 19; a test and a check of the database hold it to that. */
const parameters = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/**
 * The same letters typed on two kinds of keyboard may come as different code points; NFC makes them one password again,
 * as RFC 8265 (4.2.2) asks. Nothing else is changed: no trimming, no folding of case, no cutting.
 */
const asTyped = (password: string): string => password.normalize('NFC');

/** In the form `$argon2id$v=19$m=19456,t=2,p=1$salt$hash`. */
export const hashPassword = (password: string): Promise<string> => hash(asTyped(password), parameters);

let ofNobody: Promise<string> | undefined;

/**
 * Is it the password? Where there is no hash (no such account, not set up, closed) the same work is done against a
 * hash of something random, and the answer is no: time does not tell who has an account.
 */
export async function isPassword(password: string, hashed: string | null): Promise<boolean> {
  ofNobody ??= hashPassword(randomBytes(32).toString('base64'));
  const against = hashed ?? (await ofNobody);
  const fits = await verify(against, asTyped(password));
  return fits && hashed !== null;
}
