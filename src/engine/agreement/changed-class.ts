/** A class with one card changed, and how two of its entries then stand. */
import { mergeCards } from '../placing/merges/index.ts';
import { placeClass } from '../placing/place-class.ts';
import { refine } from '../placing/refine.ts';
import { standing } from '../placing/status.ts';
import type { EntryId, PanelCard } from '../placing/types.ts';
import type { CardChange, Pair } from './margins.ts';

/** The panel with this card in the place of the one of the same judge. */
export function withCard(cards: readonly PanelCard[], changed: PanelCard): PanelCard[] {
  return cards.map((card) => (card.judge === changed.judge ? changed : card));
}

/** Does the entry behind come to stand ahead, all rules of the class applied? */
export function swaps({ input, ahead, behind }: Pair, cards: readonly PanelCard[]): boolean {
  const { placed } = placeClass({ ...input, cards, rule: { ...input.rule, placesGiven: null } });
  const placeOf = (entry: EntryId) => placed.find((one) => one.entry === entry)?.place ?? placed.length + 1;
  return placeOf(behind) < placeOf(ahead);
}

/** By the merge alone: above zero, the entry behind is ahead; zero, the merge ties the two. */
export function compareByMerge({ input, ahead, behind }: Pair): (cards: readonly PanelCard[]) => number {
  const { placeable } = standing(input);
  return (cards) => {
    const { steps } = mergeCards({ entries: placeable, cards }, input.rule.merge);
    const { groups } = refine([ahead, behind], steps, 'go-on');
    if (groups.length === 1) return 0;
    return groups[0]?.[0] === behind ? 1 : -1;
  };
}

/** Of several changes, those of the least size, in the order in which they are given. */
export function leastOf(
  found: readonly { readonly size: number; readonly on: CardChange }[],
): { readonly size: number; readonly on: readonly CardChange[] } | undefined {
  if (found.length === 0) return undefined;
  const size = Math.min(...found.map((one) => one.size));
  return { size, on: found.filter((one) => one.size === size).map(({ on }) => on) };
}
