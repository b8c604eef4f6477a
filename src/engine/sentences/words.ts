/** How entries, judges and maneuvers are called in a sentence, and how numbers and lists are written in it. */
import type { Exact } from '../numbers/exact.ts';
import { fromRecordText, readingText } from '../numbers/number-text.ts';
import type { EntryId, JudgeId } from '../placing/types.ts';
import { inOrder, type Speech } from './speech.ts';

/** Names come from outside: reasons hold ids only. */
export interface Names {
  /** Usually the back number. */
  readonly entry: (entry: EntryId) => string;
  readonly judge: (judge: JudgeId) => string;
  /** e.g. `maneuver 3 (lope to C)`. */
  readonly maneuver: (position: number) => string;
  /** Who decided and why, e.g. `by the show manager: both riders agreed to another go`. */
  readonly decision: (id: string) => string;
}

/** Who tells it: a language, and the names that she uses. */
export interface Teller {
  readonly speech: Speech;
  readonly names: Names;
}

/** Entries and judges by what they are called in the record. */
export const plainNames = (speech: Speech): Names => ({
  entry: (entry) => entry,
  judge: (judge) => judge,
  maneuver: (position) => speech.say('name-maneuver', { position }),
  decision: () => speech.say('name-decision'),
});

export const plainTeller = (speech: Speech): Teller => ({ speech, names: plainNames(speech) });

/** `maneuver 3 (lope to C)`; one that has no name is called by its number. */
export function maneuverName(position: number, name: string | undefined, speech: Speech): string {
  return name === undefined
    ? speech.say('name-maneuver', { position })
    : speech.say('name-maneuver-called', { position, name });
}

/** `a`, `a and b`, `a, b and c`. */
export const list = (words: readonly string[], speech: Speech): string =>
  joined(words, { speech, last: 'list-and' });

/** `a`, `a or b`, `a, b or c`. */
export const either = (words: readonly string[], speech: Speech): string =>
  joined(words, { speech, last: 'list-or' });

/** `a, b, c` */
export const series = (words: readonly string[], speech: Speech): string =>
  joined(words, { speech, last: 'list-comma' });

/** As it was written, between the quotation marks of a message: a line end or a control character shows as `\\n`. */
export const quoted = (written: string): string => JSON.stringify(written).slice(1, -1);

/** `a; b` */
export const clauses = (words: readonly string[], speech: Speech): string =>
  words.reduce((first, next) => (first === '' ? next : speech.say('list-clause', { first, next })), '');

function joined(words: readonly string[], { speech, last }: { speech: Speech; last: string }): string {
  const end = words.at(-1);
  if (end === undefined || words.length < 2) return end ?? '';
  const most = words.slice(0, -1).reduce((first, next) => speech.say('list-comma', { first, next }));
  return speech.say(last, { first: most, next: end });
}

/** A recorded number for reading; `214/3` becomes `71.333`, in German `71,333`. */
export const figure = (recorded: string, speech: Speech): string =>
  decimal(readingText(fromRecordText(recorded)), speech);

export const exactFigure = (value: Exact, speech: Speech): string => decimal(readingText(value), speech);

/** `+0.5`, `−1`, `0`. */
export const signed = (value: Exact, speech: Speech): string =>
  value.s > 0n && value.n !== 0n
    ? speech.say('number-plus', { figure: exactFigure(value, speech) })
    : exactFigure(value, speech);

/** Marks go by halves: the cards of a class of 300 say the same few things again and again. */
const mostKept = 4_000;
const keptOf = new WeakMap<Speech, Map<string, string>>();

/** `make` is asked once for a key. For marks and labels only: what a person wrote is kept nowhere. */
export function oftenSaid(key: string, speech: Speech, make: () => string): string {
  const kept = keptOf.get(speech) ?? new Map<string, string>();
  keptOf.set(speech, kept);
  const before = kept.get(key);
  if (before !== undefined) return before;
  const said = make();
  if (kept.size < mostKept) kept.set(key, said);
  return said;
}

/** A decimal as the language writes it: sign and mark are put in their place, the digits stay what they are. */
export const decimal = (text: string, speech: Speech): string =>
  oftenSaid(text, speech, () => decimalIn(text, speech));

function decimalIn(text: string, speech: Speech): string {
  const [whole = '', after] = text.replace(/^-/, '').split('.');
  const figure = after === undefined ? whole : speech.say('number-decimal', { whole, after });
  return text.startsWith('-') ? speech.say('number-minus', { figure }) : figure;
}

/** A place on a card: `2nd`; a mean of tied places stays a number: `2.5`. */
export function placeFigure(recorded: string, speech: Speech): string {
  const value = fromRecordText(recorded);
  return value.d === 1n
    ? speech.say('place', { n: inOrder(Number(value.n)) })
    : speech.say('place-between', { n: exactFigure(value, speech) });
}
