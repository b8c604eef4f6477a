/**
 * The one-time code with which an account is set up: 25 digits of 5 bits, 125 bits drawn by the system's generator
 * (OWASP ASVS 5.0, 6.4.1). Written `7K2QM-...` in five groups; small letters, blanks and dashes do not matter.
 */
import { createHash } from 'node:crypto';
import { z } from 'zod';
import { drawSpokenCode, readSpokenCode } from '../spoken-code.ts';

const form = { groups: 5, groupLength: 5 };

/** Long enough to be handed over, too short to lie around. */
export const setupHours = 24;

export const drawSetupCode = (): string => drawSpokenCode(form);

/** As it was typed; it comes out without dashes. */
export const typedSetupCode = z
  .string()
  .max(100, 'it must be a code of 25 letters and digits')
  .refine((text) => readSpokenCode(text, form) !== undefined, {
    error: 'it must be a code of 25 letters and digits',
  })
  .transform((text) => (readSpokenCode(text, form) ?? text).replaceAll('-', ''));

/** What is kept of it. 125 bits cannot be tried through, so a plain hash will do. */
export const hashOfSetupCode = (code: string): string =>
  createHash('sha256').update(code.replaceAll('-', '')).digest('hex');
