/** What each judge contributes to an added-up number, and which of them are discarded. */
import { type Exact, sum } from '../../numbers/exact.ts';
import { recordText } from '../../numbers/number-text.ts';
import type { Discard, JudgeId, ReasonPart } from '../types.ts';

export interface Contribution {
  readonly judge: JudgeId;
  readonly value: Exact;
  readonly weight: Exact;
  readonly note?: ReasonPart['note'];
}

/** From this size up a panel can spare its highest and its lowest; of three, two gone would leave one judge. */
export const smallestPanelToDiscard = 4;

/**
 * Marks one highest and one lowest as discarded; of several equal ones only one goes (the first in the
 * order of the panel; the highest before the lowest). 70, 72, 72, 75, 69 leaves 70, 72, 72.
 */
export function discardExtremes(given: readonly Contribution[], discard: Discard): readonly Contribution[] {
  if (discard === 'none' || given.length < smallestPanelToDiscard) return given;
  const high = extreme(given, -1, (a, b) => a.compare(b) > 0);
  const low = extreme(given, high, (a, b) => a.compare(b) < 0);
  return given.map((one, index) => {
    if (index === high) return { ...one, note: 'discarded-high' };
    return index === low ? { ...one, note: 'discarded-low' } : one;
  });
}

function extreme(
  given: readonly Contribution[],
  except: number,
  beyond: (a: Exact, b: Exact) => boolean,
): number {
  let found = -1;
  let most: Exact | undefined;
  given.forEach(({ value }, index) => {
    if (index === except || (most !== undefined && !beyond(value, most))) return;
    found = index;
    most = value;
  });
  return found;
}

export const isDiscarded = ({ note }: Contribution): boolean =>
  note === 'discarded-high' || note === 'discarded-low';

/** Weighted sum of the contributions that count. */
export function totalOf(contributions: readonly Contribution[]): Exact {
  return sum(contributions.filter((one) => !isDiscarded(one)).map(({ value, weight }) => value.mul(weight)));
}

/** Sum of the weights that count: a mean divides by it. */
export function weightOf(contributions: readonly Contribution[]): Exact {
  return sum(contributions.filter((one) => !isDiscarded(one)).map(({ weight }) => weight));
}

export function reasonParts(contributions: readonly Contribution[]): ReasonPart[] {
  return contributions.map(({ judge, value, weight, note }) => ({
    judge,
    value: recordText(value),
    ...(note === undefined ? {} : { note }),
    ...(weight.equals(1) ? {} : { weight: recordText(weight) }),
  }));
}
