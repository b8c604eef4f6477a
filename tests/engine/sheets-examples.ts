/** Small invented sheets and goes that the tests of the sheets share. */

import { readingText } from '../../src/engine/numbers/number-text.ts';
import { scoreGo } from '../../src/engine/sheets/score-go.ts';
import type {
  Go,
  JudgeScore,
  MeasuredSheet,
  OneMarkSheet,
  PatternSheet,
  PercentageSheet,
  PlacesSheet,
  ScoreSheet,
  SheetManeuver,
} from '../../src/engine/sheets/types.ts';

export const maneuvers = (count: number, coefficients: readonly string[] = []): SheetManeuver[] =>
  Array.from({ length: count }, (_, index) => ({
    position: index + 1,
    name: `maneuver ${index + 1}`,
    coefficient: coefficients[index] ?? '1',
  }));

const head = { code: 'example', version: 1, title: 'Example', source: 'common practice, no source' } as const;

/** Base 70, -3 to 3 by 0.5, form 0 to 5 by 0.5, penalties 3, 5, 10: common practice, no source. */
export const pattern: PatternSheet = {
  ...head,
  kind: 'pattern',
  base: '70',
  maneuver: { low: '-3', high: '3', step: '0.5' },
  extras: [{ code: 'form', label: 'form', range: { low: '0', high: '5', step: '0.5' }, coefficient: '1' }],
  penalties: [
    { code: 'minor', label: 'break of gait', points: '3', weight: 'minor' },
    { code: 'major', label: 'missed lead', points: '5', weight: 'major' },
    { code: 'severe', label: 'lost rein', points: '10', weight: 'severe' },
  ],
  rulings: {
    'off-pattern': { kind: 'placed-below' },
    disqualified: { kind: 'not-placed' },
    excused: { kind: 'takes-points-off', points: '12.5' },
    retired: { kind: 'score-stands' },
  },
  notSeen: 'left-out',
  lowest: '0',
  totalRange: null,
};

export const percentage: PercentageSheet = {
  ...head,
  kind: 'percentage',
  maneuver: { low: '0', high: '10', step: '0.5' },
  collectives: [
    { code: 'gaits', label: 'gaits', range: { low: '0', high: '10', step: '0.5' }, coefficient: '2' },
  ],
  errorsOfCourse: { takes: ['2', '4'], from: 'points', cumulative: true },
  rulings: { 'off-pattern': { kind: 'placed-below' }, eliminated: { kind: 'not-placed' } },
  notSeen: 'left-out',
  roundJudge: null,
};

export const oneMark: OneMarkSheet = {
  ...head,
  kind: 'one-mark',
  mark: { low: '0', high: '100', step: '0.5' },
  penalties: [{ code: 'major', label: 'refusal', points: '4.5', weight: 'major' }],
  rulings: { disqualified: { kind: 'not-placed' } },
};

export const places: PlacesSheet = {
  ...head,
  kind: 'places',
  first: 3,
  rulings: { disqualified: { kind: 'not-placed' }, excused: { kind: 'score-stands' } },
};

export const timed: MeasuredSheet = {
  ...head,
  kind: 'measured',
  unit: 'seconds',
  measure: { low: '0.001', high: '999.999', step: '0.001' },
  penalties: [{ code: 'knock', label: 'barrel down', points: '5', weight: 'major' }],
  rulings: { 'off-pattern': { kind: 'not-placed' }, excused: { kind: 'takes-points-off', points: '10' } },
};

/** Marks of a go in order of position; `null`: not seen. */
export const marked = (...marks: readonly (string | null)[]): NonNullable<Go['maneuvers']> =>
  marks.map((mark, index) =>
    mark === null ? { position: index + 1, notSeen: true } : { position: index + 1, mark },
  );

/** The score of a go that must have one. */
export function scored(sheet: ScoreSheet, pattern: readonly SheetManeuver[], go: Go): JudgeScore {
  const result = scoreGo(sheet, pattern, go);
  if (!result.ok) throw new Error(`unexpected faults: ${JSON.stringify(result.faults)}`);
  return result.score;
}

/** Its total as text; `undefined` where nothing is scored. */
export function total(sheet: ScoreSheet, pattern: readonly SheetManeuver[], go: Go): string | undefined {
  const { score } = scored(sheet, pattern, go);
  return score === undefined ? undefined : readingText(score);
}

/** What is wrong, as `code at place`. */
export function faultsOf(sheet: ScoreSheet, pattern: readonly SheetManeuver[], go: Go): string[] {
  const result = scoreGo(sheet, pattern, go);
  return result.ok ? [] : result.faults.map(({ code, at }) => `${code} ${at}`);
}
