/** Published pieces of arithmetic that are no contest of cards: phases, a discarded high and low, percentages, shared places. */
import { describe, expect, test } from 'vitest';
import { exact } from '../../../src/engine/numbers/exact.ts';
import { recordText } from '../../../src/engine/numbers/number-text.ts';
import { round } from '../../../src/engine/numbers/rounding.ts';
import { combinePhases, type Phase } from '../../../src/engine/placing/combine-phases.ts';
import { cardFromRanking, cardFromScores } from '../../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard, Placing } from '../../../src/engine/placing/types.ts';
import { caseNumbered } from './published-case.ts';

interface PhasesCase {
  readonly source: string;
  readonly input: {
    readonly phase1_place: Readonly<Record<string, number>>;
    readonly phase2_place: Readonly<Record<string, number>>;
    readonly weights: readonly [number, number];
  };
  readonly expected: {
    readonly place: Readonly<Record<string, number>>;
    readonly totals?: Readonly<Record<string, number>>;
  };
}

const placed = (places: Readonly<Record<string, number>>): Phase['placing'] => ({
  placed: Object.entries(places).map(([entry, place]) => ({ entry, place, tied: false, total: undefined })),
  unplaced: [],
});

/** The weights and the tie rule: http://www.sports-reference.com/olympics/winter/1998/FSK/mixed-pairs.html */
describe.each([14, 16])('case %i: two phases, 0.5 and 1.0, a tie goes to the second phase', (number) => {
  const { input, expected } = caseNumbered<PhasesCase>(number);
  const [first, second] = input.weights.map(String);
  const placing = placeClass(
    combinePhases(
      [
        { phase: 'phase 1', weight: first ?? '', placing: placed(input.phase1_place) },
        { phase: 'phase 2', weight: second ?? '', placing: placed(input.phase2_place) },
      ],
      'not-placed',
    ),
  );

  test('every published place comes out', () => {
    expect(Object.fromEntries(placing.placed.map(({ entry, place }) => [entry, place]))).toEqual(
      expected.place,
    );
    expect(placing.unplaced).toEqual([]);
  });

  test('the totals are the published ones', () => {
    for (const { entry, total } of placing.placed) {
      const published = expected.totals?.[entry];
      if (published !== undefined) expect(total && recordText(total)).toBe(String(published));
    }
  });
});

/**
 * UKPPC marking system (https://ukppc.co.uk/marking-system): six judges' weighted marks, one highest and one lowest
 * out, four added, and a percentage of them. Not a horse sport; a panel of even size.
 */
describe('case 22: of six judges the highest and the lowest are discarded', () => {
  interface SixJudges {
    readonly input: { readonly weights: readonly number[]; readonly judges: readonly (readonly number[])[] };
    readonly expected: {
      readonly judge_marks: readonly number[];
      readonly dropped_judges: readonly [number, number];
      readonly total: number;
      readonly percent: number;
    };
  }
  const { input, expected } = caseNumbered<SixJudges>(22);
  const cards = input.judges.map((marks, index): PanelCard => {
    const score = marks.reduce(
      (total, mark, at) => total.add(exact(String(mark)).mul(input.weights[at] ?? 0)),
      exact(0),
    );
    return cardFromScores(
      { judge: `judge ${index + 1}` },
      new Map([
        ['one', { tier: 'kept-pattern', score }],
        ['two', { tier: 'kept-pattern', score: exact(0) }],
      ]),
    );
  });
  const merged = (merge: MergeRule) =>
    placeClass({
      entries: ['one', 'two'],
      cards,
      decisions: [],
      classNumber: 1,
      rule: { merge, ties: [], afterSplit: 'go-on', placesGiven: null, rulingHolds: null },
    });

  test("each judge's weighted mark is the published one", () => {
    const marks = cards
      .map((card) => card.lines.get('one')?.score)
      .map((score) => score && recordText(score));
    expect(marks).toEqual(expected.judge_marks.map(String));
  });

  test('the same two judges are discarded, and the four left add up to the published total', () => {
    const { placed: line, reasons } = merged({ method: 'total', discard: 'high-and-low', noScore: 'zero' });
    expect(line[0]?.total && recordText(line[0].total)).toBe(String(expected.total));
    const parts = reasons[0]?.compared.find(({ entry }) => entry === 'one')?.parts ?? [];
    const out = (note: string) => parts.find((part) => part.note === note)?.judge;
    expect([out('discarded-high'), out('discarded-low')]).toEqual(
      expected.dropped_judges.map((judge) => `judge ${judge}`),
    );
  });

  test('their mean is the published percentage', () => {
    const { placed: line } = merged({
      method: 'mean',
      discard: 'high-and-low',
      noScore: 'zero',
      round: null,
    });
    expect(line[0]?.total && recordText(line[0].total)).toBe(String(expected.percent));
  });
});

