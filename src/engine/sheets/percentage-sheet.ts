/**
 * Marks out of a maximum, as in dressage.
 * percentage = (sum of mark x coefficient - errors) / (sum of highest mark x coefficient) x 100.
 * Source of the formula: http://www.rk3de.org/eventing_dressage.php (each judge's percentage to 2 decimals).
 * 174.5 of 260 less 2 for one error: 66.346...
 */
import { type Exact, exact, sum, zero } from '../numbers/exact.ts';
import { round } from '../numbers/rounding.ts';
import { readExtras } from './extra-marks.ts';
import { countsOf, readManeuvers } from './maneuver-marks.ts';
import { readRange } from './mark.ts';
import { notOnSheet } from './not-on-sheet.ts';
import { fault, type GoReading, noParts } from './reading.ts';
import { type RulingReading, readRuling, rulingStillMissing } from './rulings.ts';
import type { Go, GoFault, PercentageSheet, SheetManeuver } from './types.ts';

export function percentageReading(
  sheet: PercentageSheet,
  maneuvers: readonly SheetManeuver[],
  go: Go,
): GoReading {
  const marks = readManeuvers({
    range: readRange(sheet.maneuver),
    notSeen: sheet.notSeen,
    maneuvers,
    marks: go.maneuvers,
  });
  const collectives = readExtras(sheet.collectives, go.extras);
  const errors = readErrors(sheet, go.errorsOfCourse ?? 0);
  const judged = readRuling(sheet, go.ruling);
  const ruling = errors.eliminates ? eliminated(judged) : judged;
  const maximum = marks.maximum.add(collectives.maximum);
  const added = countsOf(marks.parts).add(countsOf(collectives.parts)).sub(ruling.takes);
  const faults = [
    ...notOnSheet(go, ['maneuvers', 'extras', 'errorsOfCourse']),
    ...marks.faults,
    ...collectives.faults,
    ...errors.faults,
    ...ruling.faults,
    ...rulingStillMissing(sheet, go, marks.flags),
  ];
  return {
    tier: ruling.tier,
    score: percentage(sheet, { added, maximum, errors: errors.takes }),
    better: 'higher',
    parts: {
      ...noParts,
      maneuvers: marks.parts,
      extras: collectives.parts,
      errorsOfCourse: errors.takes,
      ruling: ruling.part,
      maximum,
    },
    flags: [...marks.flags, ...ruling.flags],
    faults: faults.length > 0 ? faults : nothingSeen(maximum),
  };
}

/** `undefined` while nothing is marked: there is no percentage of nothing. */
function percentage(
  sheet: PercentageSheet,
  { added, maximum, errors }: { added: Exact; maximum: Exact; errors: Exact },
): Exact | undefined {
  if (maximum.compare(zero) <= 0) return undefined;
  const fromPoints = sheet.errorsOfCourse.from === 'points';
  const points = fromPoints ? added.sub(errors) : added;
  const percent = points.div(maximum).mul(exact(100));
  const score = fromPoints ? percent : percent.sub(errors);
  return sheet.roundJudge === null ? score : round(score, sheet.roundJudge);
}

/** A whole test of which no mark counts: not seen from start to end. */
const nothingSeen = (maximum: Exact): readonly GoFault[] =>
  maximum.compare(zero) > 0 ? [] : [fault('mark_missing', '/maneuvers')];

interface ErrorsReading {
  readonly takes: Exact;
  readonly eliminates: boolean;
  readonly faults: readonly GoFault[];
}

/** First error 2, second 4: together 6 where they are cumulative; a third, where two are listed, eliminates. */
function readErrors({ errorsOfCourse }: PercentageSheet, count: number): ErrorsReading {
  if (!Number.isSafeInteger(count) || count < 0 || Object.is(count, -0)) {
    return {
      takes: zero,
      eliminates: false,
      faults: [fault('errors_not_a_count', '/errorsOfCourse', { written: String(count) })],
    };
  }
  const { takes, cumulative } = errorsOfCourse;
  const counted = takes.slice(0, count).map((each) => exact(each));
  const taken = cumulative ? sum(counted) : (counted.at(-1) ?? zero);
  return { takes: taken, eliminates: count > takes.length, faults: [] };
}

/** What the judge ruled herself stands where it bars the entry already. */
function eliminated(ruling: RulingReading): RulingReading {
  if (ruling.tier === 'not-placed') return ruling;
  const part = { code: 'eliminated', effect: { kind: 'not-placed' } } as const;
  return { ...ruling, tier: 'not-placed', part };
}
