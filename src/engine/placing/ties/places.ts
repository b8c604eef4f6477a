/**
 * Ties broken by the places on the cards: the best single place, the most firsts (then seconds ...), and how
 * many of the other tied entries a majority of the judges puts an entry ahead of.
 *
 * Source: best placings after the points (AMHA 2018 World Championship programme p. 12); most firsts, then
 * seconds (http://www.hamiltoncountyparks.org/rec_equestrian/results.htm); majority of the judges between the
 * tied: common practice, no source. Of three that beat each other in a ring none comes first.
 */
import { type Exact, exact } from '../../numbers/exact.ts';
import { compareOnCard } from '../panel-card.ts';
import type { EntryId, PanelCard } from '../types.ts';
import type { TieSteps } from './tie-break.ts';

export const bestSinglePlace: TieSteps<'best-single-place'> = ({ panel }) => [
  {
    of: 'ties',
    compare: () => ({
      basis: { step: 'best-single-place' },
      better: 'lower',
      measure: (entry) => ({ value: placesOn(panel.cards, entry).sort((a, b) => a.compare(b))[0] }),
    }),
  },
];

export const mostFirsts: TieSteps<'most-firsts'> = ({ panel }) => [
  {
    of: 'ties',
    compare: (group) => {
      const places = new Map(group.map((entry) => [entry, placesOn(panel.cards, entry).map(Number)]));
      const count = (entry: EntryId, at: number) =>
        places.get(entry)?.filter((place) => place === at).length ?? 0;
      const given = [...new Set([...places.values()].flat())].sort((a, b) => a - b);
      const at = given.find((place) =>
        group.some((entry) => count(entry, place) !== count(group[0] ?? entry, place)),
      );
      if (at === undefined) return undefined;
      return {
        basis: { step: 'most-places', at },
        better: 'higher',
        measure: (entry) => ({ value: exact(count(entry, at)) }),
      };
    },
  },
];

export const headToHead: TieSteps<'head-to-head'> = ({ panel }) => [
  {
    of: 'ties',
    compare: (group) => ({
      basis: { step: 'head-to-head' },
      better: 'higher',
      measure: (entry) => ({
        value: exact(group.filter((other) => other !== entry && isAhead(panel.cards, entry, other)).length),
      }),
    }),
  },
];

function placesOn(cards: readonly PanelCard[], entry: EntryId): Exact[] {
  return cards.flatMap(({ lines }) => lines.get(entry)?.place ?? []);
}

/** More judges have `entry` ahead of `other` than the other way round. */
function isAhead(cards: readonly PanelCard[], entry: EntryId, other: EntryId): boolean {
  const balance = cards.map((card) => Math.sign(compareOnCard(card, entry, other)));
  return balance.reduce((total, one) => total + one, 0) < 0;
}
