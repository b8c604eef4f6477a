/**
 * The code of an invitation, short enough to be read aloud over the rail: `XK7P-4M2Q`.
 *
 * Eight digits of 5 bits, so 40 bits: one of 2^40 = 1,099,511,627,776. With 100 codes open at once and ten tries a
 * minute from one address (`slow-guesses.ts`), 30 minutes of guessing find one with a chance of 300 x 100 / 2^40, about 1
 * in 37 million; from a thousand addresses at once about 1 in 37,000.
 */
import { createHmac } from 'node:crypto';
import { z } from 'zod';
import { keyFor } from '../derived-key.ts';
import { drawSpokenCode, readSpokenCode } from '../spoken-code.ts';

const form = { groups: 2, groupLength: 4 };

/** A new code, as it is written: `XK7P-4M2Q`. */
export const drawCode = (): string => drawSpokenCode(form);

/** A code as someone typed it; it comes out as it is written. */
export const typedCode = z
  .string()
  .max(40, 'it must be a code like XK7P-4M2Q')
  .refine((text) => readSpokenCode(text, form) !== undefined, {
    error: 'it must be a code like XK7P-4M2Q: eight letters and digits, no U',
  })
  .transform((text) => readSpokenCode(text, form) ?? text);

/**
 * What is kept of a code: HMAC-SHA-256 under a key that is not in the database, as hex. A plain hash of 40 bits would be
 * tried through within minutes by whoever reads the table.
 */
export function hashOfCode(tokenKey: Uint8Array, code: string): string {
  return createHmac('sha256', keyFor(tokenKey, 'pairing code')).update(code).digest('hex');
}
