/** Places added, scores added, scores meaned: add up, then count who is better. */
import {
  added,
  countedPlaces,
  type PlaceOptions,
  parts,
  placesBy,
  withoutExtremes,
} from './counted-places.ts';
import type { RankedClass, ScoredClass } from './generate-class.ts';

export function naiveRankSum(
  shown: RankedClass,
  options: PlaceOptions & { readonly discard: boolean },
): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [entry, places] of countedPlaces(shown, options)) {
    const all = places.map(({ place }) => place);
    sums.set(entry, added(options.discard ? withoutExtremes(all) : all));
  }
  return placesBy(sums, (one, other) => one < other);
}

export interface ScoreOptions {
  readonly discard: boolean;
  readonly noScore: 'zero' | 'not-placed' | 'mean';
}

/** Totals and means order a class alike, since every entry is divided by the same number of judges. */
export function naiveTotal(
  { entries, cards }: ScoredClass,
  { discard, noScore }: ScoreOptions,
): Map<string, number> {
  const totals = new Map<string, number>();
  for (const entry of entries) {
    const given = cards.flatMap((card) => card.get(entry) ?? []).map((halfPoints) => halfPoints * parts);
    const missing = cards.length - given.length;
    if (given.length === 0 || (missing > 0 && noScore === 'not-placed')) continue;
    const instead = noScore === 'mean' ? added(given) / given.length : 0;
    const all = [...given, ...Array.from({ length: missing }, () => instead)];
    totals.set(entry, added(discard ? withoutExtremes(all) : all));
  }
  return placesBy(totals, (one, other) => one > other);
}
