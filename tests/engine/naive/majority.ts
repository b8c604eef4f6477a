/**
 * The majority of places as the rule is read aloud: for the first place look at the firsts, then at the seconds or
 * better, and so on, until someone has a majority; take the best of those who have; go on with the rest.
 */
import { added, type CountedPlace, countedPlaces, type PlaceOptions, parts } from './counted-places.ts';
import type { RankedClass } from './generate-class.ts';

export type EqualMajorities = 'totals' | 'next-places' | 'average';

export function naiveMajority(
  shown: RankedClass,
  options: PlaceOptions & { readonly equalMajorities: EqualMajorities },
): Map<string, number> {
  const counted = countedPlaces(shown, options);
  const needed = Math.floor(shown.cards.length / 2) + 1;
  const lastColumn = shown.entries.length + 1;
  const under = (entry: string) => counted.get(entry) ?? [];
  const votes = (entry: string, column: number) => atOrBetter(under(entry), column).length;
  const totalOf = (entry: string, column: number) => added(atOrBetter(under(entry), column));
  const totalOfAll = (entry: string) => added(under(entry).map(({ place }) => place));

  const placed = new Map<string, number>();
  let waiting = [...counted.keys()];
  const place = (chosen: readonly string[]) => {
    const position = placed.size + 1;
    for (const entry of chosen) placed.set(entry, position);
    waiting = waiting.filter((entry) => !chosen.includes(entry));
  };

  for (let column = 1; column <= lastColumn; ) {
    let best = waiting.filter((entry) => votes(entry, column) >= needed);
    if (best.length === 0) {
      column += 1;
      continue;
    }
    best = most(best, (entry) => votes(entry, column));
    if (options.equalMajorities !== 'average') best = least(best, (entry) => totalOf(entry, column));
    if (options.equalMajorities !== 'next-places') best = least(best, totalOfAll);
    else {
      for (let next = column + 1; next <= lastColumn; next += 1) {
        best = most(best, (entry) => votes(entry, next));
        best = least(best, (entry) => totalOf(entry, next));
      }
    }
    place(best);
  }
  // Those who never had a majority stand behind all who had: by the total of all judges, where the rule knows it.
  while (waiting.length > 0)
    place(options.equalMajorities === 'next-places' ? waiting : least(waiting, totalOfAll));
  return placed;
}

function atOrBetter(places: readonly CountedPlace[], column: number): number[] {
  return places.filter(({ listed, place }) => listed && place <= column * parts).map(({ place }) => place);
}

function least(entries: readonly string[], value: (entry: string) => number): string[] {
  const lowest = Math.min(...entries.map(value));
  return entries.filter((entry) => value(entry) === lowest);
}

const most = (entries: readonly string[], value: (entry: string) => number) =>
  least(entries, (entry) => -value(entry));
