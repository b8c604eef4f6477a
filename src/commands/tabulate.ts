/** `npm run --silent tabulate -- contest.json`: reads one contest, prints its placing as one JSON object. */
import { readFileSync } from 'node:fs';
import { readingText } from '../engine/numbers/number-text.ts';
import { placeClass, placeSeparately } from '../engine/placing/place-class.ts';
import type { Placing } from '../engine/placing/types.ts';
import { because, whyUnplaced } from '../engine/sentences/placing-sentences.ts';
import { plainTeller } from '../engine/sentences/words.ts';
import { english } from '../language/index.ts';
import { ContestFault, readContest } from './contest/contest-form.ts';
import { placingInput } from './contest/contest-panel.ts';

/** A total that does not end as a decimal is printed to six digits, far below what could tell two totals apart. */
const printedDigits = 6;

const teller = plainTeller(english);

function print(text: string) {
  const input = placingInput(readContest(text));
  if (input.rule.merge.method !== 'separate') return printed(placeClass(input));
  const cards = placeSeparately(input).map(({ judge, placing }) => ({ judge, ...printed(placing) }));
  return {
    placings: cards
      .flatMap(({ judge, placings }) => placings.map((line) => ({ ...line, judge })))
      .sort((a, b) => a.place - b.place),
    unplaced: cards.flatMap(({ judge, unplaced }) => unplaced.map((line) => ({ ...line, judge }))),
  };
}

function printed(placing: Placing) {
  return {
    placings: placing.placed.map(({ entry, place, tied, total }) => ({
      entry,
      place,
      tied,
      total: total === undefined ? null : readingText(total, printedDigits),
      because: because(placing, entry, teller),
    })),
    unplaced: placing.unplaced.map((line) => ({ entry: line.entry, why: whyUnplaced(line, teller) })),
  };
}

function main(file: string | undefined): number {
  if (file === undefined) {
    console.error('contest: name one file, as in: npm run --silent tabulate -- contest.json');
    return 2;
  }
  try {
    console.log(JSON.stringify(print(readFileSync(file, 'utf8')), null, 2));
    return 0;
  } catch (error) {
    if (!(error instanceof ContestFault) && !isMissingFile(error)) throw error;
    console.error(error.message.replaceAll('\n', ' '));
    return 2;
  }
}

function isMissingFile(error: unknown): error is Error {
  return error instanceof Error && 'code' in error && 'syscall' in error;
}

process.exitCode = main(process.argv[2]);