/**
 * Warwick Horse Trials (http://www.warwickhorsetrials.com/Scoring.php): penalty = (100 - mean percentage) x 1.5. The
 * rounding, each judge's percentage and their mean to two decimals: http://www.rk3de.org/eventing_dressage.php.
 */
describe('case 27: dressage percentages', () => {
  const { input, expected } = caseNumbered<{
    input: { percent: number; coefficient: number };
    expected: { penalty: number };
  }>(27);
  const meanOf = (percentages: readonly string[]) =>
    placeClass({
      entries: ['one'],
      cards: percentages.map((score, index) =>
        cardFromScores(
          { judge: `judge ${index}` },
          new Map([['one', { tier: 'kept-pattern', score: exact(score) }]]),
        ),
      ),
      decisions: [],
      classNumber: 1,
      rule: {
        merge: {
          method: 'mean',
          discard: 'none',
          noScore: 'not-placed',
          round: { places: 2, mode: 'half-up' },
        },
        ties: [],
        afterSplit: 'go-on',
        placesGiven: null,
        rulingHolds: null,
      },
    }).placed[0]?.total;

  test('the penalty of the published percentage', () => {
    const percentage = meanOf([String(input.percent)]) ?? exact(0);
    expect(
      recordText(
        exact(100)
          .sub(percentage)
          .mul(exact(String(input.coefficient))),
      ),
    ).toBe(String(expected.penalty));
  });

  test("the judges' mean is rounded to two decimals", () => {
    expect(meanOf(['66.67', '66.66'])?.equals(round(exact('66.665'), { places: 2, mode: 'half-up' }))).toBe(
      true,
    );
    expect(meanOf(['66.67', '66.66'])?.toString()).toBe('66.67');
  });
});

/**
 * Points of the places that tied entries hold, added and shared (https://experts123.com/q/how-do-tie-scores-affect-the-
 * number-of-points-awarded.html; the same in Ohio Admin. Code 3769-6-06 and COMAR 09.10.01.12): 125 + 100 + 90 over
 * three is 105 each. Here: three tied for second on one judge's card.
 */
test('case 30: three tied for second on a card share the points of second, third and fourth', () => {
  const { input, expected } = caseNumbered<{
    input: { points_by_place: Record<string, number>; tied: number };
    expected: { points_each: number };
  }>(30);
  const table = [150, ...['2', '3', '4'].map((place) => input.points_by_place[place] ?? 0)];
  const placing: Placing = placeClass({
    entries: ['a', 'b', 'c', 'd'],
    cards: [cardFromRanking({ judge: 'judge 1' }, [['a'], ['b', 'c', 'd']])],
    decisions: [],
    classNumber: 1,
    rule: {
      merge: {
        method: 'place-points',
        points: table.map(String),
        unplaced: '0',
        cardTies: 'mean',
        discard: 'none',
      },
      ties: [],
      afterSplit: 'go-on',
      placesGiven: null,
      rulingHolds: null,
    },
  });
  const shared = placing.placed.filter(({ place }) => place === 2);
  expect(shared).toHaveLength(input.tied);
  expect(shared.map(({ total }) => total && recordText(total))).toEqual(
    shared.map(() => String(expected.points_each)),
  );
});
