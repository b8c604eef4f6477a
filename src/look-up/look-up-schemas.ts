/** What everyone may look up: entries in their public form, and what they got. */
import { z } from 'zod';
import { patternBody } from '../office/index.ts';
import { id } from '../platform/http/id.ts';
import { classStates, entryAnswer } from '../results/index.ts';

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
  publishCards: z
    .enum(['never', 'with-posting', 'when-official'])
    .describe("When exhibitors see the judges' cards."),
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

const { results, rule, sheet, history } = entryAnswer.shape;
const { goes, ...card } = entryAnswer.shape.cards.element.shape;
const { place, score, remarks, marks } = goes.element.shape;

/** What is posted of one entry in one class. */
const postedOfEntry = z.strictObject({
  rule,
  results,
  sheet,
  history,
  cards: z
    .array(z.strictObject({ ...card, go: z.strictObject({ place, score, remarks, marks }).nullable() }))
    .describe('In the order of the panel; empty where the show publishes no cards, or not yet.'),
});

export const numberResultsAnswer = z
  .strictObject({
    show,
    ...entryHead,
    classes: z.array(
      classLine.omit({ results: true }).extend({
        posted: postedOfEntry.nullable().describe('null: not posted, or the entry is not in what is posted.'),
        pattern: patternBody
          .nullable()
          .describe('null: there is none, or the class is neither drawn nor called.'),
      }),
    ),
  })
  .describe('Everything that a family may read of one entry of a show, in one answer.');
