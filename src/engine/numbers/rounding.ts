/** Rounding, only where a rule book asks for it, and by the way that the rule states. */
import Fraction from 'fraction.js';
import type { Exact } from './exact.ts';

/** How a half goes: away from zero (`half-up`), to the even digit (`half-even`), or digits are cut off (`down`). */
export type RoundingMode = 'half-up' | 'half-even' | 'down';

export interface Rounding {
  /** Digits kept after the decimal point. */
  readonly places: number;
  readonly mode: RoundingMode;
}

/** `value` rounded to `places` digits; exact itself. (66.6665 to 3 places, half-up, is 66.667.) */
export function round(value: Exact, { places, mode }: Rounding): Exact {
  const scale = 10n ** BigInt(places);
  const scaled = value.abs().mul(scale);
  const whole = scaled.n / scaled.d;
  const twiceRest = 2n * (scaled.n - whole * scaled.d);
  const up =
    mode !== 'down' &&
    (twiceRest > scaled.d || (twiceRest === scaled.d && (mode === 'half-up' || whole % 2n === 1n)));
  const magnitude = new Fraction(up ? whole + 1n : whole, scale);
  return value.s < 0n ? magnitude.neg() : magnitude;
}
