/** Agreement of judges: against published numbers, against a statistics library, and by its own laws. */
import {
  linearRegression,
  mean,
  sampleCorrelation,
  sampleRankCorrelation,
  standardDeviation,
  variance,
} from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { agreement } from '../../src/engine/agreement/agreement.ts';
import { agreementRecord } from '../../src/engine/agreement/agreement-record.ts';
import { concordance } from '../../src/engine/agreement/concordance.ts';
import { drift, judgeTendency } from '../../src/engine/agreement/judge-tendency.ts';
import { judgePairs, tauB } from '../../src/engine/agreement/rank-correlation.ts';
import { rootText } from '../../src/engine/agreement/square-root.ts';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromScores } from '../../src/engine/placing/panel-card.ts';
import type { PanelCard } from '../../src/engine/placing/types.ts';
import { agreementSentences, leastAgreedSentence } from '../../src/engine/sentences/agreement-sentences.ts';
import { plainTeller } from '../../src/engine/sentences/words.ts';
import { english } from '../../src/language/index.ts';
import { chanceFrom, scoredClass } from './naive/generate-class.ts';
import { ranked, scored } from './panels.ts';

/** Scores of one judge, entries called 1, 2, 3 ... */
const cardOf = (judge: string, scores: readonly number[]): PanelCard =>
  cardFromScores(
    { judge },
    new Map(
      scores.map((score, index) => [
        String(index + 1),
        { tier: 'kept-pattern', score: exact(String(score)) },
      ]),
    ),
  );

describe('published numbers', () => {
  /**
   * Anxiety ratings of 20 people by three raters, with many ties: KendallW(anxiety, TRUE) is 0.5396569.
   * R package DescTools, https://andrisignorell.github.io/DescTools/reference/KendallW.html (the data stand there).
   */
  test("Kendall's W with the correction for ties is the published 0.5396569", () => {
    const raters = [
      [3, 3, 3, 4, 5, 5, 2, 3, 5, 2, 2, 6, 1, 5, 2, 2, 1, 2, 4, 3],
      [3, 6, 4, 6, 2, 4, 2, 4, 3, 3, 2, 3, 3, 3, 2, 2, 1, 3, 3, 4],
      [2, 1, 4, 4, 3, 2, 1, 6, 1, 1, 1, 2, 3, 3, 1, 1, 3, 3, 2, 2],
    ];
    const { w } = concordance(raters.map((ratings, index) => cardOf(`rater ${index + 1}`, ratings)));
    expect(w?.valueOf().toFixed(7)).toBe('0.5396569');
  });

  /** stats.spearmanr([1, 2, 3, 4, 5], [5, 6, 7, 8, 7]): 0.8207826816681233, documentation of scipy.stats.spearmanr (docs.scipy.org). */
  test("Spearman's rho with a tie is the published 0.820783", () => {
    const [pair] = judgePairs([cardOf('a', [1, 2, 3, 4, 5]), cardOf('b', [5, 6, 7, 8, 7])]);
    expect(pair?.rho?.text).toBe('0.820783');
  });

  /** kendalltau([12, 2, 1, 12, 2], [1, 4, 7, 1, 0]): -0.47140452079103173, tests of scipy.stats, cross-checked there with R. */
  test("Kendall's tau-b with ties is the published -0.471405", () => {
    const [pair] = judgePairs([cardOf('a', [12, 2, 1, 12, 2]), cardOf('b', [1, 4, 7, 1, 0])]);
    expect(pair?.tauB).toMatchObject({ text: '-0.471405', above: -4n, below: [8n, 9n] });
  });

  /** Without ties: cor.test(method="kendall") gives 0.4444444, http://www.stat.sc.edu/~habing/courses/518splus3F98.html. */
  test("Kendall's tau without ties is the published 4/9", () => {
    const x = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
    const y = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];
    const [pair] = judgePairs([cardOf('a', x), cardOf('b', y)]);
    expect(pair?.tauB?.text).toBe('0.444444');
  });
});

