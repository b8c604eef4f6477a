/** Paper cards as they are asked for and shown. */
import { z } from 'zod';
import { wording } from '../../office/index.ts';
import { id } from '../../platform/http/id.ts';
import { contentSchema } from '../card-schemas.ts';
import { cardParts } from './entry-differences.ts';

export const classParams = z.object({ classId: id });
export const paperCardParams = z.object({ paperCardId: id });

export const takingUpSchema = z.strictObject({
  seatId: z.uuid('the id of a seat of this class').toLowerCase(),
  reason: wording
    .exactOptional()
    .describe('Why the signed card changes (then it is needed), or why the card comes on paper.'),
  previousHash: z
    .string()
    .regex(/^[0-9a-f]{64}$/, 'a SHA-256 in small hex')
    .exactOptional()
    .describe('contentHash of the last revision, where the card is signed already: the paper amends it.'),
});

export const withdrawalSchema = z.strictObject({ reason: wording });

const text = z.string().nullable().describe('null: nothing stands there.');

export const entryDifferenceSchema = z
  .strictObject({
    classEntryId: z.string(),
    backNumber: z.int().nullable(),
    part: z
      .enum(cardParts)
      .describe(
        'The field: a maneuver with its mark or "not seen", an extra mark, how often a penalty was taken, the place in a ranking, the place within a tie ...',
      ),
    position: z.int().nullable().describe('Position of the maneuver, where the field belongs to one.'),
    code: z.string().nullable().describe('Of the extra mark or the penalty.'),
    mine: text,
    other: text,
  })
  .meta({ id: 'PaperEntryDifference', description: 'Where the two who typed one paper card differ.' });

export const photoSchema = z
  .strictObject({
    paperCardId: z.string(),
    hash: z.string().describe('SHA-256 of the picture as it is kept.'),
    mediaType: z.literal('image/jpeg'),
    width: z.int(),
    height: z.int(),
    storedBy: z.string().describe('The account.'),
    storedAt: z.string(),
  })
  .meta({ id: 'PaperPhoto' });

export const paperCardSchema = z
  .strictObject({
    id: z.string(),
    classId: z.string(),
    seatId: z.string(),
    cardId: z.string(),
    revision: z.int().describe('Which revision of the card it becomes when it is accepted.'),
    previousHash: z
      .string()
      .nullable()
      .describe('contentHash of the revision that it amends; null: the first.'),
    reason: z.string().nullable().describe('Why the signed card changes, or why it came on paper.'),
    status: z.enum(['open', 'accepted', 'withdrawn']),
    overtaken: z.boolean().describe('Open, and the card was signed or amended since: withdraw it.'),
    withdrawnWhy: z.string().nullable(),
    createdBy: z.string().describe('The account that took it up.'),
    createdAt: z.string(),
    entries: z
      .array(z.strictObject({ accountId: z.string(), version: z.int(), enteredAt: z.string() }))
      .describe('Who has entered, and when last: never what.'),
    mine: z
      .strictObject({ content: contentSchema, version: z.int() })
      .nullable()
      .describe('What you entered yourself, in one spelling (1.50 is 1.5). The ETag is its version.'),
    differences: z
      .array(entryDifferenceSchema)
      .nullable()
      .describe('For the two who entered, once both have and they differ; null otherwise.'),
    photo: photoSchema.nullable(),
  })
  .meta({ id: 'PaperCard' });
export type PaperCardView = z.output<typeof paperCardSchema>;
