/** What is wrong with a sheet or a pattern as such, before anybody marks anything on it. */
import { type Decimal, type Exact, parseDecimal, zero } from '../numbers/exact.ts';

export interface SheetFault {
  readonly code:
    | 'not_a_decimal'
    | 'not_a_whole_number'
    | 'not_positive'
    | 'below_zero'
    /** Low above high. */
    | 'range_upside_down'
    /** Counting steps from low, high is never reached. */
    | 'high_off_step'
    | 'code_twice'
    | 'name_empty'
    | 'lowest_above_base'
    | 'lowest_outside_total_range'
    | 'base_outside_total_range'
    /** The ruling has an effect that this kind of sheet cannot carry out. */
    | 'effect_not_on_this_sheet'
    /** Not seen counts as absent, so the judge must rule, and the sheet lets no ruling be given. */
    | 'absent_needs_rulings'
    /** Not cumulative, and a later error takes less than an earlier one. */
    | 'errors_go_down'
    | 'ruling_unknown'
    | 'position_twice'
    /** Positions count from 1 without a gap. */
    | 'position_gap'
    | 'no_maneuvers';
  /** JSON pointer into the sheet, or into the list of maneuvers. */
  readonly at: string;
  readonly written: string | undefined;
}

export const sheetFault = (code: SheetFault['code'], at: string, written?: unknown): SheetFault => ({
  code,
  at,
  written: written === undefined ? undefined : String(written),
});

/** Collects faults while a sheet is read through. */
export class SheetFaults {
  readonly found: SheetFault[] = [];

  add(code: SheetFault['code'], at: string, written?: unknown): void {
    this.found.push(sheetFault(code, at, written));
  }

  decimal(text: Decimal, at: string): Exact | undefined {
    const value = parseDecimal(text);
    if (value === undefined) this.add('not_a_decimal', at, text);
    return value;
  }

  /** Penalty points, coefficients, steps. */
  positive(text: Decimal, at: string): Exact | undefined {
    const value = this.decimal(text, at);
    if (value !== undefined && value.compare(zero) <= 0) this.add('not_positive', at, text);
    return value;
  }

  whole(value: number, at: string): void {
    if (!Number.isSafeInteger(value)) this.add('not_a_whole_number', at, value);
    else if (value < 1) this.add('not_positive', at, value);
  }

  unique(codes: readonly string[], at: (index: number) => string): void {
    for (const [index, code] of codes.entries()) {
      if (codes.indexOf(code) !== index) this.add('code_twice', at(index), code);
    }
  }
}
