/**
 * Exact numbers for marks, scores, places and points: rationals on BigInt, so that a sum is never
 * off by a rounding and a mean of three judges stays a third.
 */
import Fraction from 'fraction.js';

/** An exact rational number. Immutable. */
export type Exact = Fraction;

/** A decimal as it is written on the wire and in stored records: `"71.5"`, `"-0.5"`, `"0"`. */
export type Decimal = string;

const canonicalDecimal = /^(?:-(?!0(?:\.0+)?$))?(?:0|[1-9]\d{0,8})(?:\.\d{1,9})?$/;

export const zero: Exact = new Fraction(0);

/**
 * Reads a decimal of at most nine digits before and nine after the point.
 * `undefined` for all else: exponents, fractions such as `"1/2"`, signs of zero, infinities, blanks.
 */
export function parseDecimal(text: string): Exact | undefined {
  return canonicalDecimal.test(text) ? new Fraction(text) : undefined;
}

/** An exact number out of a whole number, or out of a decimal that was checked before; throws otherwise. */
export function exact(value: Decimal | number | bigint): Exact {
  if (typeof value === 'string') {
    const parsed = parseDecimal(value);
    if (parsed === undefined) throw new RangeError(`not a decimal: ${JSON.stringify(value)}`);
    return parsed;
  }
  if (typeof value === 'number' && !Number.isSafeInteger(value)) {
    throw new RangeError(`not a whole number: ${value}`);
  }
  return new Fraction(value);
}

/** Sum of exact numbers; zero for none. */
export function sum(values: Iterable<Exact>): Exact {
  let total = zero;
  for (const value of values) total = total.add(value);
  return total;
}

/** Arithmetic mean; throws for none, which has no mean. */
export function mean(values: readonly Exact[]): Exact {
  if (values.length === 0) throw new RangeError('no values: there is no mean');
  return sum(values).div(values.length);
}

/** Is `value` a whole number of steps away from `origin`? A mark of 0.25 is not on a step of 0.5. */
export function onStep(value: Exact, step: Exact, origin: Exact = zero): boolean {
  return value.sub(origin).div(step).d === 1n;
}
