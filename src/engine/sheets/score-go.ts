/**
 * The marks of one go, on its sheet, become one judge's score with its parts. Nothing is ever guessed: what
 * is missing or not allowed is a fault that names the place, and all faults of a go come at once.
 */
import { measuredReading } from './measured-sheet.ts';
import { oneMarkReading } from './one-mark-sheet.ts';
import { patternReading } from './pattern-sheet.ts';
import { percentageReading } from './percentage-sheet.ts';
import { placesReading } from './places-sheet.ts';
import { type GoReading, isMissing } from './reading.ts';
import type { Go, GoFault, JudgeScore, ScoreSheet, SheetManeuver } from './types.ts';

export type GoScored =
  | { readonly ok: true; readonly score: JudgeScore }
  | { readonly ok: false; readonly faults: readonly GoFault[] };

/** The score of a finished go, or all that is missing and wrong. `maneuvers` are those of the class's pattern. */
export function scoreGo(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[], go: Go): GoScored {
  const { tier, score, better, parts, flags, faults } = readGo(sheet, maneuvers, go);
  const notPlaced = tier === 'not-placed';
  const standing = notPlaced ? faults.filter((fault) => !isMissing(fault)) : faults;
  if (standing.length > 0) return { ok: false, faults: standing };
  return { ok: true, score: { tier, score: notPlaced ? undefined : score, better, parts, flags } };
}

/** What is wrong with a go that is still being written: what is only missing is not named. */
export function draftFaults(
  sheet: ScoreSheet,
  maneuvers: readonly SheetManeuver[],
  go: Go,
): readonly GoFault[] {
  return readGo(sheet, maneuvers, go).faults.filter((fault) => !isMissing(fault));
}

/** A go as far as it is written. `score` leaves out what is missing or wrong, and says so in `faults`. */
export type RunningScore = GoReading;

/** Parts and total of a go so far; a percentage is that of the marks written so far. */
export function runningScore(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[], go: Go): RunningScore {
  return readGo(sheet, maneuvers, go);
}

function readGo(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[], go: Go): GoReading {
  switch (sheet.kind) {
    case 'pattern':
      return patternReading(sheet, maneuvers, go);
    case 'percentage':
      return percentageReading(sheet, maneuvers, go);
    case 'one-mark':
      return oneMarkReading(sheet, maneuvers, go);
    case 'places':
      return placesReading(sheet, go);
    case 'measured':
      return measuredReading(sheet, maneuvers, go);
  }
}
