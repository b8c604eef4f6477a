/** Runs the engine on a class that was made up, with nothing but the merge: no tie-breaks. */
import { exact } from '../../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores, type ScoredLine } from '../../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard } from '../../../src/engine/placing/types.ts';
import type { RankedClass, ScoredClass } from './generate-class.ts';

export function enginePlacesOfRanks({ entries, cards }: RankedClass, merge: MergeRule): Map<string, number> {
  return places(
    entries,
    cards.map((ranking, index) => cardFromRanking({ judge: `judge ${index + 1}` }, ranking)),
    merge,
  );
}

export function enginePlacesOfScores({ entries, cards }: ScoredClass, merge: MergeRule): Map<string, number> {
  const panel = cards.map((scores, index) => {
    const lines = [...scores].map(([entry, halfPoints]): [string, ScoredLine] => [
      entry,
      { tier: 'kept-pattern', score: exact(halfPoints).div(2) },
    ]);
    return cardFromScores({ judge: `judge ${index + 1}` }, new Map(lines));
  });
  return places(entries, panel, merge);
}

function places(
  entries: readonly string[],
  cards: readonly PanelCard[],
  merge: MergeRule,
): Map<string, number> {
  const { placed } = placeClass({
    entries,
    cards,
    decisions: [],
    classNumber: 1,
    rule: { merge, ties: [], afterSplit: 'go-on', placesGiven: null, rulingHolds: null },
  });
  return new Map(placed.map(({ entry, place }) => [entry, place]));
}

/** Throws with the whole class where the two differ; comparing so many classes has to be quick. */
export function mustAgree(
  engine: ReadonlyMap<string, number>,
  naive: ReadonlyMap<string, number>,
  shown: () => unknown,
): void {
  const same =
    engine.size === naive.size && [...naive].every(([entry, place]) => engine.get(entry) === place);
  if (same) return;
  throw new Error(
    `the engine says ${show(engine)}, the second way ${show(naive)}, for ${JSON.stringify(shown())}`,
  );
}

const show = (places: ReadonlyMap<string, number>) =>
  JSON.stringify([...places].sort(([a], [b]) => a.localeCompare(b)));
