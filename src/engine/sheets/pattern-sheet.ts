/**
 * Pattern sheet. score = base + maneuver marks + extra marks - penalties.
 * 70 + (0.5 + 1 - 0.5) + 3 - (3 + 5) = 66. Common practice in horsemanship, showmanship, equitation, reining, trail.
 */
import { type Exact, exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import { readExtras } from './extra-marks.ts';
import { countsOf, readManeuvers } from './maneuver-marks.ts';
import { readRange } from './mark.ts';
import { notOnSheet } from './not-on-sheet.ts';
import { pointsTaken, readPenalties } from './penalties.ts';
import { fault, type GoReading, noParts } from './reading.ts';
import { readRuling, rulingStillMissing } from './rulings.ts';
import type { Go, GoFault, PatternSheet, ScoreFlag, SheetManeuver } from './types.ts';

export function patternReading(sheet: PatternSheet, maneuvers: readonly SheetManeuver[], go: Go): GoReading {
  const base = exact(sheet.base);
  const marks = readManeuvers({
    range: readRange(sheet.maneuver),
    notSeen: sheet.notSeen,
    maneuvers,
    marks: go.maneuvers,
  });
  const extras = readExtras(sheet.extras, go.extras);
  const penalties = readPenalties(sheet.penalties, maneuvers, go.penalties);
  const ruling = readRuling(sheet, go.ruling);
  const added = base.add(countsOf(marks.parts)).add(countsOf(extras.parts));
  const total = added.sub(pointsTaken(penalties.parts)).sub(ruling.takes);
  const faults = [
    ...notOnSheet(go, ['maneuvers', 'extras', 'penalties']),
    ...marks.faults,
    ...extras.faults,
    ...penalties.faults,
    ...ruling.faults,
    ...rulingStillMissing(sheet, go, marks.flags),
  ];
  const barred = ruling.tier === 'not-placed';
  const limited = barred ? { score: total, flags: [] } : atLeast(sheet, total);
  return {
    tier: ruling.tier,
    score: limited.score,
    better: 'higher',
    parts: {
      ...noParts,
      base,
      maneuvers: marks.parts,
      extras: extras.parts,
      penalties: penalties.parts,
      ruling: ruling.part,
    },
    flags: [...marks.flags, ...ruling.flags, ...limited.flags],
    faults: faults.length > 0 || barred ? faults : outsideTotal(sheet, limited.score),
  };
}

/** A total below the lower limit counts as the limit, and shows that it did. */
function atLeast(sheet: PatternSheet, total: Exact): { score: Exact; flags: readonly ScoreFlag[] } {
  const lowest = sheet.lowest === null ? undefined : exact(sheet.lowest);
  if (lowest === undefined || total.compare(lowest) >= 0) return { score: total, flags: [] };
  return { score: lowest, flags: [{ kind: 'lower-limit', sum: recordText(total) }] };
}

/** Asked of a whole go only: a go half written may still come into the range. */
function outsideTotal({ totalRange }: PatternSheet, score: Exact): readonly GoFault[] {
  if (totalRange === null) return [];
  const { low, high } = totalRange;
  if (score.compare(exact(low)) >= 0 && score.compare(exact(high)) <= 0) return [];
  return [
    fault('total_out_of_range', '', {
      written: recordText(score),
      allowed: { kind: 'range', low, high, step: undefined },
    }),
  ];
}
