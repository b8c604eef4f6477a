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

/** Half of the cards of a group are signed by us, half by the yardstick. */
const groupsToSign = [
  { classes: 6, entries: 12, judges: 15 },
  { classes: 3, entries: 60, judges: 15 },
] as const;
const toPost = [
  { entries: 12, judges: 3 },
  { entries: 300, judges: 9 },
] as const;

console.log(`Node.js ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
if (isChosen('placing')) await placeClasses();
if (isChosen('signing') || isChosen('reading')) {
  const sheet = JSON.parse(
    readFileSync(new URL('../../seed/sheets/horsemanship.json', import.meta.url), 'utf8'),
  ) as ScoreSheet;
  const groups = isChosen('signing') ? groupsToSign : [];
  const signing = groups.map(({ classes, ...size }) => Array.from({ length: classes }, () => size));
  const posting = isChosen('reading') ? toPost : [];
  const classes = [...signing.flat(), ...posting];
  const bench = await serveLargeShow({
    entries: Math.max(...classes.map(({ entries }) => entries)),
    classes,
  });
  try {
    let first = 1;
    const numbers = [...signing, posting].map((group) => {
      first += group.length;
      return group.map((_, index) => first - group.length + index);
    });
    if (isChosen('signing')) await signCards(bench, sheet, numbers.slice(0, -1));
    if (isChosen('reading')) await readResults(bench, sheet, numbers.at(-1) ?? []);
  } finally {
    await bench.stop();
  }
}
