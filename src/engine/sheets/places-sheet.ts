/** Rail classes: nothing is scored; a go holds a ruling or a remark, and the card's ranking says the rest. */
import { notOnSheet } from './not-on-sheet.ts';
import { type GoReading, noParts } from './reading.ts';
import { readRuling } from './rulings.ts';
import type { Go, PlacesSheet } from './types.ts';

export function placesReading(sheet: PlacesSheet, go: Go): GoReading {
  const ruling = readRuling(sheet, go.ruling);
  return {
    tier: ruling.tier,
    score: undefined,
    better: 'higher',
    parts: { ...noParts, ruling: ruling.part },
    flags: ruling.flags,
    faults: [...notOnSheet(go, []), ...ruling.faults],
  };
}
