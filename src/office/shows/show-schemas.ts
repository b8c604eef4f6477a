import { z } from 'zod';
import type { Show } from '../../platform/generated/prisma/client.ts';
import { type MinorNameForm, minorNameForms, type PublicNameForm, publicNameForms } from '../public-name.ts';
import { day, id } from '../schemas/common.ts';
import { nameText } from '../schemas/text.ts';
import { dayText } from '../show-time.ts';

export const showKinds = ['official', 'practice'] as const;
export type ShowKind = (typeof showKinds)[number];

const publicNameForm = z.enum(publicNameForms);
const minorNameForm = z.enum(minorNameForms, 'it must be first-name-and-initial or back-number, never full');
const showKind = z.enum(showKinds);
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
  minorPublicName: minorNameForm
    .default('back-number')
    .describe("How a minor's name is shown where the family has not said."),
  kind: showKind
    .default('official')
    .describe('practice: nothing of it counts, and every answer says so. It never changes.'),
});
export type NewShow = z.infer<typeof newShow>;

export const showChange = z
  .strictObject({
    name: nameText.optional(),
    place: nameText.optional(),
    timeZone: timeZone.optional(),
    firstDay: day.optional(),
    lastDay: day.optional(),
    minorPublicName: minorNameForm.optional(),
  })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type ShowChange = z.infer<typeof showChange>;

export const showBody = z.strictObject({
  id,
  name: z.string().describe('With "Practice: " in front where it is one.'),
  place: z.string(),
  timeZone: z.string(),
  firstDay: z.string(),
  lastDay: z.string(),
  minorPublicName: minorNameForm,
  kind: showKind,
  practice: z.boolean(),
  rehearsalOf: id.nullable().describe('The show that this one rehearses.'),
  version: z.int(),
});
export type ShowBody = z.infer<typeof showBody>;

export const showOf = (show: Show): ShowBody => ({
  id: show.id,
  name: shownName(show),
  place: show.place,
  timeZone: show.timeZone,
  firstDay: dayText(show.firstDay),
  lastDay: dayText(show.lastDay),
  minorPublicName: minorNameFormOf(show.minorPublicName),
  kind: showKind.parse(show.kind),
  practice: isPractice(show),
  rehearsalOf: show.rehearsalOfId,
  version: show.version,
});

const practiceMark = 'Practice: ';

export const isPractice = ({ kind }: { readonly kind: string }): boolean => kind === 'practice';

/** A practice show is never taken for a real one: its name says what it is, wherever it is shown. */
export function shownName(show: Pick<Show, 'kind' | 'name'>): string {
  return isPractice(show) ? `${practiceMark}${ownName(show)}` : show.name;
}

/** Without the mark, which a form that was filled from an answer sends along. */
export function ownName({ kind, name }: Pick<Show, 'kind' | 'name'>): string {
  return isPractice({ kind }) && name.startsWith(practiceMark) ? name.slice(practiceMark.length) : name;
}

/** The database lets nothing else in. */
export function minorNameFormOf(text: string): MinorNameForm {
  return minorNameForm.parse(text);
}

/** The database lets nothing else in. */
export function publicNameFormOf(text: string): PublicNameForm {
  return publicNameForm.parse(text);
}
