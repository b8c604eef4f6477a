/** What is typed to sign in and to set up, and what comes back. */
import { z } from 'zod';
import { id } from '../../platform/http/id.ts';
import { duties } from '../actor.ts';
import { typedSetupCode } from './setup-code.ts';

const instant = z.iso.datetime();
export const sessionParams = z.object({ sessionId: id });

const leastCharacters = 12;
const mostCharacters = 128;
const characters = (text: string): number => [...text].length;

/** OWASP ASVS 5.0, 6.2.1, 6.2.5, 6.2.8 and 6.2.9: long, of any characters, taken as it comes. */
const newPassword = z
  .string()
  .refine(
    (text) => characters(text) >= leastCharacters,
    `it must have at least ${leastCharacters} characters`,
  )
  .refine((text) => characters(text) <= mostCharacters, `it must have at most ${mostCharacters} characters`)
  .meta({ minLength: leastCharacters, maxLength: mostCharacters })
  .describe('12 to 128 characters of any kind; one that a guesser would try early is refused.');

/** As it was typed; a longer one is nobody's. */
const typedPassword = z.string().min(1, 'it must not be empty').max(1_000, 'it must be shorter');
const totpCode = z
  .string()
  .max(20, 'it must be six digits')
  .transform((text) => text.replace(/\s/g, ''))
  .refine((text) => /^\d{6}$/.test(text), 'it must be six digits')
  .describe('The six digits that the authenticator app shows now; each is good once.');

export const typedSignIn = z.strictObject({
  signIn: z
    .string()
    .trim()
    .toLowerCase()
    .min(1, 'it must not be blank')
    .max(200, 'it must be shorter')
    .refine((text) => !/\p{C}/u.test(text), 'it must not contain control characters'),
  password: typedPassword,
  totpCode,
});
export type TypedSignIn = z.output<typeof typedSignIn>;

export const setupBody = z.strictObject({ setupCode: typedSetupCode });

export const begunSetup = z.strictObject({
  name: z.string(),
  signIn: z.string(),
  duty: z.enum(duties),
  totp: z.strictObject({
    secret: z.string().describe('In base 32, to be typed where no camera is at hand.'),
    uri: z.string().describe('What an authenticator app reads: otpauth://totp/...'),
    qrSvg: z.string().describe('The same as a QR code, SVG.'),
  }),
});
export type BegunSetup = z.output<typeof begunSetup>;

export const setupCompletion = z.strictObject({
  setupCode: typedSetupCode,
  password: newPassword,
  totpCode,
});
export type SetupCompletion = z.output<typeof setupCompletion>;

export const passwordChange = z.strictObject({ currentPassword: typedPassword, newPassword });
export type PasswordChange = z.output<typeof passwordChange>;

export const whoBody = z.strictObject({
  id,
  name: z.string(),
  signIn: z.string(),
  duty: z.enum(duties),
  wholeService: z.boolean(),
  showIds: z.array(id),
});

export const begunSession = z.strictObject({
  sessionId: id,
  token: z
    .string()
    .describe('Send it as "Authorization: Bearer <token>". Shown once; only its fingerprint is kept.'),
  endsAt: instant.describe('At the latest; earlier after twelve hours without a request.'),
});
export type BegunSession = z.output<typeof begunSession>;

export const currentSession = z.strictObject({ sessionId: id, endsAt: instant, account: whoBody });
export type CurrentSession = z.output<typeof currentSession>;

export const listedSession = z.strictObject({
  id,
  createdAt: instant,
  seenAt: instant.describe('When the last request came under it, to the minute.'),
  endsAt: instant,
  current: z.boolean().describe('Is it the one that asks?'),
});
export type ListedSession = z.output<typeof listedSession>;
