/**
 * `npm run bench`: how long things take beside a yardstick in the same run. Timing is no test: nothing fails here.
 * `npm run bench -- placing` runs one part, or several: placing, weighing, sealing, signing, asking, reading, archiving,
 * marking.
 */
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { archiveShow } from './archive-show.ts';
import { askAsPhone } from './ask-as-phone.ts';
import { type BenchService, startBenchService } from './bench-service.ts';
import { markInBrowser } from './mark-in-browser.ts';
import { placeClasses } from './place-classes.ts';
import { type PostedShow, postShow } from './posted-show.ts';
import { readResults } from './read-results.ts';
import { sealLines } from './seal-lines.ts';
import { signCards } from './sign-cards.ts';
import { weighPages } from './weigh-pages.ts';

const parts = [
  ...(['placing', 'weighing', 'sealing', 'signing'] as const),
  ...(['asking', 'reading', 'archiving', 'marking'] as const),
];
type Part = (typeof parts)[number];

const small = { entries: 12, judges: 3 } as const;
const large = { entries: 300, judges: 9 } as const;

const named = process.argv.slice(2);
const unknown = named.filter((name) => !parts.some((part) => part === name));
if (unknown.length > 0) {
  console.error(`There is no ${unknown.join(', ')}; the parts are ${parts.join(', ')}.`);
  process.exit(1);
}
const isChosen = (part: Part) => named.length === 0 || named.includes(part);

/** With as much other work as there are processors, or more, ours and the yardstick wait for it. */
const load = () =>
  loadavg()
    .map((one) => one.toFixed(1))
    .join(', ');

async function overTheService(bench: BenchService): Promise<void> {
  const sheet = JSON.parse(
    readFileSync(new URL('../../seed/sheets/horsemanship.json', import.meta.url), 'utf8'),
  ) as ScoreSheet;
  if (isChosen('sealing')) await sealLines(bench);
  if (isChosen('signing')) await signCards(bench, sheet);
  const posted: PostedShow[] = [];
  if (isChosen('asking') || isChosen('reading')) posted.push(await postShow(bench, sheet, small));
  if (isChosen('asking')) for (const show of posted) await askAsPhone(bench, show);
  if (isChosen('reading') || isChosen('archiving')) posted.push(await postShow(bench, sheet, large));
  if (isChosen('reading')) await readResults(bench, posted);
  if (isChosen('archiving')) for (const show of posted.slice(-1)) await archiveShow(bench, show);
  if (isChosen('marking')) await markInBrowser(bench);
}

console.log(`Node.js ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
console.log(`Load of the machine over the last 1, 5 and 15 minutes before it began: ${load()}`);
if (isChosen('placing')) await placeClasses();
if (isChosen('weighing')) weighPages();
if (parts.some((part) => part !== 'placing' && part !== 'weighing' && isChosen(part))) {
  const bench = await startBenchService();
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.once(signal, () => bench.stop().finally(() => process.exit(1)));
  try {
    await overTheService(bench);
  } finally {
    await bench.stop();
  }
}
console.log(`\nLoad of the machine when it ended: ${load()}`);
