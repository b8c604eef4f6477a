/**
 * Points for each place on each card, added; the most points are first.
 *
 * Source: 10-9-8 ... 1 under each of three judges (AMHA 2018 World Championship programme p. 12);
 * 120-105-91 ... 1 under two (IHSA Western Scoring Explanation, https://paperzz.com/doc/7195413).
 *
 *     10-9-8-7 table, places 2, 1, left off -> 9 + 10 + 0 = 19
 */
import { type Exact, exact, mean } from '../../numbers/exact.ts';
import type { CardLine, EntryId, PanelCard } from '../types.ts';
import { mergeByAdding } from './added-up.ts';
import type { Contribution } from './contributions.ts';
import type { Merge, Panel, RuleOf } from './merge.ts';

export function mergePlacePoints({ cards }: Panel, rule: RuleOf<'place-points'>): Merge {
  const points = pointsTable(rule);
  return mergeByAdding({
    basis: { step: 'place-points', discard: rule.discard },
    better: 'higher',
    given: (entry) => cards.map((card) => pointsOn(card, entry, points)),
  });
}

interface PointsTable {
  readonly forLine: (line: CardLine) => Exact;
  readonly unplaced: Exact;
}

/** Tied entries take the better place's points, or share equally what the places they hold are worth. */
function pointsTable({ points, unplaced, cardTies }: RuleOf<'place-points'>): PointsTable {
  const table = points.map((value) => exact(value));
  const beyond = exact(unplaced);
  const at = (place: number) => table[place - 1] ?? beyond;
  return {
    unplaced: beyond,
    forLine: ({ place, holders }) => {
      const first = Number(place.ceil().n);
      if (cardTies === 'better') return at(first);
      return mean(Array.from({ length: holders }, (_, index) => at(first + index)));
    },
  };
}

function pointsOn(card: PanelCard, entry: EntryId, points: PointsTable): Contribution {
  const { judge, weight } = card;
  const line = card.lines.get(entry);
  if (line === undefined) return { judge, weight, value: points.unplaced, note: 'left-off' };
  return { judge, weight, value: points.forLine(line) };
}
