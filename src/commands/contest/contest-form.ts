/** The contest form: one class with its cards in one JSON file, as published cases are kept. */
import { z } from 'zod';
import { parseDecimal } from '../../engine/numbers/exact.ts';
import { rulingCodes } from '../../engine/sheets/types.ts';
import { repeatedName } from './names-once.ts';

/** A decimal as a string or a JSON number; read back as the canonical string. */
const decimal = z
  .union([z.string(), z.number()], { error: 'a decimal is needed, such as "71.5"' })
  .transform((value) => (Object.is(value, -0) ? '-0' : String(value).replace(/^\+(?=\d)/, '')))
  .refine((text) => parseDecimal(text) !== undefined, { error: 'a decimal is needed, such as "71.5"' });

const positive = decimal.refine((text) => (parseDecimal(text)?.compare(0) ?? 0) > 0, {
  error: 'it must be more than 0',
});
const notNegative = decimal.refine((text) => (parseDecimal(text)?.compare(0) ?? -1) >= 0, {
  error: 'it may not be less than 0',
});

const entry = z
  .union([z.string(), z.number().int()], { error: 'an entry is needed, such as "214"' })
  .transform(String)
  .refine((text) => text.trim() !== '', { error: 'an entry has no name' });

const rulingEffect = z.union([
  z.string(),
  z.number(),
  z.looseObject({ effect: z.string().optional(), kind: z.string().optional(), points: decimal.optional() }),
]);

const limits = z.union([
  z.tuple([decimal, decimal]),
  z.looseObject({
    low: decimal.optional(),
    high: decimal.optional(),
    min: decimal.optional(),
    max: decimal.optional(),
  }),
]);

/** What a contest may say of its sheet; all of it has the defaults of a pattern class (base 70, -3 to 3 by 0.5). */
const sheet = z.looseObject({
  base: decimal.default('70'),
  step: positive.default('0.5'),
  limits: limits.optional(),
  low: decimal.optional(),
  high: decimal.optional(),
  min: decimal.optional(),
  max: decimal.optional(),
  form: z
    .looseObject({
      limits: limits.optional(),
      low: decimal.optional(),
      high: decimal.optional(),
      step: positive.optional(),
    })
    .optional(),
  lowest: decimal.nullable().optional(),
  notSeen: z.enum(['absent', 'left-out']).default('left-out'),
  rulings: z.record(z.string(), rulingEffect).default({}),
});

const notSeenMark = z.union([z.null(), z.literal('ns'), z.literal('not-seen'), z.literal('not seen')]);

const go = z.strictObject({
  maneuvers: z.array(z.union([notSeenMark, decimal])).default([]),
  penalties: z.array(positive).default([]),
  form: decimal.optional(),
  ruling: z.preprocess(
    (value) =>
      typeof value === 'string'
        ? value
            .trim()
            .toLowerCase()
            .replace(/[\s_]+/g, '-')
        : value,
    z.enum(rulingCodes).nullish(),
  ),
});

/** A card may tell more of itself (who the judge was, where she sat); only a referee's seat changes anything. */
const card = z
  .looseObject({
    judge: z
      .union([z.string(), z.number()], { error: 'a judge needs a name' })
      .transform(String)
      .pipe(z.string().trim().min(1, { error: 'a judge needs a name' })),
    seat: z
      .string()
      .transform((seat) => (seat.trim().toLowerCase() === 'referee' ? 'referee' : 'judge'))
      .optional(),
    weight: positive.default('1'),
    ranking: z.array(z.union([entry, z.array(entry).min(1)])).optional(),
    places: z.record(z.string(), positive).optional(),
    scores: z.record(z.string(), decimal).optional(),
    sheets: z.record(z.string(), go).optional(),
  })
  .refine((one) => ['ranking', 'places', 'scores', 'sheets'].filter((key) => key in one).length === 1, {
    error: 'a card states one of ranking, places, scores, sheets',
  });

const methods = [
  'total',
  'mean',
  'rank-sum',
  'place-points',
  'majority',
  'two-judges-and-referee',
  'pairwise',
  'separate',
] as const;

const tieBreaks = [
  'tie-judge',
  'best-single-place',
  'most-firsts',
  'head-to-head',
  'maneuvers',
  'count-back',
  'form',
  'penalties',
  'discarded',
  'draw',
] as const;

const placing = z.strictObject({
  method: z.enum(methods, { error: `it must be one of ${methods.join(', ')}` }),
  ties: z.array(z.enum(tieBreaks, { error: `it must be one of ${tieBreaks.join(', ')}` })).default([]),
  discard: z.enum(['none', 'high-and-low']).default('none'),
  points: z.array(decimal).optional(),
  unplaced: decimal.default('0'),
  places: z.number().int().positive().optional(),
  cardTies: z.enum(['better', 'mean']).default('better'),
  unlisted: z
    .union([z.literal('next'), z.literal('mean'), notNegative], {
      error: 'it must be "next", "mean" or a number',
    })
    .default('next'),
  tieJudges: z.array(z.string()).optional(),
  maneuverOrder: z.array(z.number().int().positive()).optional(),
  seed: z.union([z.string(), z.number()]).transform(String).optional(),
  sheet: sheet.optional(),
  equalMajorities: z.enum(['totals', 'next-places', 'average']).default('totals'),
  afterSplit: z.enum(['go-on', 'start-again']).default('go-on'),
  noScore: z.enum(['zero', 'not-placed', 'mean']).default('zero'),
  rulingHolds: z.enum(['any', 'majority', 'all']).optional(),
});

/** Beside `placing` and `cards` a file may tell more of itself (title, source, expected ...); that is left alone. */
export const contestForm = z.looseObject({
  placing,
  cards: z.array(card).min(1, { error: 'there is no card' }),
});

export type Contest = z.infer<typeof contestForm>;
export type ContestCard = Contest['cards'][number];
export type ContestSheet = NonNullable<Contest['placing']['sheet']>;

/** What is wrong with a contest, and where: `placing.method`, `cards[1].ranking[3]`. */
export class ContestFault extends Error {
  constructor(
    readonly field: string,
    readonly fault: string,
  ) {
    super(`${field}: ${fault}`);
  }
}

/** Reads a contest or throws a `ContestFault` naming the first field that is not of the form. */
export function readContest(text: string): Contest {
  let written: unknown;
  try {
    written = JSON.parse(text);
  } catch (error) {
    throw new ContestFault(
      'contest',
      `it is not JSON (${error instanceof Error ? error.message : String(error)})`,
    );
  }
  const repeated = repeatedName(text);
  if (repeated !== undefined) throw new ContestFault(fieldName(repeated.path), repeated.fault);
  const read = contestForm.safeParse(written);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new ContestFault(
    fieldName(issue?.path ?? []),
    (issue?.message ?? 'it is not of the form').replace(/\s+/g, ' '),
  );
}

function fieldName(path: readonly PropertyKey[]): string {
  const name = path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('');
  return name.replace(/^\./, '') || 'contest';
}
