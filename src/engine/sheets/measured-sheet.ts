/** Time with penalty seconds, the least wins: 17.482 s and two poles knocked at 5 s are 27.482. */
import { zero } from '../numbers/exact.ts';
import { allowedRange, isFault, readMark, readRange } from './mark.ts';
import { notOnSheet } from './not-on-sheet.ts';
import { pointsTaken, readPenalties } from './penalties.ts';
import { fault, type GoReading, noParts } from './reading.ts';
import { readRuling } from './rulings.ts';
import type { Go, MeasuredSheet, SheetManeuver } from './types.ts';

export function measuredReading(
  sheet: MeasuredSheet,
  maneuvers: readonly SheetManeuver[],
  go: Go,
): GoReading {
  const penalties = readPenalties(sheet.penalties, maneuvers, go.penalties);
  const ruling = readRuling(sheet, go.ruling);
  const read =
    go.measure === undefined
      ? fault('measure_missing', '/measure', { allowed: allowedRange(sheet.measure) })
      : readMark(go.measure, readRange(sheet.measure), { at: '/measure', position: undefined });
  const measure = isFault(read) ? undefined : read;
  return {
    tier: ruling.tier,
    score: measure?.add(pointsTaken(penalties.parts)).add(ruling.takes),
    better: 'lower',
    parts: { ...noParts, base: measure ?? zero, penalties: penalties.parts, ruling: ruling.part },
    flags: ruling.flags,
    faults: [
      ...notOnSheet(go, ['measure', 'penalties']),
      ...(isFault(read) ? [read] : []),
      ...penalties.faults,
      ...ruling.faults,
    ],
  };
}
