/** Recorded numbers for reading. */
import { exact } from '../../../engine/numbers/exact.ts';
import { fromRecordText, readingText } from '../../../engine/numbers/number-text.ts';
import { round } from '../../../engine/numbers/rounding.ts';
import type { Words } from '../../shared/words.tsx';
import { figureText, markText } from '../paper/mark-words.ts';

/** `"0.5"` -> "½", `"214/3"` -> "71.333" */
export const figureOf = (recorded: string, { language }: Words): string =>
  markText(readingText(fromRecordText(recorded)), { signed: false }, language);

/** `"0.7"`, 2 -> "0.70"; with a plus where `signed`. */
export function roundedFigure(
  recorded: string,
  {
    digits,
    signed = false,
    words,
  }: { readonly digits: number; readonly signed?: boolean; readonly words: Words },
): string {
  const value = round(fromRecordText(recorded), { places: digits, mode: 'half-up' });
  const text = figureText(withDigits(readingText(value), digits), words.language);
  return signed && value.compare(exact(0)) > 0 ? `+${text}` : text;
}

/** Over ten goes, as it is told: one go moves too little to be read. */
export const overTenGoes = (drift: string): string => fromRecordText(drift).mul(10).toFraction();

function withDigits(decimal: string, digits: number): string {
  const [whole = '', after = ''] = decimal.split('.');
  return digits === 0 ? whole : `${whole}.${after.padEnd(digits, '0')}`;
}
