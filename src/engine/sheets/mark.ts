/** One mark: a decimal in a range, on a step. */
import { type Exact, exact, onStep, parseDecimal } from '../numbers/exact.ts';
import { fault } from './reading.ts';
import type { Allowed, GoFault, MarkRange } from './types.ts';

/** A range with its decimals read. */
export interface ReadRange {
  readonly low: Exact;
  readonly high: Exact;
  readonly step: Exact;
  readonly written: MarkRange;
  /** Marks that were read before and stand in the range, so that a class of 300 reads each once. */
  readonly read: Map<string, Exact>;
}

/** A scale has few marks (thirteen from -3 to 3); times have many, and are not all kept. */
const mostMarksKept = 500;

const readRanges = new WeakMap<MarkRange, ReadRange>();

/** The decimals of a range, read once for each sheet. */
export function readRange(written: MarkRange): ReadRange {
  const before = readRanges.get(written);
  if (before !== undefined) return before;
  const { low, high, step } = written;
  const range = { low: exact(low), high: exact(high), step: exact(step), written, read: new Map() };
  readRanges.set(written, range);
  return range;
}

export const allowedRange = ({ low, high, step }: MarkRange): Allowed => ({ kind: 'range', low, high, step });

/** The mark, or why it is none: not a decimal, outside the range, between two steps. */
export function readMark(
  text: string,
  range: ReadRange,
  where: Pick<GoFault, 'at' | 'position'>,
): Exact | GoFault {
  const before = range.read.get(text);
  if (before !== undefined) return before;
  const mark = typeof text === 'string' ? parseDecimal(text) : undefined;
  const wrong = (code: GoFault['code']) =>
    fault(code, where.at, {
      position: where.position,
      written: String(text),
      allowed: allowedRange(range.written),
    });
  if (mark === undefined) return wrong('mark_not_a_number');
  if (mark.compare(range.low) < 0 || mark.compare(range.high) > 0) return wrong('mark_out_of_range');
  if (!onStep(mark, range.step, range.low)) return wrong('mark_off_step');
  if (range.read.size < mostMarksKept) range.read.set(text, mark);
  return mark;
}

export const isFault = (read: Exact | GoFault): read is GoFault => 'code' in read;

/** A mark times its coefficient, which is 1 for most. */
export const times = (mark: Exact, coefficient: string): Exact =>
  coefficient === '1' ? mark : mark.mul(exact(coefficient));
