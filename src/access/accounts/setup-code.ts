/**
 * The one-time code with which an account is set up: 25 digits of Crockford's base 32
 * (https://www.crockford.com/base32.html), 125 bits drawn by the system's generator (OWASP ASVS 5.0, 6.4.1). Written
 * `7K2QM-...` in five groups; small letters, blanks and dashes do not matter.
 */
import { createHash, randomInt } from 'node:crypto';
import { z } from 'zod';

const digits = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const groups = 5;
const groupLength = 5;
const codeLength = groups * groupLength;

/** Long enough to be handed over, too short to lie around. */
export const setupHours = 24;

export function drawSetupCode(): string {
  const drawGroup = () =>
    Array.from({ length: groupLength }, () => digits[randomInt(digits.length)] ?? '').join('');
  return Array.from({ length: groups }, drawGroup).join('-');
}

/** As it was typed; I and L are read as 1, O as 0. */
export const typedSetupCode = z
  .string()
  .max(100, 'it must be a code of 25 letters and digits')
  .transform((text) => text.toUpperCase().replace(/[\s-]/g, '').replace(/[IL]/g, '1').replaceAll('O', '0'))
  .refine((text) => text.length === codeLength && [...text].every((digit) => digits.includes(digit)), {
    error: 'it must be a code of 25 letters and digits',
  });

/** What is kept of it. 125 bits cannot be tried through, so a plain hash will do. */
export const hashOfSetupCode = (code: string): string =>
  createHash('sha256').update(code.replaceAll('-', '')).digest('hex');
