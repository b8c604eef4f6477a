/** Score sheets held against what was published; each check names its source. */
import { readFileSync } from 'node:fs';
import { Decimal as Independent } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { readingText, recordText } from '../../src/engine/numbers/number-text.ts';
import { scoreGo } from '../../src/engine/sheets/score-go.ts';
import type {
  Go,
  PatternSheet,
  PercentageSheet,
  ScoreSheet,
  SheetManeuver,
} from '../../src/engine/sheets/types.ts';

const read = <Shape>(path: string) =>
  JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as Shape;
const bundled = <Sheet extends ScoreSheet>(code: string) => read<Sheet>(`../../seed/sheets/${code}.json`);

const maneuversOf = (coefficients: readonly string[]): SheetManeuver[] =>
  coefficients.map((coefficient, index) => ({ position: index + 1, name: `part ${index + 1}`, coefficient }));
const marksOf = (marks: readonly string[]) => marks.map((mark, index) => ({ position: index + 1, mark }));

function score(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[], go: Go): string | undefined {
  const result = scoreGo(sheet, maneuvers, go);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.score.score && recordText(result.score.score);
}

interface WeightedMarks {
  readonly input: { readonly weights: readonly number[]; readonly judges: readonly (readonly number[])[] };
  readonly expected: { readonly judge_marks: readonly number[] };
}

describe('six judges who weigh three marks 4, 3 and 3 (UKPPC marking system, https://ukppc.co.uk/marking-system)', () => {
  const { input, expected } = read<WeightedMarks>('placing/22-drop-high-low-six-judges-weighted.json');
  const sheet: PatternSheet = {
    kind: 'pattern',
    code: 'weighted',
    version: 1,
    title: 'three weighted marks',
    source: 'https://ukppc.co.uk/marking-system',
    base: '0',
    maneuver: { low: '0', high: '10', step: '0.1' },
    extras: [],
    penalties: [],
    rulings: {},
    notSeen: 'left-out',
    lowest: null,
    totalRange: null,
  };

  it.each(
    input.judges.map((marks, index) => ({ judge: index + 1, marks, published: expected.judge_marks[index] })),
  )('judge $judge: $marks are $published, as published', ({ marks, published }) => {
    const maneuvers = maneuversOf(input.weights.map(String));
    expect(score(sheet, maneuvers, { maneuvers: marksOf(marks.map(String)) })).toBe(String(published));
  });
});

describe('the percentage of a dressage test (http://www.rk3de.org/eventing_dressage.php, http://www.warwickhorsetrials.com/Scoring.php)', () => {
  const eventing = bundled<PercentageSheet>('dressage-eventing');
  const coefficients = ['1', '1', '2', '1', '2', '1', '1'];
  const marks = ['6.5', '7', '6', '5.5', '7.5', '8', '6'];
  const collectives: Readonly<Record<string, string>> = {
    gaits: '7',
    impulsion: '6',
    submission: '6.5',
    'position-and-seat': '7',
    aids: '6.5',
  };
  const go: Go = { maneuvers: marksOf(marks), extras: collectives };

  /** Good marks less errors of course, over the highest possible, to two decimals: the formula as both pages state it. */
  function byFormula(errors: number): string {
    let good = new Independent(-errors);
    let highest = new Independent(0);
    for (const [index, mark] of marks.entries()) {
      good = good.add(new Independent(mark).mul(coefficients[index] ?? '1'));
      highest = highest.add(new Independent(10).mul(coefficients[index] ?? '1'));
    }
    for (const { code, coefficient } of eventing.collectives) {
      good = good.add(new Independent(collectives[code] ?? '0').mul(coefficient));
      highest = highest.add(new Independent(10).mul(coefficient));
    }
    return good.div(highest).mul(100).toDecimalPlaces(2, Independent.ROUND_HALF_UP).toString();
  }

  it.each([
    [0, 0],
    [1, 2],
    [2, 2 + 4],
    [3, 2 + 4 + 6],
  ])(
    'with %d errors of course takes %d points from the sum (2, 4, 6: rk3de.org; that they add up: from memory)',
    (errors, taken) => {
      expect(score(eventing, maneuversOf(coefficients), { ...go, errorsOfCourse: errors })).toBe(
        byFormula(taken),
      );
    },
  );

  it('is no percentage after the fourth error: eliminated (rk3de.org), nor after the third where 2 and 4 are listed (warwickhorsetrials.com)', () => {
    expect(score(eventing, maneuversOf(coefficients), { ...go, errorsOfCourse: 4 })).toBeUndefined();
    const training = bundled<PercentageSheet>('dressage-training');
    expect(score(training, maneuversOf(coefficients), { ...go, errorsOfCourse: 3 })).toBeUndefined();
  });

  it('of 77.0, from 38.5 of 50 points of our own making, is the 34.5 penalties of the published example at 1.5', () => {
    const { input, expected } = read<{
      input: { percent: number; coefficient: number };
      expected: { penalty: number };
    }>('placing/27-dressage-percent-to-penalty.json');
    const bare = { ...eventing, collectives: [] };
    const percent = score(bare, maneuversOf(['1', '1', '1', '1', '1']), {
      maneuvers: marksOf(['8', '7.5', '7.5', '7.5', '8']),
    });
    expect(percent).toBe(String(input.percent));
    expect(
      readingText(
        exact(100)
          .sub(exact(percent ?? ''))
          .mul(exact(String(input.coefficient))),
      ),
    ).toBe(String(expected.penalty));
  });
});

