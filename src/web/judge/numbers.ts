/** Marks and scores as a judge writes them ("+½", "−1½", "70½"), and as they are said ("plus one half"). */
import type { Exact } from '../../engine/numbers/exact.ts';
import { readingText } from '../../engine/numbers/number-text.ts';
import type { Words } from '../shared/words.tsx';

const isNegative = (value: Exact): boolean => value.s < 0n && value.n !== 0n;
const isPositive = (value: Exact): boolean => value.s > 0n && value.n !== 0n;

const signs: Readonly<Record<string, string>> = { '1/2': '½', '1/4': '¼', '3/4': '¾' };

/** "70½", "−1½", "0"; halves and quarters as one sign, all else as decimals of the language. */
export const figure = (value: Exact, words: Words): string =>
  (isNegative(value) ? '−' : '') + size(value.abs(), words);

/** The same with a plus: "+½". */
export const signedFigure = (value: Exact, words: Words): string =>
  (isPositive(value) ? '+' : '') + figure(value, words);

/** "66.346", in German "66,346": percentages and times. */
export function decimalFigure(value: Exact, { t }: Words): string {
  const [whole = '', after] = readingText(value.abs()).split('.');
  const told = after === undefined ? whole : t('judge-decimal', { whole, after });
  return (isNegative(value) ? '−' : '') + told;
}

function size(value: Exact, words: Words): string {
  const whole = value.n / value.d;
  const rest = value.n - whole * value.d;
  if (rest === 0n) return String(whole);
  const sign = signs[`${rest}/${value.d}`];
  if (sign === undefined) return decimalFigure(value, words);
  return whole === 0n ? sign : `${whole}${sign}`;
}

/** For whoever listens: "plus one half", "minus 2 and a half", "zero". */
export function said(value: Exact, words: Words): string {
  const { t } = words;
  const told = saidSize(value.abs(), words);
  if (isNegative(value)) return t('judge-said-minus', { figure: told });
  return told;
}

export const signedSaid = (value: Exact, words: Words): string =>
  isPositive(value) ? words.t('judge-said-plus', { figure: said(value, words) }) : said(value, words);

function saidSize(value: Exact, words: Words): string {
  if (value.n === 0n) return words.t('judge-said-zero');
  if (value.d !== 2n) return decimalFigure(value, words);
  const whole = Number(value.n / value.d);
  return whole === 0 ? words.t('judge-said-half') : words.t('judge-said-and-half', { whole });
}
