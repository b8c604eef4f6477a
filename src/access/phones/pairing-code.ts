/**
 * The code of an invitation, short enough to be read aloud over the rail: `XK7P-4M2Q`.
 *
 * Eight digits of Crockford's base 32 (https://www.crockford.com/base32.html), which has no I, L, O and U: 5 bits
 * each, drawn by the system's generator, so 40 bits, one of 2^40 = 1,099,511,627,776. With 100 codes open at once and
 * ten tries a minute from one address (`slow-guesses.ts`), 30 minutes of guessing find one with a chance of
 * 300 x 100 / 2^40, about 1 in 37 million; from a thousand addresses at once about 1 in 37,000.
 */
import { createHmac, randomInt } from 'node:crypto';
import { z } from 'zod';
import { keyFor } from './derived-key.ts';

const digits = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const codeLength = 8;

/** A new code, as it is written: `XK7P-4M2Q`. */
export function drawCode(): string {
  const drawn = Array.from({ length: codeLength }, () => digits[randomInt(digits.length)] ?? '').join('');
  return `${drawn.slice(0, 4)}-${drawn.slice(4)}`;
}

/**
 * A code as someone typed it, as it is written. Small letters, blanks and dashes do not matter, and as Crockford says
 * an I or L is read as 1, an O as 0. A U is no digit, so it was misread: refused.
 */
export const typedCode = z
  .string()
  .max(40, 'it must be a code like XK7P-4M2Q')
  .transform((text) => text.toUpperCase().replace(/[\s-]/g, '').replace(/[IL]/g, '1').replaceAll('O', '0'))
  .refine((text) => text.length === codeLength && [...text].every((digit) => digits.includes(digit)), {
    error: 'it must be a code like XK7P-4M2Q: eight letters and digits, no U',
  })
  .transform((text) => `${text.slice(0, 4)}-${text.slice(4)}`);

/**
 * What is kept of a code: HMAC-SHA-256 under a key that is not in the database, as hex. A plain hash of 40 bits would be
 * tried through within minutes by whoever reads the table.
 */
export function hashOfCode(tokenKey: Uint8Array, code: string): string {
  return createHmac('sha256', keyFor(tokenKey, 'pairing code')).update(code).digest('hex');
}