describe('the bundled sheets and what is published about them', () => {
  const pattern = (code: string) => bundled<PatternSheet>(code);

  it('mark a maneuver of a youth pattern -3 to +3 in half points on a base of 70 (https://horses.extension.org/judging-horse-events-western-horsemanship)', () => {
    for (const code of ['horsemanship', 'showmanship', 'hunt-seat-equitation', 'walk-trot-pattern']) {
      expect(pattern(code)).toMatchObject({ base: '70', maneuver: { low: '-3', high: '3', step: '0.5' } });
    }
  });

  it('add form and effectiveness of 0 to 5 and take penalties of 3, 5 and 10 (description of a pattern scoresheet book, https://www.kppetsupply.com/collections/new-arrivals/products/the-book-of-horse-show-pattern-scoresheets)', () => {
    for (const code of ['horsemanship', 'showmanship', 'hunt-seat-equitation', 'walk-trot-pattern']) {
      const { extras, penalties } = pattern(code);
      expect(extras).toMatchObject([{ range: { low: '0', high: '5' } }]);
      expect(new Set(penalties.map(({ points }) => points))).toEqual(new Set(['3', '5', '10']));
    }
  });

  it('take 3 for a hit cone, 5 for a split cone and 10 for touching the horse in showmanship (https://brainscape.com/flashcards/showmanship-18161002/packs/22602992)', () => {
    const points = new Map(pattern('showmanship').penalties.map((one) => [one.code, one.points]));
    expect(
      ['cone-hit', 'cone-split', 'horse-touched', 'quartering-wrong'].map((code) => points.get(code)),
    ).toEqual(['3', '5', '10', '10']);
  });

  it('mark reining -1 1/2 to +1 1/2 in half points on a base of 70 (NRHA handbook B(1), https://docslib.org/doc/501289/r-ules-for-judging)', () => {
    expect(pattern('reining')).toMatchObject({
      base: '70',
      maneuver: { low: '-1.5', high: '1.5', step: '0.5' },
    });
  });

  it('take 1 for each quarter circle out of lead (https://www.beunstoppable.us/reining/1-point-reining-penalties): three quarters are 67', () => {
    const out = { code: 'out-of-lead', position: 1 };
    const go: Go = { maneuvers: marksOf(['0']), penalties: [out, out, out] };
    expect(score(pattern('reining'), maneuversOf(['1']), go)).toBe('67');
  });

  it('take 1/2 for a tick, 1 for a hit, 3 for a knock-down and 5 for a refusal in trail (https://brainscape.com/flashcards/trail-14044891/packs/21430027)', () => {
    const penalties = ['tick', 'hit', 'knock-down', 'refusal'].map((code) => ({ code, position: 1 }));
    expect(score(pattern('trail'), maneuversOf(['1']), { maneuvers: marksOf(['1.5']), penalties })).toBe(
      '62',
    );
  });

  it('place an off-pattern go below all who kept the pattern (MFTHBA Rulebook 2025, printed p. 95, https://mfthba.com/2025_rulebook/99)', () => {
    const { extras } = pattern('horsemanship');
    const go: Go = {
      maneuvers: marksOf(['3']),
      extras: Object.fromEntries(extras.map(({ code }) => [code, '5'])),
      ruling: { code: 'off-pattern' },
    };
    expect(scoreGo(pattern('horsemanship'), maneuversOf(['1']), go)).toMatchObject({
      score: { tier: 'placed-below' },
    });
  });
});
