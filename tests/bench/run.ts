/**
 * `npm run bench`: how long things take beside a yardstick in the same run. Timing is no test: nothing fails here.
 * `npm run bench -- placing` runs one part: placing, signing, reading.
 */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { serveLargeShow } from './large-show-service.ts';
import { placeClasses } from './place-classes.ts';
import { readResults } from './read-results.ts';
import { signCards } from './sign-cards.ts';

const chosen = process.argv.slice(2);
const isChosen = (part: string) => chosen.length === 0 || chosen.includes(part);

/** Classes 1 to 12 are there to be signed, half of each by us and half by the yardstick; 13 and 14 to be posted. */
const signing = [
  [1, 2, 3, 4, 5, 6, 7, 8],
  [9, 10, 11, 12],
];
const sizes = [
  ...Array.from({ length: 8 }, () => ({ entries: 12, judges: 15 })),
  ...Array.from({ length: 4 }, () => ({ entries: 60, judges: 15 })),
  { entries: 12, judges: 3 },
  { entries: 300, judges: 9 },
];

console.log(`Node.js ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
if (isChosen('placing')) await placeClasses();
if (isChosen('signing') || isChosen('reading')) {
  const sheet = JSON.parse(
    readFileSync(new URL('../../seed/sheets/horsemanship.json', import.meta.url), 'utf8'),
  ) as ScoreSheet;
  const bench = await serveLargeShow({ entries: 300, classes: sizes });
  try {
    if (isChosen('signing')) await signCards(bench, sheet, signing);
    if (isChosen('reading')) await readResults(bench, sheet, [13, 14]);
  } finally {
    await bench.stop();
  }
}
