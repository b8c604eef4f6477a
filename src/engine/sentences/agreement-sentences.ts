/** How close it was, and how far the judges agreed, in plain words. */
import type { Agreement } from '../agreement/agreement.ts';
import type { JudgeTendency } from '../agreement/judge-tendency.ts';
import type { CardChange, Margin } from '../agreement/margins.ts';
import { type Exact, exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import { round } from '../numbers/rounding.ts';
import type { Speech } from './speech.ts';
import { decimal, either, figure, list, type Teller } from './words.ts';

/**
 * `Half a point on judge 2's card would have put 118 ahead of 214.` A family reads it, so it says what would have
 * done it and not that a judge was wrong.
 */
export function marginSentence({ ahead, behind, change }: Margin, { speech, names }: Teller): string {
  const pair = { ahead: names.entry(ahead), behind: names.entry(behind) };
  if (change.by === 'none') {
    return speech.say(change.why === 'status' ? 'margin-status' : 'margin-none', pair);
  }
  const size =
    change.by === 'points'
      ? points(change.size, speech)
      : speech.say('margin-places', { places: change.size });
  return speech.say('margin-change', { ...pair, size, cards: cardsOf(change.on, { speech, names }) });
}

function points(size: string, speech: Speech): string {
  if (size === '0.5') return speech.say('margin-half-point');
  return size === '1'
    ? speech.say('margin-one-point')
    : speech.say('margin-points', { points: figure(size, speech) });
}

/** `judge 2's card`, `the card of judge 1 or judge 3`. */
function cardsOf(changes: readonly CardChange[], { speech, names }: Teller): string {
  const judges = [...new Set(changes.map(({ judge }) => judge))].map(names.judge);
  const [only] = judges;
  return judges.length === 1 && only !== undefined
    ? speech.say('margin-card', { judge: only })
    : speech.say('margin-cards', { judges: either(judges, speech) });
}

/** One sentence on the whole panel, and one for each judge whose scores drifted over the order of go. */
export function agreementSentences({ together, judges }: Agreement, teller: Teller): string[] {
  return [
    concordanceSentence(together, teller.speech),
    ...judges.flatMap((tendency) => driftSentence(tendency, teller)),
  ];
}

function concordanceSentence({ w, judges, entries }: Agreement['together'], speech: Speech): string {
  if (w === undefined) return speech.say('agreement-none');
  const counted = { judges, entries: entries.length };
  return speech.say(`agreement-${degree(w)}`, { ...counted, w: rounded(w, { digits: 2, speech }) });
}

/** Where one word ends and the next begins is our own choice, no source: the number stands beside it. */
function degree(w: Exact): 'fully' | 'well' | 'in-part' | 'little' {
  if (w.compare(exact('0.9')) >= 0) return 'fully';
  if (w.compare(exact('0.7')) >= 0) return 'well';
  return w.compare(exact('0.5')) >= 0 ? 'in-part' : 'little';
}

/** Less than this over ten goes, or fewer goes, are not worth a sentence: our own choice, no source. */
const driftWorthTelling = exact('0.5');
const goesWorthTelling = 6;

function driftSentence({ judge, drift, scores }: JudgeTendency, { speech, names }: Teller): string[] {
  if (drift === undefined || scores === undefined || scores.goes < goesWorthTelling) return [];
  const overTen = drift.mul(10);
  if (overTen.abs().compare(driftWorthTelling) < 0) return [];
  const by = rounded(overTen.abs(), { digits: 1, speech });
  return [speech.say(`drift-${overTen.s > 0n ? 'rose' : 'fell'}`, { judge: names.judge(judge), by })];
}

/** Which judges would have had it otherwise, for the office: pairs that agree least, by Kendall's tau-b. */
export function leastAgreedSentence({ pairs }: Agreement, { speech, names }: Teller): string | undefined {
  const [first, ...rest] = pairs.flatMap(({ judges, tauB }) =>
    tauB === undefined ? [] : [{ judges, tauB }],
  );
  if (first === undefined || rest.length === 0) return undefined;
  const least = rest.reduce((a, b) => (b.tauB.signedSquare.compare(a.tauB.signedSquare) < 0 ? b : a), first);
  const judges = list(least.judges.map(names.judge), speech);
  return speech.say('agreement-least', {
    judges,
    tau: rounded(exact(least.tauB.text), { digits: 2, speech }),
  });
}

const rounded = (value: Exact, { digits, speech }: { readonly digits: number; readonly speech: Speech }) =>
  decimal(recordText(round(value, { places: digits, mode: 'half-up' })), speech);
