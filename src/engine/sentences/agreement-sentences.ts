/** How close it was, and how far the judges agreed, in plain words. */
import type { Agreement } from '../agreement/agreement.ts';
import type { JudgeTendency } from '../agreement/judge-tendency.ts';
import type { CardChange, Margin } from '../agreement/margins.ts';
import { type Exact, exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import { round } from '../numbers/rounding.ts';
import { capital, count, figure, list, type Names } from './words.ts';

/**
 * `Half a point on judge 2's card would have put 118 ahead of 214.` A family reads it, so it says what would have
 * done it and not that a judge was wrong.
 */
export function marginSentence({ ahead, behind, change }: Margin, names: Names): string {
  const swapped = `put ${names.entry(behind)} ahead of ${names.entry(ahead)}`;
  if (change.by === 'none') {
    return change.why === 'status'
      ? `${names.entry(behind)} was placed below all who kept the pattern, so no mark could have ${swapped}.`
      : `No single change on one judge's card would have ${swapped}.`;
  }
  const size = change.by === 'points' ? points(change.size) : places(change.size);
  return `${capital(size)} on ${cardsOf(change.on, names)} would have ${swapped}.`;
}

function points(size: string): string {
  if (size === '0.5') return 'half a point';
  return size === '1' ? 'one point' : `${figure(size)} points`;
}

const places = (size: number) => `${count(size)} ${size === 1 ? 'place' : 'places'}`;

/** `judge 2's card`, `the card of judge 1 or judge 3`. */
function cardsOf(changes: readonly CardChange[], names: Names): string {
  const judges = [...new Set(changes.map(({ judge }) => judge))].map(names.judge);
  const [only] = judges;
  if (judges.length === 1 && only !== undefined) return `${only}'s card`;
  return `the card of ${judges.slice(0, -1).join(', ')} or ${judges.at(-1)}`;
}

/** One sentence on the whole panel, and one for each judge whose scores drifted over the order of go. */
export function agreementSentences({ together, judges }: Agreement, names: Names): string[] {
  return [
    concordanceSentence(together.w, { judges: together.judges, entries: together.entries.length }),
    ...judges.flatMap((tendency) => driftSentence(tendency, names)),
  ];
}

function concordanceSentence(
  w: Exact | undefined,
  { judges, entries }: { readonly judges: number; readonly entries: number },
): string {
  if (w === undefined)
    return 'There is too little that the judges have in common to say how far they agreed.';
  const figures = `Kendall's W ${rounded(w, 2)}; 1 is the same order on every card, 0 no common order`;
  return `The ${count(judges)} judges agreed ${degree(w)} on the ${count(entries)} entries that all of them placed (${figures}).`;
}

/** Where one word ends and the next begins is our own choice, no source: the number stands beside it. */
function degree(w: Exact): string {
  if (w.compare(exact('0.9')) >= 0) return 'almost fully';
  if (w.compare(exact('0.7')) >= 0) return 'well';
  return w.compare(exact('0.5')) >= 0 ? 'in part' : 'little';
}

/** Less than this over ten goes, or fewer goes, are not worth a sentence: our own choice, no source. */
const driftWorthTelling = exact('0.5');
const goesWorthTelling = 6;

function driftSentence({ judge, drift, scores }: JudgeTendency, names: Names): string[] {
  if (drift === undefined || scores === undefined || scores.goes < goesWorthTelling) return [];
  const overTen = drift.mul(10);
  if (overTen.abs().compare(driftWorthTelling) < 0) return [];
  const direction = overTen.s > 0n ? 'rose' : 'fell';
  const by = rounded(overTen.abs(), 1);
  return [
    `${capital(names.judge(judge))}'s scores ${direction} by about ${by} points over every ten goes; the better goes may simply have come ${overTen.s > 0n ? 'late' : 'early'}.`,
  ];
}

/** Which judges would have had it otherwise, for the office: pairs that agree least, by Kendall's tau-b. */
export function leastAgreedSentence({ pairs }: Agreement, names: Names): string | undefined {
  const [first, ...rest] = pairs.flatMap(({ judges, tauB }) =>
    tauB === undefined ? [] : [{ judges, tauB }],
  );
  if (first === undefined || rest.length === 0) return undefined;
  const least = rest.reduce((a, b) => (b.tauB.signedSquare.compare(a.tauB.signedSquare) < 0 ? b : a), first);
  return `${capital(list(least.judges.map(names.judge)))} agreed least (Kendall's tau-b ${rounded(exact(least.tauB.text), 2)}).`;
}

const rounded = (value: Exact, digits: number) =>
  recordText(round(value, { places: digits, mode: 'half-up' }));
