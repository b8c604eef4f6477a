/** Marks as they are read on the page and by a screen reader: "+½", "plus one half". */
import { exact, parseDecimal } from '../../../engine/numbers/exact.ts';
import { readingText } from '../../../engine/numbers/number-text.ts';
import type { Words } from '../../shared/words.tsx';

/** `"-1.5"` -> "−1½"; `signed`: with a plus where it is more than zero, as on a pattern's sheet. Other text stays. */
export function markText(mark: string, { signed }: { readonly signed: boolean }, language: string): string {
  const value = parseDecimal(mark);
  if (value === undefined) return mark;
  const size = halfText(readingText(value.abs())) ?? figureText(readingText(value.abs()), language);
  if (value.compare(exact(0)) < 0) return `−${size}`;
  return signed && value.compare(exact(0)) > 0 ? `+${size}` : size;
}

const halfText = (decimal: string): string | undefined => {
  const [, whole] = /^(\d+)\.5$/.exec(decimal) ?? [];
  return whole === undefined ? undefined : `${whole === '0' ? '' : whole}½`;
};

/** A decimal, or a fraction of a record, as the language writes it: `"71.5"` -> "71,5". */
export function figureText(decimal: string, language: string): string {
  const [whole = '', after] = decimal.replace(/^-/, '').split('.');
  const point = new Intl.NumberFormat(language).format(1.5).charAt(1);
  const figure = after === undefined ? whole : whole + point + after;
  return decimal.startsWith('-') ? `−${figure}` : figure;
}

/** "plus one half"; what is no half and no whole stays a figure. */
export function spokenMark(mark: string, { signed }: { readonly signed: boolean }, words: Words): string {
  const value = parseDecimal(mark);
  if (value === undefined) return mark;
  const [whole = '0', after] = readingText(value.abs()).split('.');
  if (after !== undefined && after !== '5') return markText(mark, { signed }, words.language);
  const sign =
    value.compare(exact(0)) < 0 ? 'minus' : signed && value.compare(exact(0)) > 0 ? 'plus' : 'none';
  return words.t('office-paper-spoken-mark', {
    sign,
    whole: Number(whole),
    half: after === '5' ? 'yes' : 'no',
  });
}
