/** One judge's score as it is shown: every part, numbers as texts. */
import { z } from 'zod';
import type { Exact } from '../engine/numbers/exact.ts';
import { recordText } from '../engine/numbers/number-text.ts';
import { rulingCodes, type ScoreFlag, type ScoreParts, tiers } from '../engine/sheets/types.ts';

const figure = z.string().describe('Exact: a decimal, or a fraction where it never ends.');
const rulingEffect = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('takes-points-off'), points: z.string() }),
  z.strictObject({ kind: z.literal('placed-below') }),
  z.strictObject({ kind: z.literal('not-placed') }),
  z.strictObject({ kind: z.literal('score-stands') }),
]);

const flag = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('not-seen'),
    position: z.int(),
    treatedAs: z.enum(['absent', 'left-out']),
  }),
  z.strictObject({ kind: z.literal('score-stands'), ruling: z.enum(rulingCodes) }),
  z.strictObject({ kind: z.literal('lower-limit'), sum: z.string() }),
]) satisfies z.ZodType<ScoreFlag>;

export const scoreViewSchema = z
  .strictObject({
    score: figure.nullable().describe('null: nothing is scored, or the go may not be placed.'),
    tier: z.enum(tiers).describe('Status comes before score.'),
    better: z.enum(['higher', 'lower']),
    base: figure,
    maneuvers: z.array(
      z.strictObject({
        position: z.int(),
        mark: figure.nullable().describe('null: not seen.'),
        counts: figure.nullable().describe('The mark times its coefficient; null: left out.'),
      }),
    ),
    extras: z.array(z.strictObject({ code: z.string(), mark: figure, counts: figure })),
    penalties: z.array(z.strictObject({ code: z.string(), position: z.int().nullable(), points: figure })),
    errorsOfCourse: figure,
    ruling: z.strictObject({ code: z.enum(rulingCodes), effect: rulingEffect }).nullable(),
    maximum: figure.nullable().describe('Percentage sheets: what the marks could have reached.'),
    flags: z.array(flag).describe('Not seen maneuvers, rulings whose score stands, the lower limit.'),
  })
  .meta({
    id: 'JudgeScore',
    description: "One judge's score of one go, with the parts that it is the sum of.",
  });
export type ScoreView = z.output<typeof scoreViewSchema>;

interface Scored {
  readonly score: Exact | undefined;
  readonly tier: ScoreView['tier'];
  readonly better: ScoreView['better'];
  readonly parts: ScoreParts;
  readonly flags: readonly ScoreFlag[];
}

const text = (value: Exact | undefined) => (value === undefined ? null : recordText(value));

export function scoreView({ score, tier, better, parts, flags }: Scored): ScoreView {
  return {
    score: text(score),
    tier,
    better,
    base: recordText(parts.base),
    maneuvers: parts.maneuvers.map(({ position, mark, counts }) => ({
      position,
      mark: text(mark),
      counts: text(counts),
    })),
    extras: parts.extras.map(({ code, mark, counts }) => ({
      code,
      mark: recordText(mark),
      counts: recordText(counts),
    })),
    penalties: parts.penalties.map(({ code, position, points }) => ({
      code,
      position: position ?? null,
      points: recordText(points),
    })),
    errorsOfCourse: recordText(parts.errorsOfCourse),
    ruling: parts.ruling ?? null,
    maximum: text(parts.maximum),
    flags: [...flags],
  };
}
