/** Any class: all methods, tie-breaks, options, statuses and recorded decisions mixed at will. */
import fc from 'fast-check';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores, type ScoredLine } from '../../src/engine/placing/panel-card.ts';
import type {
  MergeRule,
  PanelCard,
  PlacingInput,
  PlacingRule,
  TieBreak,
  TieDecision,
} from '../../src/engine/placing/types.ts';

export const names = ['A', 'B', 'C', 'D', 'E', 'F', 'G'];
export const discard = fc.constantFrom('none' as const, 'high-and-low' as const);
const cardTies = fc.constantFrom('better' as const, 'mean' as const);
const unlisted = fc.constantFrom('next', 'mean', '6', '2.5');

export const byScore: fc.Arbitrary<MergeRule> = fc.oneof(
  fc.record({
    method: fc.constant('total' as const),
    discard,
    noScore: fc.constantFrom('zero' as const, 'not-placed' as const, 'mean' as const),
  }),
  fc.record({
    method: fc.constant('mean' as const),
    discard,
    noScore: fc.constantFrom('zero' as const, 'not-placed' as const, 'mean' as const),
    round: fc.constantFrom(null, { places: 0, mode: 'half-even' } as const),
  }),
);
export const byPlace: fc.Arbitrary<MergeRule> = fc.oneof(
  fc.record({ method: fc.constant('rank-sum' as const), cardTies, unlisted, discard }),
  fc.record({
    method: fc.constant('place-points' as const),
    points: fc.constantFrom(['10', '9', '8', '7'], ['3', '1']),
    unplaced: fc.constantFrom('0', '0.5'),
    cardTies,
    discard,
  }),
  fc.record({
    method: fc.constant('majority' as const),
    cardTies,
    unlisted,
    equalMajorities: fc.constantFrom('totals' as const, 'next-places' as const, 'average' as const),
  }),
  fc.constant({ method: 'pairwise' as const }),
);

const tieBreak: fc.Arbitrary<TieBreak> = fc.oneof(
  fc.constant({ code: 'maneuvers' as const, order: [2, 1] }),
  fc.constant({ code: 'count-back' as const }),
  fc.constant({ code: 'form' as const }),
  fc.record({
    code: fc.constant('penalties' as const),
    count: fc.constantFrom('points' as const, 'number' as const),
  }),
  fc.record({
    code: fc.constant('tie-judge' as const),
    judges: fc.constantFrom(['judge 1'], ['judge 2', 'judge 1'], ['nobody']),
    alternate: fc.boolean(),
  }),
  fc.constant({ code: 'head-to-head' as const }),
  fc.constant({ code: 'best-single-place' as const }),
  fc.constant({ code: 'most-firsts' as const }),
  fc.constant({ code: 'discarded' as const }),
  fc.constant({ code: 'run-off' as const }),
  fc.record({ code: fc.constant('draw' as const), seed: fc.string() }),
  fc.constant({ code: 'share' as const }),
);

const decision: fc.Arbitrary<TieDecision> = fc.record({
  id: fc.uuid(),
  kind: fc.constantFrom(
    'run-off' as const,
    're-work' as const,
    'judge' as const,
    'coin' as const,
    'share' as const,
    'declined' as const,
  ),
  order: fc.shuffledSubarray(names, { minLength: 2 }).chain((entries) => grouped(entries)),
});

/** The entries cut into tied groups at will. */
export function grouped(entries: readonly string[]): fc.Arbitrary<string[][]> {
  return fc.array(fc.boolean(), { minLength: entries.length, maxLength: entries.length }).map((joins) => {
    const groups: string[][] = [];
    entries.forEach((entry, index) => {
      const last = groups.at(-1);
      if (last !== undefined && joins[index]) last.push(entry);
      else groups.push([entry]);
    });
    return groups;
  });
}

const rankedCard = fc.shuffledSubarray(names).chain(grouped);

export const scoredLine: fc.Arbitrary<ScoredLine> = fc
  .record({
    tier: fc.constantFrom('kept-pattern' as const, 'kept-pattern' as const, 'placed-below' as const),
    half: fc.integer({ min: 138, max: 144 }),
    marks: fc.array(fc.integer({ min: -2, max: 2 }), { minLength: 2, maxLength: 3 }),
    form: fc.option(fc.integer({ min: 0, max: 5 }), { nil: undefined }),
    penalties: fc.array(fc.constantFrom(3, 5, 10), { maxLength: 2 }),
  })
  .map(({ tier, half, marks, form, penalties }) => ({
    tier,
    score: exact(half).div(2),
    parts: {
      maneuvers: new Map(marks.map((mark, index) => [index + 1, exact(mark).div(2)])),
      form: form === undefined ? undefined : exact(form),
      penaltyPoints: exact(penalties.reduce((total, points) => total + points, 0)),
      penaltyCount: penalties.length,
    },
  }));

const scoredCard = fc.shuffledSubarray(names).chain((entries) =>
  fc.record({
    lines: fc.tuple(...entries.map((entry) => scoredLine.map((line): [string, ScoredLine] => [entry, line]))),
    out: fc.subarray(entries, { maxLength: Math.min(2, entries.length) }),
  }),
);

const rankedPanel = fc
  .array(rankedCard, { minLength: 1, maxLength: 6 })
  .map((cards) => cards.map((ranking, index) => cardFromRanking({ judge: `judge ${index + 1}` }, ranking)));

const scoredPanel = fc.array(scoredCard, { minLength: 1, maxLength: 6 }).map((cards) =>
  cards.map(({ lines, out }, index) =>
    cardFromScores(
      {
        judge: `judge ${index + 1}`,
        ruledOut: new Map(out.map((entry) => [entry, 'disqualified' as const])),
      },
      new Map(lines.filter(([entry]) => !out.includes(entry))),
    ),
  ),
);

export const ruleFor = (merge: fc.Arbitrary<MergeRule>): fc.Arbitrary<PlacingRule> =>
  fc.record({
    merge,
    ties: fc.array(tieBreak, { maxLength: 4 }),
    afterSplit: fc.constantFrom('go-on' as const, 'start-again' as const),
    placesGiven: fc.constantFrom(null, null, 3),
    rulingHolds: fc.constantFrom(null, 'any' as const, 'majority' as const, 'all' as const),
  });

function inputOf(
  panel: fc.Arbitrary<PanelCard[]>,
  merge: fc.Arbitrary<MergeRule>,
): fc.Arbitrary<PlacingInput> {
  return fc.record({
    entries: fc.constant(names),
    cards: panel,
    rule: ruleFor(merge),
    decisions: fc.array(decision, { maxLength: 3 }),
    classNumber: fc.integer({ min: 1, max: 4 }),
  });
}

const referee = fc
  .tuple(rankedCard, rankedCard, rankedCard)
  .map(([one, two, three]) => [
    cardFromRanking({ judge: 'judge 1' }, one),
    cardFromRanking({ judge: 'judge 2' }, two),
    cardFromRanking({ judge: 'referee', seat: 'referee' }, three),
  ]);

export const anyClass = fc.oneof(
  inputOf(scoredPanel, byScore),
  inputOf(scoredPanel, byPlace),
  inputOf(rankedPanel, byPlace),
  inputOf(referee, fc.constant({ method: 'two-judges-and-referee' as const })),
  inputOf(
    scoredPanel.map((cards) => cards.slice(0, 1)),
    fc.constant({ method: 'separate' as const }),
  ),
);
