/** What everyone may look up: entries in their public form, and what they got. */
import { z } from 'zod';
import { id } from '../platform/http/id.ts';
import { classStates } from '../results/index.ts';

const instant = z.iso.datetime();

export const lookUpParams = z.object({ showId: id });
export const lookUpQuery = z.strictObject({
  words: z
    .string()
    .trim()
    .min(1, 'type a back number, or the beginning of a name')
    .max(100, 'it must have at most 100 characters')
    .describe(
      'A back number, or the beginnings of the words of a name or of a horse, in any case and accent.',
    ),
});
export const numberParams = z.object({
  showId: id,
  backNumber: z.coerce.number().int().min(1).max(99_999),
});

const show = z.strictObject({
  id,
  name: z.string(),
  place: z.string(),
  timeZone: z.string(),
  practice: z.boolean().describe('A rehearsal: nothing of it counts.'),
});

const classLine = z.strictObject({
  classId: id,
  classEntryId: id,
  number: z.int(),
  name: z.string(),
  discipline: z.string(),
  division: z.string().nullable(),
  ring: z.string().nullable(),
  scheduledAt: instant.nullable(),
  state: z.enum(classStates),
  goPosition: z.int().nullable().describe('1 goes first; null: not drawn yet.'),
  status: z.string().describe('entered, checked-in, scratched, no-show or excused.'),
  posting: z
    .strictObject({
      id,
      version: z.int(),
      state: z.enum(['provisional', 'official', 'corrected']),
      postedAt: instant,
    })
    .nullable(),
  results: z
    .array(
      z.strictObject({
        judge: z
          .strictObject({ seatId: id, seatOrder: z.int(), name: z.string() })
          .nullable()
          .describe('null: the judges are merged.'),
        place: z.int().nullable().describe('null: without a place.'),
        of: z.int().describe('So many are placed.'),
        tied: z.boolean(),
        total: z.string().nullable().describe('An exact number as text.'),
      }),
    )
    .describe('Empty until the class is posted; one, or one for each judge who is placed separately.'),
});

const entryHead = {
  backNumber: z.int(),
  name: z.string().describe('As far as it is public: a name, "Ada K.", or "No. 214".'),
  horse: z.string().nullable().describe('null: not public.'),
};

export const foundAnswer = z
  .strictObject({
    show,
    entries: z.array(z.strictObject({ ...entryHead, classes: z.array(classLine) })),
    more: z.boolean().describe('Others answer to the words too: type more of them.'),
  })
  .describe('Only what is public is looked through: a name that a family keeps private finds nothing.');

export const numberAnswer = z.strictObject({ show, ...entryHead, classes: z.array(classLine) });
