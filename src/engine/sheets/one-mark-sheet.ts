/** One mark for the whole go, 0 to 100: score = mark - penalties. 84.5 - 4 = 80.5. */
import { zero } from '../numbers/exact.ts';
import { allowedRange, isFault, readMark, readRange } from './mark.ts';
import { notOnSheet } from './not-on-sheet.ts';
import { pointsTaken, readPenalties } from './penalties.ts';
import { fault, type GoReading, noParts } from './reading.ts';
import { readRuling } from './rulings.ts';
import type { Go, OneMarkSheet, SheetManeuver } from './types.ts';

export function oneMarkReading(sheet: OneMarkSheet, maneuvers: readonly SheetManeuver[], go: Go): GoReading {
  const penalties = readPenalties(sheet.penalties, maneuvers, go.penalties);
  const ruling = readRuling(sheet, go.ruling);
  const read =
    go.mark === undefined
      ? fault('mark_missing', '/mark', { allowed: allowedRange(sheet.mark) })
      : readMark(go.mark, readRange(sheet.mark), { at: '/mark', position: undefined });
  const mark = isFault(read) ? undefined : read;
  return {
    tier: ruling.tier,
    score: mark?.sub(pointsTaken(penalties.parts)).sub(ruling.takes),
    better: 'higher',
    parts: { ...noParts, base: mark ?? zero, penalties: penalties.parts, ruling: ruling.part },
    flags: ruling.flags,
    faults: [
      ...notOnSheet(go, ['mark', 'penalties']),
      ...(isFault(read) ? [read] : []),
      ...penalties.faults,
      ...ruling.faults,
    ],
  };
}
