/** The least of a row of growing changes that swaps two entries. */

/** Changes are numbered 1, 2, 3 ... and grow. */
export interface GrowingChange {
  /** How many there are to look at. */
  readonly count: number;
  /**
   * After change `number`, by the merge alone: above zero, the entry behind has come ahead; zero, the merge ties the
   * two. Never falls as the change grows.
   */
  readonly compare: (number: number) => number;
  /** After change `number`, with status, merge and tie-breaks: is the entry behind ahead? The truth. */
  readonly swaps: (number: number) => boolean;
}

/**
 * Number of the first change that swaps; `undefined`: none does. Looks with `compare` for the first change that ties
 * and the first that swaps, and asks the truth only where the merge ties the two.
 */
export function leastChange({ count, compare, swaps }: GrowingChange): number | undefined {
  const level = first(count, (number) => compare(number) >= 0);
  if (level === undefined) return undefined;
  let number = level;
  for (; number <= count && compare(number) === 0; number += 1) if (swaps(number)) return number;
  return number <= count ? number : undefined;
}

/** The least number from 1 to `count` that `holds`, where all above one that holds do: doubling, then halving. */
function first(count: number, holds: (number: number) => boolean): number | undefined {
  let below = 0;
  let at = Math.min(1, count);
  while (at > below && !holds(at)) {
    below = at;
    at = Math.min(2 * at, count);
  }
  if (at === below) return undefined;
  while (at - below > 1) {
    const middle = Math.floor((below + at) / 2);
    if (holds(middle)) at = middle;
    else below = middle;
  }
  return at;
}
