/**
 * Exact numbers out of answers ("214.5", "-1.5", "643/3") as people read them ("214½", "−1½", "214⅓"). They are texts
 * from end to end; no binary fraction comes near them.
 */
import type { Words } from './words.tsx';

interface Parts {
  readonly isNegative: boolean;
  readonly whole: string;
  /** `5` of 214.5, `1/3` of 643/3; empty: a whole number. */
  readonly rest: string;
}

/** Of a whole number, a decimal or a fraction. `undefined`: it is something else, and is shown as it is. */
function partsOf(number: string): Parts | undefined {
  const isNegative = number.startsWith('-');
  const [, whole, rest] = /^-?(\d+)(?:\.(\d+))?$/.exec(number) ?? [];
  if (whole !== undefined) return { isNegative, whole, rest: rest ?? '' };
  const [, top, bottom] = /^-?(\d+)\/([1-9]\d*)$/.exec(number) ?? [];
  if (top === undefined || bottom === undefined) return undefined;
  const [n, d] = [BigInt(top), BigInt(bottom)];
  return { isNegative, whole: String(n / d), rest: `${n % d}/${bottom}` };
}

/** Fractions that have a sign of their own. */
const signs: Readonly<Record<string, string>> = {
  ...{ '5': '½', '25': '¼', '75': '¾' },
  ...{ '1/2': '½', '1/4': '¼', '3/4': '¾', '1/3': '⅓', '2/3': '⅔', '1/6': '⅙', '5/6': '⅚' },
};

/** "214½", "66.346" ("66,346"), "−1½". */
export function figureText(number: string, language: string): string {
  const parts = partsOf(number);
  if (parts === undefined) return number;
  const { isNegative, whole, rest } = parts;
  const sign = signs[rest];
  const size = sign !== undefined ? (whole === '0' ? sign : whole + sign) : withRest(whole, rest, language);
  return isNegative ? `−${size}` : size;
}

/** Percentages and times: always with their decimals, never with a sign for a half. */
export function decimalText(number: string, language: string): string {
  const parts = partsOf(number);
  if (parts === undefined) return number;
  return (parts.isNegative ? '−' : '') + withRest(parts.whole, parts.rest, language);
}

function withRest(whole: string, rest: string, language: string): string {
  if (rest === '') return whole;
  if (rest.includes('/')) return `${whole} ${rest}`;
  return whole + pointOf(language) + rest;
}

const pointOf = (language: string): string =>
  new Intl.NumberFormat(language).formatToParts(1.5).find(({ type }) => type === 'decimal')?.value ?? '.';

/** With a plus where it is more than nothing: "+½", "−1½", "0". */
export function markText(mark: string, language: string): string {
  const text = figureText(mark, language);
  return text === '0' || text.startsWith('−') ? text : `+${text}`;
}

/** For whoever listens: "plus one half", "minus 1 and a half", "0". */
export function spokenMark(mark: string, { t, language }: Words): string {
  const parts = partsOf(mark);
  if (parts === undefined || !['', '5', '1/2'].includes(parts.rest)) return markText(mark, language);
  const { isNegative, whole, rest } = parts;
  const half = rest === '' ? 'no' : whole === '0' ? 'only' : 'and';
  const sign = isNegative ? 'minus' : whole === '0' && rest === '' ? 'none' : 'plus';
  return t('shared-spoken-mark', { sign, half, whole: Number(whole) }).trim();
}
