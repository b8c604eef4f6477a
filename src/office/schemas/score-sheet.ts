/** A score sheet on the wire: the engine's `ScoreSheet`, checked field by field. */
import { z } from 'zod';
import { type RulingEffect, rulingCodes, type ScoreSheet } from '../../engine/sheets/types.ts';
import { decimalText, rounding } from './placing-rule.ts';
import { nameText, wording } from './text.ts';

/** Stable short name of a sheet or of something on it: `form-and-effectiveness`. */
export const code = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'it must be small letters, digits and single hyphens');

const markRange = z.strictObject({ low: decimalText, high: decimalText, step: decimalText });

const extraMark = z.strictObject({ code, label: nameText, range: markRange, coefficient: decimalText });

const penalty = z.strictObject({
  code,
  label: nameText,
  points: decimalText,
  weight: z.enum(['minor', 'major', 'severe']),
});

const rulingEffect = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('takes-points-off'), points: decimalText }),
  z.strictObject({ kind: z.literal('placed-below') }),
  z.strictObject({ kind: z.literal('not-placed') }),
  z.strictObject({ kind: z.literal('score-stands') }),
]) satisfies z.ZodType<RulingEffect>;

const head = {
  code,
  version: z.int().min(1).max(1_000_000),
  title: nameText,
  source: wording.describe('Rule book and section, or "common practice, no source".'),
  rulings: z.partialRecord(z.enum(rulingCodes), rulingEffect),
};

const notSeen = z.enum(['absent', 'left-out']);
const penalties = z.array(penalty).max(200);
const extras = z.array(extraMark).max(50);

export const scoreSheet = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('pattern'),
      ...head,
      base: decimalText,
      maneuver: markRange,
      extras,
      penalties,
      notSeen,
      lowest: decimalText.nullable(),
      totalRange: z.strictObject({ low: decimalText, high: decimalText }).nullable(),
    }),
    z.strictObject({
      kind: z.literal('percentage'),
      ...head,
      maneuver: markRange,
      collectives: extras,
      errorsOfCourse: z.strictObject({
        takes: z.array(decimalText).max(10),
        from: z.enum(['points', 'percentage']),
        cumulative: z.boolean(),
      }),
      notSeen,
      roundJudge: rounding.nullable(),
    }),
    z.strictObject({ kind: z.literal('one-mark'), ...head, mark: markRange, penalties }),
    z.strictObject({ kind: z.literal('places'), ...head, first: z.int().min(1).max(1_000) }),
    z.strictObject({
      kind: z.literal('measured'),
      ...head,
      unit: z.literal('seconds'),
      measure: markRange,
      penalties,
    }),
  ])
  .meta({
    id: 'ScoreSheet',
    description: 'What may be marked, and what it does.',
  }) satisfies z.ZodType<ScoreSheet>;
