/**
 * What may be sent to a card. Only the form is checked here; whether the sheet of the class allows a mark is
 * the engine's question, and it answers for all faults of a go at once. Nothing is trimmed or changed: what a
 * judge signs is kept as she wrote it, so that a phone comes to the same fingerprint.
 */
import { z } from 'zod';
import type { CardContent } from '../engine/sheets/card-types.ts';
import { type Go, type ManeuverMark, rulingCodes } from '../engine/sheets/types.ts';

/** `"½"` and `"1e309"` come through to the engine, which says why they are no marks. */
const mark = z
  .string({ error: 'write the mark as text, such as "0.5" or "-1"' })
  .max(100)
  .refine(isPlainText, 'a mark has no control characters')
  .describe('A decimal as text: "71.5", "-0.5", "0".');
const position = z.int().min(1).max(100).describe('Position of the maneuver in the pattern, from 1.');
const remark = z
  .string()
  .min(1)
  .max(1000)
  .refine(isPlainText, 'no control characters but line ends and tabs')
  .describe("The judge's own words; kept as written.");
const code = z.string().min(1).max(60).refine(isPlainText, 'no control characters');
const errorsOfCourse = z.int('a count: 0, 1, 2 ...').min(0).max(100);

/** JSON may carry what no database text may: NUL, and halves of a surrogate pair. */
function isPlainText(text: string): boolean {
  return !/\p{Cs}|(?![\n\t])\p{Cc}/u.test(text);
}

/** One object with a refinement, not a union: so the fault of a mark is named at the mark. */
const maneuverMark = z
  .strictObject({
    position,
    mark: mark.exactOptional(),
    notSeen: z.literal(true, 'true, or left out').exactOptional(),
    remark: remark.exactOptional(),
  })
  .refine((one) => (one.mark === undefined) !== (one.notSeen === undefined), {
    error: 'a maneuver has either a "mark" (text) or "notSeen": true',
  }) as z.ZodType<ManeuverMark>;

export const goSchema: z.ZodType<Go> = z
  .strictObject({
    maneuvers: z.array(maneuverMark).max(100).exactOptional(),
    extras: z
      .record(code, mark)
      .exactOptional()
      .describe('Form and effectiveness, collective marks: by code.'),
    penalties: z
      .array(z.strictObject({ code, position: position.exactOptional() }))
      .max(200)
      .exactOptional()
      .describe('One line each time it was taken; without a position it is against the whole go.'),
    errorsOfCourse: errorsOfCourse.exactOptional(),
    mark: mark.exactOptional().describe('The one mark of the go, on a sheet with one mark.'),
    measure: mark.exactOptional().describe('Seconds, on a measured sheet.'),
    ruling: z
      .strictObject({ code: z.enum(rulingCodes), remark: remark.exactOptional() })
      .exactOptional()
      .describe('What the judge ruled about the go: off pattern, disqualified ...'),
    remark: remark.exactOptional(),
  })
  .meta({
    id: 'Go',
    description: "What a judge writes for one entry's go. What is not written is left out.",
  });

const classEntryId = z.uuid('the id of a class entry');
const groups = z.array(z.array(classEntryId).min(1).max(1000)).max(1000);
const ownOrder = groups.describe(
  'How the judge broke the ties on her card: each list one whole tie, best first.',
);
const ranking = groups.describe(
  'Rail classes: best first; entries in one inner list share the place so far.',
);

export type CardOrder = Pick<CardContent, 'ownOrder' | 'ranking'>;

export const orderSchema: z.ZodType<CardOrder> = z
  .strictObject({ ownOrder: ownOrder.exactOptional(), ranking: ranking.exactOptional() })
  .meta({
    id: 'CardOrder',
    description: "The judge's own order of tied entries, or her ranking of a rail class.",
  });

export const contentSchema: z.ZodType<CardContent> = z
  .strictObject({
    goes: z.record(classEntryId, goSchema).describe('By the id of the class entry.'),
    ownOrder: ownOrder.exactOptional(),
    ranking: ranking.exactOptional(),
  })
  .meta({ id: 'CardContent', description: 'The whole card of one judge.' });

const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in small hex');
const signedAt = z.iso
  .datetime({ offset: true, abort: true, error: 'a moment such as 2026-05-02T14:03:05Z' })
  .refine((text) => text >= '2000' && text < '2200', 'a moment of the years 2000 to 2199')
  .describe("When the judge signed, by her phone's clock.");

export const openingSchema = z.strictObject({
  seatId: z.uuid('the id of a seat of this class').toLowerCase(),
});

export const signatureSchema = z.strictObject({
  signedAt,
  contentHash: hash
    .exactOptional()
    .describe('SHA-256 over the canonical form (RFC 8785) of what the judge saw when she signed.'),
  content: contentSchema
    .exactOptional()
    .describe('The whole card, as the phone has it; left out: it is put together from the drafts.'),
});

export const amendmentSchema = z.strictObject({
  signedAt,
  reason: z.string().max(2000).refine(isPlainText, 'no control characters').exactOptional(),
  content: contentSchema,
  previousHash: hash.describe('contentHash of the revision that is amended: the last one.'),
});
