/** Names and wordings as people write them: any script, kept in Unicode's composed form (NFC). */
import { z } from 'zod';

/**
 * Control characters, the marks that turn the direction of what follows (a name with one in it would turn
 * the rest of a start list around), line separators and halves of a surrogate pair. Joiners, which Persian,
 * Hindi and others need within words, are allowed.
 */
const unprintable = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF]/u;
/** The same, but a wording may have lines. */
const unprintableInWording = /(?![\n\t])[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF]/u;

const characters = (text: string) => [...text].length;

/** A name: 1 to 200 characters after trimming, no control characters; NFC. */
export const nameText = z
  .string()
  .trim()
  .normalize('NFC')
  .min(1, 'it must not be blank')
  .refine((text) => characters(text) <= 200, 'it must have at most 200 characters')
  .refine((text) => !unprintable.test(text), 'it must not contain control characters')
  .meta({ maxLength: 200 });

/** A reason, a description: 1 to 2,000 characters after trimming; NFC. */
export const wording = z
  .string()
  .trim()
  .normalize('NFC')
  .min(1, 'it must not be blank')
  .refine((text) => characters(text) <= 2_000, 'it must have at most 2,000 characters')
  .refine((text) => !unprintableInWording.test(text), 'it must not contain control characters')
  .meta({ maxLength: 2_000 });
