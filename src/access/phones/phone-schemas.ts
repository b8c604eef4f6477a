/** What the office asks of, and hears about, invitations and phones. */
import { z } from 'zod';
import { id } from '../../platform/http/id.ts';
import { nameText } from '../../platform/http/text.ts';
import { typedCode } from './pairing-code.ts';
import { publicKeySchema } from './proofs.ts';

export const showParams = z.object({ showId: id });
export const invitationParams = z.object({ showId: id, invitationId: id });
export const phoneParams = z.object({ showId: id, phoneId: id });

export const phoneRoles = ['judge', 'scribe', 'gate'] as const;
export type PhoneRole = (typeof phoneRoles)[number];

/** As it is stored; the database holds no other. */
export const roleOf = (stored: string): PhoneRole => z.enum(phoneRoles).parse(stored);

const label = nameText.describe('What it is for, e.g. "Ring 2 gate". No names of minors.');
const minutes = z
  .int()
  .min(1)
  .max(8 * 60)
  .default(30)
  .describe('How long the code is good for. Short is safe: longer than a show day it cannot be.');
const personId = id.describe('The judge; for a scribe, the judge that she writes for.');

export const newInvitation = z.discriminatedUnion('role', [
  z.strictObject({ role: z.literal('judge'), personId, label: label.optional(), minutes }),
  z.strictObject({ role: z.literal('scribe'), personId, label: label.optional(), minutes }),
  z.strictObject({ role: z.literal('gate'), label: label.optional(), minutes }),
]);
export type NewInvitation = z.output<typeof newInvitation>;

const instant = z.iso.datetime();
const invited = { id, role: z.enum(phoneRoles), personId: id.nullable(), label: z.string().nullable() };

export const madeInvitation = z.strictObject({
  ...invited,
  code: z.string().describe('To be read aloud, like XK7P-4M2Q. Shown once; it is not kept.'),
  link: z
    .string()
    .describe('Opens the page that pairs a phone. The code stands behind the #, which no log hears.'),
  qrSvg: z.string().describe('The link as a QR code, SVG.'),
  endsAt: instant,
});
export type MadeInvitation = z.output<typeof madeInvitation>;

export const invitationStates = ['open', 'used', 'revoked', 'ended'] as const;

export const listedInvitation = z.strictObject({
  ...invited,
  personName: z.string().nullable(),
  state: z.enum(invitationStates),
  createdBy: id.describe('The account of the office.'),
  createdAt: instant,
  endsAt: instant,
  phoneId: id.nullable().describe('The phone that took it up.'),
});
export type ListedInvitation = z.output<typeof listedInvitation>;

export const listedPhone = z.strictObject({
  ...invited,
  personName: z.string().nullable(),
  thumbprint: z.string().describe('Of its public key (RFC 7638).'),
  invitationId: id.nullable().describe('null: it came with an archive and is no phone of this service.'),
  pairedAt: instant,
  revokedAt: instant.nullable(),
  revokedWhy: z.string().nullable(),
});
export type ListedPhone = z.output<typeof listedPhone>;

export const revocationQuery = z.strictObject({
  why: nameText.describe('Why, e.g. "lost" or "the day is over".'),
});

export const pairingBody = z.strictObject({
  code: typedCode.describe('As it was read aloud, like XK7P-4M2Q; small letters and blanks do not matter.'),
  publicKey: publicKeySchema.describe('Public half of a key of the curve P-256 that the phone made, as JWK.'),
});

export const pairedPhone = z
  .strictObject({ ...invited, showId: id, thumbprint: z.string(), pairedAt: instant })
  .meta({ id: 'PairedPhone' });
export type PairedPhone = z.output<typeof pairedPhone>;

export const phoneTokenBody = z.strictObject({
  accessToken: z
    .string()
    .describe('Send it as "Authorization: DPoP <token>", with a proof for each request.'),
  tokenType: z.literal('DPoP'),
  endsAt: instant,
  endsInSeconds: z.int().describe('The same for a phone whose clock is wrong.'),
});
