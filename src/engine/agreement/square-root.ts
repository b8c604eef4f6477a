/**
 * Square roots for reading only: whatever is kept or compared stays a fraction. The digits are found on whole
 * numbers, so the same number comes out on every machine.
 */
import Fraction from 'fraction.js';
import type { Decimal, Exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';

/** Digits after the point of a rounded coefficient or deviation. */
export const readDigits = 6;

/** `sign` x the square root of `square`, rounded half away from zero to six digits. `square` may not be negative. */
export function rootText(square: Exact, sign: -1 | 1 = 1): Decimal {
  if (square.s < 0n) throw new RangeError('a negative number has no square root here');
  const scale = 10n ** BigInt(readDigits);
  // Twice the scaled root, cut off; adding one and halving rounds the half up.
  const twice = wholeRoot((4n * scale * scale * square.n) / square.d);
  const rounded = new Fraction((twice + 1n) / 2n, scale);
  return recordText(sign < 0 ? rounded.neg() : rounded);
}

/** The greatest whole number whose square is at most `value`. */
function wholeRoot(value: bigint): bigint {
  if (value < 2n) return value;
  let root = 1n << BigInt(Math.ceil(value.toString(2).length / 2));
  for (;;) {
    const next = (root + value / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}
