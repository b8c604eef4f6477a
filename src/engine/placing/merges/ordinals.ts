/** Each entry's place with each judge, left-off entries counted as the rule states. */
import { countedPlace, unlistedPlace } from '../panel-card.ts';
import type { CardTies, EntryId, Unlisted } from '../types.ts';
import type { Contribution } from './contributions.ts';
import { once, type Panel } from './merge.ts';

export function placesOf(
  { cards, entries }: Panel,
  { cardTies, unlisted }: { readonly cardTies: CardTies; readonly unlisted: Unlisted },
): (entry: EntryId) => Contribution[] {
  const leftOff = new Map(cards.map((card) => [card, unlistedPlace(card, unlisted, entries.length)]));
  return once((entry) =>
    cards.map((card) => {
      const { judge, weight } = card;
      const place = countedPlace(card, entry, cardTies);
      if (place !== undefined) return { judge, weight, value: place };
      return {
        judge,
        weight,
        value: leftOff.get(card) ?? unlistedPlace(card, unlisted, entries.length),
        note: 'left-off',
      };
    }),
  );
}
