import { z } from 'zod';
import type { ExhibitorConsent } from '../../platform/generated/prisma/client.ts';
import { consentGivers, publicNameForms } from '../public-name.ts';
import { day, id, instant } from '../schemas/common.ts';
import { dayText } from '../show-time.ts';

export const consentWays = ['signed-form', 'e-mail', 'in-person'] as const;

const fields = {
  publicName: z
    .enum(publicNameForms)
    .describe('In which form the name may be public. To take a consent back, record back-number.'),
  givenBy: z.enum(consentGivers).describe('Whose word it is. For someone under 18 never the exhibitor.'),
  givenOn: day.describe('On which day it was given, by the calendar of the show grounds.'),
  how: z.enum(consentWays),
};

export const newConsent = z.strictObject(fields);
export type NewConsent = z.infer<typeof newConsent>;

export const consentBody = z.strictObject({
  id,
  exhibitorId: id,
  ...fields,
  recordedBy: id.describe('The account of the office that recorded it.'),
  recordedAt: instant,
});
export type ConsentBody = z.infer<typeof consentBody>;

const { publicName, givenBy, how } = fields;

/** The database lets nothing else in. */
export const consentOf = (row: ExhibitorConsent): ConsentBody => ({
  id: row.id,
  exhibitorId: row.exhibitorId,
  publicName: publicName.parse(row.publicName),
  givenBy: givenBy.parse(row.givenBy),
  givenOn: dayText(row.givenOn),
  how: how.parse(row.how),
  recordedBy: row.recordedBy,
  recordedAt: row.recordedAt.toISOString(),
});
