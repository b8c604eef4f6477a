/**
 * What may be sent to a card. Only the form is checked here; whether the sheet of the class allows a mark is
 * the engine's question, and it answers for all faults of a go at once. Nothing is trimmed or changed: what a
 * judge signs is kept as she wrote it, so that a phone comes to the same fingerprint.
 */
import { z } from 'zod';
import type { CardContent } from '../engine/sheets/card-types.ts';
import { type Go, type ManeuverMark, rulingCodes } from '../engine/sheets/types.ts';
import { type SignedCard, signedCardForm } from '../evidence/index.ts';

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
  .datetime({
    precision: 3,
    abort: true,
    error: 'a moment in UTC with milliseconds: 2026-05-02T14:03:05.000Z',
  })
  .refine((text) => text >= '2000' && text < '2200', 'a moment of the years 2000 to 2199');

export const openingSchema = z.strictObject({
  seatId: z.uuid('the id of a seat of this class').toLowerCase(),
});

/** The form of what a phone signs; whether the sheet allows the marks is the engine's question. */
export const signedCardSchema: z.ZodType<SignedCard> = z
  .strictObject({
    form: z.literal(signedCardForm),
    showId: z.uuid(),
    classId: z.uuid(),
    seatId: z.uuid(),
    cardId: z.uuid(),
    sheet: z.strictObject({ code: z.string().max(60), version: z.int().min(1), hash }),
    revision: z.int().min(1).describe('1 as first signed, 2 for the first amendment ...'),
    previousHash: hash.nullable().describe('contentHash of the revision that it amends: the last one.'),
    reason: z
      .string()
      .max(2000)
      .refine(isPlainText, 'no control characters')
      .nullable()
      .describe('Why it is amended.'),
    signedAt: signedAt.describe("By the phone's clock."),
    content: contentSchema,
  })
  .meta({
    id: 'SignedCardStatement',
    description: 'The payload of a signed card, in its canonical form (RFC 8785).',
  });

/** Twice a card of 300 goes with twenty marks each, in base64. */
const longestJws = 1_000_000;

export const signatureSchema = z.strictObject({
  jws: z
    .string()
    .max(longestJws)
    .regex(/^[\w-]+\.[\w-]+\.[\w-]+$/, 'a JWS in compact form: three parts with dots between them')
    .describe(
      'Compact JWS (RFC 7515), ES256 by the key of this phone, typ ringledger-card+jws, kid the thumbprint of the key; ' +
        'its payload is a SignedCardStatement in canonical form.',
    ),
});
