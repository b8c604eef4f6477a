import { DateTime } from 'luxon';
import { z } from 'zod';
import { day, id, instant } from '../schemas/common.ts';
import { placingRule } from '../schemas/placing-rule.ts';
import { nameText } from '../schemas/text.ts';
import { sheetRef } from '../sheets/sheet-schemas.ts';

const publishCards = z.enum(['never', 'with-posting', 'when-official']);
export type PublishCards = z.infer<typeof publishCards>;

const number = z.int().min(1).max(99_999).describe('Class number of the program.');
const wrongMoment = 'it must be a date and time: 2026-08-15T09:00 or 2026-08-15T09:00-05:00';
const moment = z
  .string()
  .regex(
    /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,3})?)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)?$/,
    wrongMoment,
  )
  .refine((text) => DateTime.fromISO(text).isValid, wrongMoment)
  .describe("By the show's own clock (2026-08-15T09:00), or with an offset (2026-08-15T09:00-05:00).");

export const newClass = z.strictObject({
  number,
  name: nameText,
  discipline: nameText,
  division: nameText.nullable().default(null),
  youth: z.boolean().default(false),
  sheet: sheetRef,
  patternId: id.nullable().default(null),
  placingRule,
  placesGiven: z
    .int()
    .min(1)
    .max(1_000)
    .nullable()
    .default(null)
    .describe('How many places are given; null: all.'),
  ringId: id.nullable().default(null),
  day: day.nullable().default(null),
  scheduledAt: moment.nullable().default(null),
  publishCards: publishCards.default('with-posting').describe("When exhibitors see the judges' cards."),
});
export type NewClass = z.infer<typeof newClass>;

export const classChange = z
  .strictObject({
    number: number.optional(),
    name: nameText.optional(),
    discipline: nameText.optional(),
    division: nameText.nullable().optional(),
    youth: z.boolean().optional(),
    sheet: sheetRef.optional(),
    patternId: id.nullable().optional(),
    placingRule: placingRule.optional(),
    placesGiven: z.int().min(1).max(1_000).nullable().optional(),
    ringId: id.nullable().optional(),
    day: day.nullable().optional(),
    scheduledAt: moment.nullable().optional(),
    publishCards: publishCards.optional(),
  })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type ClassChange = z.infer<typeof classChange>;

export const classBody = z.strictObject({
  id,
  showId: id,
  number: z.int(),
  name: z.string(),
  discipline: z.string(),
  division: z.string().nullable(),
  youth: z.boolean(),
  sheet: z.strictObject({ code: z.string(), version: z.int() }),
  patternId: id.nullable(),
  placingRule,
  placesGiven: z.int().nullable(),
  ringId: id.nullable(),
  day: z.string().nullable(),
  scheduledAt: instant.nullable(),
  scheduledAtShow: z
    .string()
    .nullable()
    .describe('The same by the clock of the show grounds, with its offset.'),
  publishCards,
  drawSeed: z.string().describe('Every lot of the class is drawn from it; it never changes.'),
  status: z.enum(['open', 'cancelled', 'combined']),
  openedAt: instant.nullable().describe('When its first card was opened; null: nothing is written yet.'),
  calledAt: instant.nullable(),
  version: z.int(),
});
export type ClassBody = z.infer<typeof classBody>;
