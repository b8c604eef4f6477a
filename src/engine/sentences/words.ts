/** How entries, judges and maneuvers are called in a sentence, and small words in English. */
import { fromRecordText, readingText } from '../numbers/number-text.ts';
import type { EntryId, JudgeId } from '../placing/types.ts';

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

export const plainNames: Names = {
  entry: (entry) => entry,
  judge: (judge) => judge,
  maneuver: (position) => `maneuver ${position}`,
  decision: () => 'as recorded',
};

const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/** `second`, `eleventh` as `11th`. */
export function ordinal(place: number): string {
  return ordinals[place - 1] ?? withEnding(place);
}

/** `2nd`, `11th`, `21st`. */
function withEnding(place: number): string {
  const tens = place % 100;
  return `${place}${tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th')}`;
}

const counts = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** `two`, `11`. */
export const count = (value: number): string => counts[value] ?? String(value);

/** `a`, `a and b`, `a, b and c`. */
export function list(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A recorded number for reading; `214/3` becomes `71.333`. */
export const figure = (recorded: string): string => readingText(fromRecordText(recorded));

/** A place on a card: `2nd`; a mean of tied places stays a number: `2.5`. */
export function placeFigure(recorded: string): string {
  const text = figure(recorded);
  return /^\d+$/.test(text) ? withEnding(Number(text)) : text;
}
