/** The placing rule of a class on the wire: the engine's `PlacingRule`, checked field by field. */
import { z } from 'zod';
import { parseDecimal } from '../../engine/numbers/exact.ts';
import type { MergeRule, PlacingRule, TieBreak } from '../../engine/placing/types.ts';

/** A number of the trade: a decimal in a text, never a JSON number. */
export const decimalText = z
  .string()
  .max(20)
  .refine((text) => parseDecimal(text) !== undefined, 'it must be a decimal in a text, like "71.5" or "-0.5"')
  .meta({ examples: ['71.5'] });

export const rounding = z.strictObject({
  places: z.int().min(0).max(9),
  mode: z.enum(['half-up', 'half-even', 'down']),
});

const discard = z.enum(['none', 'high-and-low']);
const noScore = z.enum(['zero', 'not-placed', 'mean']);
const cardTies = z.enum(['better', 'mean']);
const unlisted = z.union([z.enum(['next', 'mean']), decimalText]);

const mergeRule = z.discriminatedUnion('method', [
  z.strictObject({ method: z.literal('separate') }),
  z.strictObject({ method: z.literal('total'), discard, noScore }),
  z.strictObject({ method: z.literal('mean'), discard, noScore, round: rounding.nullable() }),
  z.strictObject({ method: z.literal('rank-sum'), cardTies, unlisted, discard }),
  z.strictObject({
    method: z.literal('place-points'),
    points: z.array(decimalText).min(1).max(200),
    unplaced: decimalText,
    cardTies,
    discard,
  }),
  z.strictObject({
    method: z.literal('majority'),
    cardTies,
    unlisted,
    equalMajorities: z.enum(['totals', 'next-places', 'average']),
  }),
  z.strictObject({ method: z.literal('two-judges-and-referee') }),
  z.strictObject({ method: z.literal('pairwise') }),
]) satisfies z.ZodType<MergeRule>;

const position = z.int().min(1).max(200);

const tieBreak = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('maneuvers'), order: z.array(position).min(1).max(200) }),
  z.strictObject({ code: z.literal('count-back') }),
  z.strictObject({ code: z.literal('form') }),
  z.strictObject({ code: z.literal('penalties'), count: z.enum(['points', 'number']) }),
  z.strictObject({
    code: z.literal('tie-judge'),
    judges: z.array(z.uuid()).max(15).describe('Seats in their order; empty: the tie order of the panel.'),
    alternate: z.boolean(),
  }),
  z.strictObject({ code: z.literal('head-to-head') }),
  z.strictObject({ code: z.literal('best-single-place') }),
  z.strictObject({ code: z.literal('most-firsts') }),
  z.strictObject({ code: z.literal('discarded') }),
  z.strictObject({ code: z.literal('run-off') }),
  z.strictObject({
    code: z.literal('draw'),
    seed: z.string().max(200).describe("What the lot is drawn from; empty: the class's own seed."),
  }),
  z.strictObject({ code: z.literal('share') }),
]) satisfies z.ZodType<TieBreak>;

export const placingRule = z
  .strictObject({
    merge: mergeRule,
    ties: z.array(tieBreak).max(20),
    afterSplit: z.enum(['go-on', 'start-again']),
    placesGiven: z.int().min(1).max(1_000).nullable(),
    rulingHolds: z.enum(['any', 'majority', 'all']).nullable(),
  })
  .meta({
    id: 'PlacingRule',
    description: "How the judges' cards become places.",
  }) satisfies z.ZodType<PlacingRule>;
