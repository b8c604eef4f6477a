/**
 * Ranks of the entries that two or more judges have in common: each card ranked anew among those entries, tied
 * entries at the mean of the ranks they cover. Twice the rank is a whole number, so ranks are kept doubled.
 */
import type { EntryId, PanelCard } from '../placing/types.ts';

/** Twice the mean rank of each entry, in the order in which the entries are given; 2 is first alone. */
export function doubledRanks(card: PanelCard, entries: readonly EntryId[]): number[] {
  const places = entries.map((entry) => {
    const line = card.lines.get(entry);
    if (line === undefined) throw new RangeError('an entry is not on this card');
    return line.place;
  });
  const ordered = places.map((place, index) => ({ place, index })).sort((a, b) => a.place.compare(b.place));
  const ranks = places.map(() => 0);
  for (let first = 0; first < ordered.length; ) {
    const place = ordered[first]?.place;
    let end = first;
    while (place !== undefined && ordered[end]?.place.equals(place)) end += 1;
    // Ranks first + 1 .. end: twice their mean is first + 1 + end.
    for (const { index } of ordered.slice(first, end)) ranks[index] = first + 1 + end;
    first = end;
  }
  return ranks;
}

/** The entries that all of these cards have, in the order of the first. */
export function commonEntries(cards: readonly PanelCard[]): EntryId[] {
  const [first, ...others] = cards;
  if (first === undefined) return [];
  return [...first.lines.keys()].filter((entry) => others.every(({ lines }) => lines.has(entry)));
}

/** How many entries share each rank, where more than one does. */
export function tieSizes(ranks: readonly number[]): number[] {
  const sizes = new Map<number, number>();
  for (const rank of ranks) sizes.set(rank, (sizes.get(rank) ?? 0) + 1);
  return [...sizes.values()].filter((size) => size > 1);
}
