/** Exact numbers as text: for records (nothing lost) and for reading (at most some digits). */
import Fraction from 'fraction.js';
import type { Exact } from './exact.ts';
import { round } from './rounding.ts';

/** For records: `"214.5"` where the number ends as a decimal, otherwise a fraction `"214/3"`. */
export function recordText(value: Exact): string {
  return decimalDigits(value) === undefined ? value.toFraction() : decimalText(value);
}

/** The number in a record text again (hashes of a draw stand as `0x...`). Throws for all else. */
export function fromRecordText(text: string): Exact {
  if (/^-?\d+(?:\.\d+|\/\d+)?$/.test(text)) return new Fraction(text);
  if (/^0x[0-9a-f]+$/.test(text)) return new Fraction(BigInt(text));
  throw new RangeError(`not a recorded number: ${JSON.stringify(text)}`);
}

/** For reading: all digits of a number that ends, otherwise `places` digits rounded half up. */
export function readingText(value: Exact, places = 3): string {
  return decimalDigits(value) === undefined
    ? decimalText(round(value, { places, mode: 'half-up' }))
    : decimalText(value);
}

/** Digits after the point of a number that ends as a decimal; `undefined` where it never ends. */
function decimalDigits(value: Exact): number | undefined {
  let rest = value.d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : undefined;
}

function decimalText(value: Exact): string {
  const digits = decimalDigits(value) ?? 0;
  const sign = value.s < 0n && value.n !== 0n ? '-' : '';
  const whole = ((value.n * 10n ** BigInt(digits)) / value.d).toString().padStart(digits + 1, '0');
  return digits === 0 ? sign + whole : `${sign}${whole.slice(0, -digits)}.${whole.slice(-digits)}`;
}