describe('a statistics library (simple-statistics) finds the same', () => {
  const chance = chanceFrom(1948);
  const panels = Array.from({ length: 200 }, () => scoredClass(chance)).map(({ cards }) =>
    cards.map((scores, index) => {
      const lines = [...scores].map(
        ([entry, half]) => [entry, { tier: 'kept-pattern', score: exact(half).div(2) }] as const,
      );
      return cardFromScores({ judge: `judge ${index + 1}` }, new Map(lines));
    }),
  );
  const scoreOf = (card: PanelCard | undefined, entry: string) =>
    card?.lines.get(entry)?.score?.valueOf() ?? Number.NaN;

  test("Spearman's rho and Kendall's tau-b of every two judges", () => {
    let compared = 0;
    for (const cards of panels) {
      for (const { judges, entries, rho, tauB: tau } of judgePairs(cards)) {
        const [x, y] = judges.map((judge) =>
          entries.map((entry) =>
            scoreOf(
              cards.find((card) => card.judge === judge),
              entry,
            ),
          ),
        );
        if (x === undefined || y === undefined || rho === undefined || tau === undefined) continue;
        expect(Number(rho.text)).toBeCloseTo(sampleRankCorrelation(x, y), 5);
        // tau-b is the plain correlation of the signs of all ordered pairs.
        expect(Number(tau.text)).toBeCloseTo(sampleCorrelation(pairSigns(x), pairSigns(y)), 5);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(500);
  });

  /** Without ties (m - 1) x mean rho = m W - 1 (Kendall 1948, as in the documentation of DescTools KendallW). */
  test("Kendall's W is the mean of Spearman's rho over the pairs, where nobody tied", () => {
    const cards = ranked('A B C D E F G', 'B A C E D G F', 'C A D B F E G', 'G A B C D E F');
    const { w } = concordance(cards);
    const rhos = judgePairs(cards).map(({ rho }) => Number(rho?.text));
    expect(w?.valueOf()).toBeCloseTo((mean(rhos) * 3 + 1) / 4, 5);
  });

  test("each judge's mean, variance, deviation and drift", () => {
    for (const cards of panels) {
      for (const card of cards) {
        const order = [...card.lines.keys()].sort();
        const scores = order.map((entry) => scoreOf(card, entry));
        const tendency = judgeTendency(card, order);
        if (tendency.scores === undefined) continue;
        expect(tendency.scores.mean.valueOf()).toBeCloseTo(mean(scores), 8);
        expect(tendency.scores.variance.valueOf()).toBeCloseTo(variance(scores), 8);
        expect(Number(tendency.scores.deviation)).toBeCloseTo(standardDeviation(scores), 5);
        if (scores.length < 2) continue;
        expect(tendency.drift?.valueOf()).toBeCloseTo(
          linearRegression(scores.map((score, at) => [at + 1, score])).m,
          8,
        );
      }
    }
  });
});

function pairSigns(values: readonly number[]): number[] {
  return values.flatMap((a, i) => values.flatMap((b, j) => (i === j ? [] : [Math.sign(a - b)])));
}

describe('what the numbers mean', () => {
  test('the same order on every card is a W of 1, two opposite cards a W of 0', () => {
    expect(concordance(ranked('A B C', 'A B C', 'A B C')).w?.equals(exact(1))).toBe(true);
    expect(concordance(ranked('A B C', 'C B A')).w?.equals(exact(0))).toBe(true);
  });

  test('two judges in the same order agree by 1, in opposite order by -1', () => {
    expect(judgePairs(ranked('A B C', 'A B C'))[0]).toMatchObject({
      tauB: { text: '1' },
      rho: { text: '1' },
    });
    expect(judgePairs(ranked('A B C', 'C B A'))[0]).toMatchObject({
      tauB: { text: '-1' },
      rho: { text: '-1' },
    });
  });

  test('entries that a judge left off are not compared', () => {
    const pairs = judgePairs(ranked('A B C D', 'B A'));
    expect(pairs[0]?.entries).toEqual(['A', 'B']);
    expect(pairs[0]?.tauB?.text).toBe('-1');
  });

  test('there is no coefficient where a judge tied everyone, or for one entry, or for one judge', () => {
    expect(judgePairs(ranked('A=B=C', 'A B C'))[0]).toMatchObject({ tauB: undefined, rho: undefined });
    expect(judgePairs(ranked('A', 'A'))[0]).toMatchObject({ tauB: undefined, rho: undefined });
    expect(concordance(ranked('A B C')).w).toBeUndefined();
    expect(concordance(ranked('A', 'A')).w).toBeUndefined();
    expect(concordance(ranked('A=B', 'A=B')).w).toBeUndefined();
    expect(concordance([])).toEqual({ w: undefined, judges: 0, entries: [] });
  });

  test('the order of the cards does not matter to W', () => {
    const cards = ranked('A B=C D', 'D A B C', 'B C A=D');
    expect(concordance([...cards].reverse()).w?.toFraction()).toBe(concordance(cards).w?.toFraction());
  });

  test('half a point more with each go is a drift of exactly one half', () => {
    const goes = ['70', '70.5', '71', '71.5'].map((score, index) => ({
      position: index + 1,
      score: exact(score),
    }));
    expect(drift(goes)?.toFraction()).toBe('1/2');
    expect(drift(goes.slice(0, 1))).toBeUndefined();
  });

  test('goes of which some were not scored keep their position', () => {
    const [card] = scored({ A: '70', C: '72' });
    expect(card && judgeTendency(card, ['A', 'B', 'C']).drift?.toFraction()).toBe('1');
  });

  test('a rail judge who placed the later entries better has a lateness of 1, and no drift in points', () => {
    const [card] = ranked('C B A');
    const tendency = card && judgeTendency(card, ['A', 'B', 'C']);
    expect(tendency).toMatchObject({ scores: undefined, drift: undefined, lateness: { text: '1' } });
  });
});

describe('square roots are found on whole numbers', () => {
  test('a root that ends is exact, and a half of the last digit goes up', () => {
    expect(rootText(exact(4))).toBe('2');
    expect(rootText(exact('0.25'))).toBe('0.5');
    expect(rootText(exact(0))).toBe('0');
    // 0.0000005 squared: exactly half of the sixth digit.
    expect(rootText(exact(25).div(10n ** 14n))).toBe('0.000001');
    expect(rootText(exact(2))).toBe('1.414214');
    expect(rootText(exact(2), -1)).toBe('-1.414214');
  });

  test('as the square root of the platform says, far beyond six digits', () => {
    for (let square = 1; square < 2_000; square += 7) {
      expect(Number(rootText(exact(square).div(13)))).toBeCloseTo(Math.sqrt(square / 13), 6);
    }
  });

  test('a negative number has none', () => {
    expect(() => rootText(exact(-1))).toThrow(RangeError);
  });

  test('tau-b keeps what is under its root as two whole numbers', () => {
    expect(tauB([1, 1, 2], [1, 2, 2])).toMatchObject({ above: 1n, below: [2n, 2n], text: '0.5' });
  });
});

describe('as a record, and in words', () => {
  const cards = scored(
    { A: '75', B: '72', C: '70.5' },
    { A: '74', B: '74.5', C: '70' },
    { A: '71', B: '73', C: '76' },
  );

  test('the record is plain JSON with nothing lost', () => {
    const record = agreementRecord(agreement(cards, ['A', 'B', 'C']));
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
    // Sums of ranks 6, 5, 7 around 6: S = 2, W = 12 x 2 / (9 x 24) = 1/9.
    expect(record.together).toEqual({ w: '1/9', judges: 3, entries: ['A', 'B', 'C'] });
    expect(record.judges[0]).toMatchObject({
      judge: 'judge 1',
      scores: { goes: 3, mean: '72.5' },
      drift: '-2.25',
    });
    expect(record.pairs[0]?.tauB).toEqual({ above: '1', below: ['3', '3'], value: '0.333333' });
  });

  test('a family can read how far the judges agreed; of three goes no drift is told', () => {
    const found = agreement(cards, ['A', 'B', 'C']);
    expect(agreementSentences(found, plainTeller(english))).toEqual([
      "The three judges agreed little on the three entries that all of them placed (Kendall's W 0.11; 1 is the same order on every card, 0 no common order).",
    ]);
    expect(leastAgreedSentence(found, plainTeller(english))).toBe(
      "Judge 1 and judge 3 agreed least (Kendall's tau-b −1).",
    );
  });

  test('a drift over a class of some size is told, and is no accusation', () => {
    const late = { A: '68', B: '69', C: '70', D: '70', E: '71', F: '72' };
    const level = { A: '70', B: '71', C: '69', D: '71', E: '69', F: '70' };
    const [, ...drifts] = agreementSentences(
      agreement(scored(late, level), Object.keys(late)),
      plainTeller(english),
    );
    expect(drifts).toEqual([
      "Judge 1's scores rose by about 7.4 points over every ten goes; the better goes may simply have come late.",
      "Judge 2's scores fell by about 1.1 points over every ten goes; the better goes may simply have come early.",
    ]);
  });

  test('where nothing is in common that is said, and no number made up', () => {
    expect(agreementSentences(agreement(ranked('A', 'B'), []), plainTeller(english))).toEqual([
      'There is too little that the judges have in common to say how far they agreed.',
    ]);
  });
});
