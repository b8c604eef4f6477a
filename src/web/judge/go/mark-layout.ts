/**
 * How the marks of a sheet lie under the thumb, out of its range and step: each mark one tap, each key 48 px or more on
 * 390 px. A scale around zero lies like a balance, what adds above and what takes beneath; zero stands at the side of
 * both, as high as the two rows.
 */
import { type Decimal, exact } from '../../../engine/numbers/exact.ts';
import { recordText } from '../../../engine/numbers/number-text.ts';
import type { MarkRange } from '../../../engine/sheets/types.ts';

export type MarkLayout =
  | { readonly is: 'balance'; readonly above: readonly Decimal[]; readonly beneath: readonly Decimal[] }
  | { readonly is: 'rows'; readonly columns: number; readonly marks: readonly Decimal[] }
  /** Too many for one look: first the ten, then the mark. */
  | { readonly is: 'tens'; readonly tens: readonly Ten[] }
  /** A time: it is typed. */
  | { readonly is: 'typed' };

export interface Ten {
  /** Its lowest mark. */
  readonly from: Decimal;
  readonly marks: readonly Decimal[];
}

const mostColumns = 7;
const mostKeys = 28;
const mostMarks = 400;

const layouts = new WeakMap<MarkRange, MarkLayout>();

/** The same layout for the same range each time. */
export function markLayout(range: MarkRange): MarkLayout {
  const known = layouts.get(range);
  if (known !== undefined) return known;
  const made = layOut(range);
  layouts.set(range, made);
  return made;
}

function layOut(range: MarkRange): MarkLayout {
  const marks = marksOf(range);
  if (marks === undefined) return { is: 'typed' };
  if (recordText(exact(range.low).neg()) === range.high && marks.includes('0')) {
    const half = (marks.length - 1) / 2;
    if (half < mostColumns) {
      return { is: 'balance', above: marks.slice(half + 1), beneath: marks.slice(0, half).toReversed() };
    }
  }
  if (marks.length <= mostKeys) return { is: 'rows', columns: columnsFor(marks.length), marks };
  const tens = tensOf(marks);
  const fits = tens.length <= mostKeys && tens.every((ten) => ten.marks.length <= mostKeys);
  return fits ? { is: 'tens', tens } : { is: 'typed' };
}

/** 11 marks in two rows of 6, 21 in three of 7. */
function columnsFor(count: number): number {
  const rows = Math.ceil(count / mostColumns);
  return Math.ceil(count / rows);
}

/** All marks from low to high; `undefined` where there are too many to show. */
function marksOf({ low, high, step }: MarkRange): readonly Decimal[] | undefined {
  const [first, stride] = [exact(low), exact(step)];
  const count = exact(high).sub(first).div(stride).floor().n;
  if (count >= BigInt(mostMarks)) return undefined;
  return Array.from({ length: Number(count) + 1 }, (_, index) => recordText(first.add(stride.mul(index))));
}

function tensOf(marks: readonly Decimal[]): readonly Ten[] {
  const groups = new Map<string, Decimal[]>();
  for (const mark of marks) {
    const ten = exact(mark).div(10).floor().toFraction();
    const group = groups.get(ten);
    if (group === undefined) groups.set(ten, [mark]);
    else group.push(mark);
  }
  return [...groups.values()].map((group) => ({ from: group[0] ?? '0', marks: group }));
}
