/**
 * Each judge placed separately: the card is the result.
 *
 * Source: several judges at one class so that an exhibitor earns several sets of placings
 * (http://www.pasofinoequestrian.com/articles/pf_judgingFAQ_gallup.html); rail classes are placed, not scored.
 */
import { placeOnCard } from '../card-measure.ts';
import type { PanelCard } from '../types.ts';
import type { Merge } from './merge.ts';

export function mergeOwnCard(card: PanelCard): Merge {
  const { judge } = card;
  return {
    total: (entry) => card.lines.get(entry)?.score,
    steps: [
      {
        of: 'merge',
        compare: () => ({
          basis: { step: 'card-place', judge },
          better: 'lower',
          measure: (entry) => placeOnCard(card, entry),
        }),
      },
    ],
  };
}
