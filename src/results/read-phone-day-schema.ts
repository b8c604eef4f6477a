/** The day of a phone on the wire. */
import { z } from 'zod';
import { contentSchema, goSchema, orderSchema } from '../cards/index.ts';
import { patternDrawing, placingRule, scoreSheet } from '../office/offline.ts';
import { classStates } from './class-state.ts';
import { phoneHead } from './read-phone.ts';

const id = z.uuid();
const instant = z.iso.datetime();
const version = z.int().describe('Of the draft, as in its ETag.');

const maneuver = z.strictObject({
  position: z.int(),
  name: z.string(),
  description: z.string().nullable(),
  startCone: z.string().nullable(),
  endCone: z.string().nullable(),
  gait: z.string().nullable(),
  leadOrDiagonal: z.enum(['left', 'right']).nullable(),
  coefficient: z.string(),
});

const entry = z.strictObject({
  classEntryId: id,
  backNumber: z.int(),
  goPosition: z.int().nullable().describe('Place in the order of go; null: not drawn yet.'),
  status: z.string().describe('entered, checked-in, scratched, no-show, excused or moved.'),
  videoUrl: z.string().nullable().describe('Where its go can be watched; null: nowhere.'),
});

const card = z.strictObject({
  cardId: id.describe('Of a card that is not open yet too: it follows from the seat.'),
  opened: z.boolean(),
  goes: z
    .array(z.strictObject({ classEntryId: id, version, savedAt: instant, content: goSchema }))
    .describe('Drafts; none once the card is signed.'),
  order: z
    .strictObject({ version, savedAt: instant, content: orderSchema })
    .nullable()
    .describe("The draft of the judge's own order of ties, or of her ranking."),
  signed: z
    .strictObject({
      revision: z.int(),
      contentHash: z.string(),
      signedAt: instant.describe("By the phone's clock."),
      receivedAt: instant,
      content: contentSchema,
      reason: z.string().nullable().describe('Why it was amended; null: it was not.'),
    })
    .nullable()
    .describe('The last signed revision; null: the card is not signed.'),
});

const dayClass = z.strictObject({
  classId: id,
  seatId: id,
  seatRole: z.enum(['judge', 'referee']),
  withdrawn: z.boolean().describe('The judge left the panel: her card counts no more.'),
  number: z.int(),
  name: z.string(),
  discipline: z.string(),
  division: z.string().nullable(),
  ring: z.string().nullable(),
  scheduledAt: instant.nullable(),
  state: z.enum(classStates),
  rule: placingRule.describe(
    "How the class is placed, with the panel's tie judges and the class's seed filled in.",
  ),
  panel: z
    .array(z.strictObject({ seatId: id, seatOrder: z.int() }))
    .describe('The seats that the rule may name, by their order. No names.'),
  sheet: scoreSheet,
  sheetName: z.strictObject({ code: z.string(), version: z.int(), hash: z.string() }),
  pattern: z
    .strictObject({
      name: z.string(),
      maneuvers: z.array(maneuver),
      drawing: patternDrawing.nullable().describe('null: it is not drawn.'),
    })
    .nullable(),
  entries: z.array(entry).describe('In the order of go. No names: a judge judges numbers.'),
  tiesMustBeBroken: z
    .boolean()
    .describe('true: the card is not signed while it has open ties; false: they are flagged.'),
  card,
});

export const phoneDay = z
  .strictObject({
    phone: phoneHead.extend({
      role: z.enum(['judge', 'scribe']),
      judge: z.strictObject({ personId: id, name: z.string() }),
      otherPhones: z
        .int()
        .describe('How many other phones write for the same judge: whether anything can change meanwhile.'),
    }),
    classes: z.array(dayClass).describe('One for each seat of this judge, in the order of the program.'),
  })
  .meta({ id: 'PhoneDay' });
export type PhoneDay = z.output<typeof phoneDay>;
export type PhoneDayClass = PhoneDay['classes'][number];
