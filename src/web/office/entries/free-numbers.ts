/** Which back numbers nobody wears. Pure. */

export interface FreeNumbers {
  /** The one after the highest given: numbers are handed out upwards. */
  readonly next: number;
  /** Free between those that are given, lowest first; at most a few. */
  readonly between: readonly number[];
}

const mostBetween = 3;

export function freeNumbers(taken: readonly number[]): FreeNumbers {
  const given = new Set(taken);
  const highest = Math.max(0, ...taken);
  const lowest = Math.min(highest, ...taken);
  const between: number[] = [];
  for (let number = lowest; number < highest && between.length < mostBetween; number += 1) {
    if (!given.has(number)) between.push(number);
  }
  return { next: highest + 1, between };
}
