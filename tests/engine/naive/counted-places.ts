/** What each entry counts as on each card, in whole parts so that halves and means stay exact. */
import type { RankedClass } from './generate-class.ts';

/** All sums are counted in these parts of one place or one half point: divisible by 2 and by 1 to 9 judges. */
export const parts = 5040;

export interface PlaceOptions {
  readonly cardTies: 'better' | 'mean';
  readonly unlisted: 'next' | 'mean' | number;
}

export interface CountedPlace {
  readonly listed: boolean;
  /** Place in `parts`. */
  readonly place: number;
}

export type CountedPlaces = ReadonlyMap<string, readonly CountedPlace[]>;

/** The entries that at least one judge has on the card, each with what it counts as under each judge. */
export function countedPlaces({ entries, cards }: RankedClass, options: PlaceOptions): CountedPlaces {
  const judged = entries.filter((entry) => cards.some((card) => card.flat().includes(entry)));
  return new Map(
    judged.map((entry) => [entry, cards.map((card) => onCard(card, entry, judged.length, options))]),
  );
}

function onCard(
  card: readonly (readonly string[])[],
  entry: string,
  field: number,
  { cardTies, unlisted }: PlaceOptions,
): CountedPlace {
  let ahead = 0;
  for (const tied of card) {
    if (tied.includes(entry)) {
      const lastOfThem = ahead + tied.length;
      const place = cardTies === 'better' ? ahead + 1 : (ahead + 1 + lastOfThem) / 2;
      return { listed: true, place: place * parts };
    }
    ahead += tied.length;
  }
  if (unlisted === 'next') return { listed: false, place: (ahead + 1) * parts };
  if (unlisted === 'mean')
    return { listed: false, place: ((ahead + 1 + Math.max(field, ahead + 1)) / 2) * parts };
  return { listed: false, place: unlisted * parts };
}

export const added = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** Takes out one highest and one lowest where four or more are given. */
export function withoutExtremes(numbers: readonly number[]): readonly number[] {
  if (numbers.length < 4) return numbers;
  return [...numbers].sort((a, b) => a - b).slice(1, -1);
}

/** Each entry's place: one more than those that are better. */
export function placesBy<T>(
  values: ReadonlyMap<string, T>,
  isBetter: (one: T, other: T) => boolean,
): Map<string, number> {
  return new Map(
    [...values].map(([entry, own]) => [
      entry,
      1 + [...values.values()].filter((other) => isBetter(other, own)).length,
    ]),
  );
}
