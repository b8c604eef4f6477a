/** The smallest move of one entry on one card that swaps two neighbours, where cards are merged by place. */
import { exact } from '../numbers/exact.ts';
import type { MergeRule } from '../placing/types.ts';
import { type Move, movesOf } from './card-changes.ts';
import { compareByMerge, leastOf, swaps, withCard } from './changed-class.ts';
import { leastChange } from './least-change.ts';
import type { CardChange, MarginChange, Pair } from './margins.ts';

export function marginByPlaces(pair: Pair): MarginChange {
  const { cards, rule } = pair.input;
  const compare = onlyGrows(rule.merge) ? compareByMerge(pair) : () => 0;
  const found: { size: number; on: CardChange }[] = [];
  for (const { on, moves } of changesOf(pair)) {
    const best = Math.min(...found.map(({ size }) => size));
    const tried = moves.filter(({ size }) => size <= best);
    const at = (number: number) => {
      const move = tried[number - 1];
      return move === undefined ? cards : withCard(cards, move.card());
    };
    const number = leastChange({
      count: tried.length,
      compare: (one) => compare(at(one)),
      swaps: (one) => swaps(pair, at(one)),
    });
    const move = number === undefined ? undefined : tried[number - 1];
    if (move !== undefined) found.push({ size: move.size, on });
  }
  const least = leastOf(found);
  return least === undefined ? { by: 'none', why: 'no-single-change' } : { by: 'places', ...least };
}

function changesOf({
  input,
  ahead,
  behind,
}: Pair): { readonly on: CardChange; readonly moves: readonly Move[] }[] {
  return input.cards.flatMap((card) => [
    {
      on: { judge: card.judge, entry: behind, direction: 'up' as const },
      moves: movesOf(card, behind, 'up'),
    },
    {
      on: { judge: card.judge, entry: ahead, direction: 'down' as const },
      moves: movesOf(card, ahead, 'down'),
    },
  ]);
}

/**
 * Does a further place up never make an entry worse by the merge? Then the first move that helps can be found by
 * halving. Not so where a card that leaves an entry off counts as a fixed number, where points rise down the table,
 * or where the referee chooses between whoever stands at the top; there every move is tried.
 */
function onlyGrows(merge: MergeRule): boolean {
  switch (merge.method) {
    case 'rank-sum':
    case 'majority':
      return merge.unlisted === 'next' || merge.unlisted === 'mean';
    case 'place-points': {
      const table = [...merge.points, merge.unplaced].map((points) => exact(points));
      return table.every((points, index) => points.compare(table[index - 1] ?? points) <= 0);
    }
    case 'pairwise':
    case 'separate':
      return true;
    case 'total':
    case 'mean':
    case 'two-judges-and-referee':
      return false;
  }
}
