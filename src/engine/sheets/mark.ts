/** One mark: a decimal in a range, on a step. */
import { type Exact, exact, onStep, parseDecimal } from '../numbers/exact.ts';
import { fault } from './reading.ts';
import type { GoFault, MarkRange } from './types.ts';

/** A range with its decimals read, so that a go of ten maneuvers reads them once. */
export interface ReadRange {
  readonly low: Exact;
  readonly high: Exact;
  readonly step: Exact;
  readonly written: MarkRange;
}

export const readRange = (range: MarkRange): ReadRange => ({
  low: exact(range.low),
  high: exact(range.high),
  step: exact(range.step),
  written: range,
});

/** `-3 to 3 by 0.5` */
export const rangeText = ({ low, high, step }: MarkRange): string => `${low} to ${high} by ${step}`;

/** The mark, or why it is none: not a decimal, outside the range, between two steps. */
export function readMark(
  text: string,
  range: ReadRange,
  where: Pick<GoFault, 'at' | 'position'>,
): Exact | GoFault {
  const mark = typeof text === 'string' ? parseDecimal(text) : undefined;
  const wrong = (code: GoFault['code']) =>
    fault(code, where.at, {
      position: where.position,
      written: String(text),
      allowed: rangeText(range.written),
    });
  if (mark === undefined) return wrong('mark_not_a_number');
  if (mark.compare(range.low) < 0 || mark.compare(range.high) > 0) return wrong('mark_out_of_range');
  return onStep(mark, range.step, range.low) ? mark : wrong('mark_off_step');
}

export const isFault = (read: Exact | GoFault): read is GoFault => 'code' in read;
