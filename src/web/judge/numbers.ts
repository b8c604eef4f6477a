/** Exact numbers as they stand on a judge's sheet ("+½", "−1½", "70½"), and as they are said ("plus one half"). */
import type { Exact } from '../../engine/numbers/exact.ts';
import { readingText, recordText } from '../../engine/numbers/number-text.ts';
import { decimalText, figureText, markText, spokenMark } from '../shared/figure-words.ts';
import type { Words } from '../shared/words.tsx';

/** "70½", "−1½", "0". */
export const figure = (value: Exact, { language }: Words): string => figureText(recordText(value), language);

/** With a plus: "+½". */
export const signedFigure = (value: Exact, { language }: Words): string =>
  markText(recordText(value), language);

/** "66.346", in German "66,346": percentages and times. */
export const decimalFigure = (value: Exact, { language }: Words): string =>
  decimalText(readingText(value), language);

/** Of a scale around zero: "plus one half", "minus 2 and a half". */
export const signedSaid = (value: Exact, words: Words): string => spokenMark(recordText(value), words);

/** Of all else: "71 and a half". */
export function said(value: Exact, words: Words): string {
  const text = recordText(value);
  const [whole = '', rest] = text.split('.');
  if (text.startsWith('-') || (rest !== undefined && rest !== '5')) return figure(value, words);
  const half = rest === undefined ? 'no' : whole === '0' ? 'only' : 'and';
  return words.t('shared-spoken-mark', { sign: 'none', half, whole }).trim();
}
