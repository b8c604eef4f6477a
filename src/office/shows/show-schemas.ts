import { z } from 'zod';
import type { Show } from '../../platform/generated/prisma/client.ts';
import { type PublicNameForm, publicNameForms } from '../public-name.ts';
import { day, id } from '../schemas/common.ts';
import { nameText } from '../schemas/text.ts';
import { dayText } from '../show-time.ts';

const publicNameForm = z.enum(publicNameForms);
const timeZone = z
  .string()
  .min(1)
  .max(64)
  .meta({ examples: ['America/Chicago'] });

export const newShow = z.strictObject({
  name: nameText,
  place: nameText,
  timeZone: timeZone.describe('IANA name of the clock at the show grounds.'),
  firstDay: day,
  lastDay: day,
  minorPublicName: publicNameForm
    .default('first-name-and-initial')
    .describe("How a minor's name is shown where the family has not said."),
});
export type NewShow = z.infer<typeof newShow>;

export const showChange = z
  .strictObject({
    name: nameText.optional(),
    place: nameText.optional(),
    timeZone: timeZone.optional(),
    firstDay: day.optional(),
    lastDay: day.optional(),
    minorPublicName: publicNameForm.optional(),
  })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type ShowChange = z.infer<typeof showChange>;

export const showBody = z.strictObject({
  id,
  name: z.string(),
  place: z.string(),
  timeZone: z.string(),
  firstDay: z.string(),
  lastDay: z.string(),
  minorPublicName: publicNameForm,
  version: z.int(),
});
export type ShowBody = z.infer<typeof showBody>;

export const showOf = (show: Show): ShowBody => ({
  id: show.id,
  name: show.name,
  place: show.place,
  timeZone: show.timeZone,
  firstDay: dayText(show.firstDay),
  lastDay: dayText(show.lastDay),
  minorPublicName: publicNameFormOf(show.minorPublicName),
  version: show.version,
});

/** The database lets nothing else in. */
export function publicNameFormOf(text: string): PublicNameForm {
  return publicNameForm.parse(text);
}
