/** What is wrong with a score sheet or the maneuvers of a pattern, in words for who writes them. */
import type { SheetFault } from '../sheets/sheet-fault.ts';

export function sheetFaultSentence({ code, written = '' }: SheetFault): string {
  const text = JSON.stringify(written);
  switch (code) {
    case 'not_a_decimal':
      return `${text} is no plain decimal; write it like "0.5", "70" or "-3"`;
    case 'not_a_whole_number':
      return `${text} is no whole number`;
    case 'not_positive':
      return `${text} must be more than zero`;
    case 'below_zero':
      return `${text} must not be below zero`;
    case 'range_upside_down':
      return 'the low end of the range is above the high end';
    case 'high_off_step':
      return `${text} is never reached by whole steps from the low end`;
    case 'code_twice':
      return `the code ${text} is there twice; each has its own`;
    case 'name_empty':
      return 'it must not be empty';
    case 'lowest_above_base':
      return `the lower limit ${text} is above the base`;
    case 'lowest_outside_total_range':
      return `the lower limit ${text} is outside the range of the total`;
    case 'base_outside_total_range':
      return `the base ${text} is above the range of the total`;
    case 'effect_not_on_this_sheet':
      return `a ruling cannot have the effect ${text} on this kind of sheet`;
    case 'absent_needs_rulings':
      return 'a maneuver not seen counts as not shown, so the judge must rule; the sheet needs at least one ruling';
    case 'errors_go_down':
      return `${text} is less than the error before takes; list what the errors take in all, or make them cumulative`;
    case 'ruling_unknown':
      return `there is no ruling ${text}`;
    case 'position_twice':
      return `position ${text} is there twice`;
    case 'position_gap':
      return `position ${text} leaves a gap; positions count from 1`;
    case 'no_maneuvers':
      return 'this sheet marks maneuvers, and the pattern has none';
  }
}
