/** One by one: every entry against every other; a judge who has both level, or neither, favors both. */
import { placesBy } from './counted-places.ts';
import type { RankedClass } from './generate-class.ts';

export function naivePairwise({ entries, cards }: RankedClass): Map<string, number> {
  const judged = entries.filter((entry) => cards.some((card) => card.flat().includes(entry)));
  const standing = (card: RankedClass['cards'][number], entry: string) => {
    const group = card.findIndex((tied) => tied.includes(entry));
    return group < 0 ? card.length : group;
  };
  const record = new Map(judged.map((entry) => [entry, { wins: 0, inFavor: 0 }]));
  for (const one of judged) {
    for (const other of judged) {
      const own = record.get(one);
      if (one === other || own === undefined) continue;
      const forOne = cards.filter((card) => standing(card, one) <= standing(card, other)).length;
      const forOther = cards.filter((card) => standing(card, other) <= standing(card, one)).length;
      own.inFavor += forOne;
      if (forOne >= forOther) own.wins += 1;
    }
  }
  return placesBy(
    record,
    (one, other) => one.wins > other.wins || (one.wins === other.wins && one.inFavor > other.inFavor),
  );
}
