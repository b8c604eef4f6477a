import { z } from 'zod';
import type { Exhibitor, Horse } from '../../platform/generated/prisma/client.ts';
import { publicNameForms } from '../public-name.ts';
import { day, id, instant } from '../schemas/common.ts';
import { nameText } from '../schemas/text.ts';
import { dayText } from '../show-time.ts';
import { publicNameFormOf } from '../shows/show-schemas.ts';
import { spokenAs } from './spoken-as.ts';

const publicNameForm = z.enum(publicNameForms);
const bornOn = day.nullable().describe('Date of birth; seen by the office only.');

const spoken = spokenAs
  .nullable()
  .describe(
    'How the name is spoken, for the announcer. Best word for word: where only the first name is public, she sees the ' +
      'first word of a note that has as many words as the name, and otherwise nothing.',
  );
const spokenHorse = spokenAs.nullable().describe('How the name is spoken, for the announcer.');

export const newExhibitor = z.strictObject({
  name: nameText,
  bornOn: bornOn.default(null),
  spokenAs: spoken.default(null),
});
export type NewExhibitor = z.infer<typeof newExhibitor>;

export const exhibitorChange = z
  .strictObject({ name: nameText.optional(), bornOn: bornOn.optional(), spokenAs: spoken.optional() })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type ExhibitorChange = z.infer<typeof exhibitorChange>;

export const exhibitorBody = z.strictObject({
  id,
  name: z.string(),
  bornOn: z.string().nullable(),
  spokenAs: z.string().nullable(),
  publicName: publicNameForm.nullable().describe('By the last consent; null: none is recorded.'),
  erasedAt: instant.nullable().describe('When the name was erased; null: it was not.'),
  version: z.int(),
});
export type ExhibitorBody = z.infer<typeof exhibitorBody>;

export const exhibitorOf = (row: Exhibitor): ExhibitorBody => ({
  id: row.id,
  name: row.name,
  bornOn: row.bornOn === null ? null : dayText(row.bornOn),
  spokenAs: row.spokenAs,
  publicName: row.publicName === null ? null : publicNameFormOf(row.publicName),
  erasedAt: row.erasedAt?.toISOString() ?? null,
  version: row.version,
});

export const newHorse = z.strictObject({
  name: nameText,
  registrationNumber: nameText.nullable().default(null).describe('Number in a breed registry.'),
  spokenAs: spokenHorse.default(null),
});
export type NewHorse = z.infer<typeof newHorse>;

export const horseChange = z.strictObject({ spokenAs: spokenHorse });
export type HorseChange = z.infer<typeof horseChange>;

export const horseBody = z.strictObject({
  id,
  name: z.string(),
  registrationNumber: z.string().nullable(),
  spokenAs: z.string().nullable(),
});
export type HorseBody = z.infer<typeof horseBody>;

export const horseOf = (row: Horse): HorseBody => ({
  id: row.id,
  name: row.name,
  registrationNumber: row.registrationNumber,
  spokenAs: row.spokenAs,
});
