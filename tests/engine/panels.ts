/** Short ways to write a panel in a test. */
import { exact } from '../../src/engine/numbers/exact.ts';
import {
  cardFromPlaces,
  cardFromRanking,
  cardFromScores,
  type ScoredLine,
} from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard, PlacingInput, PlacingRule } from '../../src/engine/placing/types.ts';

/** `ranked('A B=C D')`: A first, B and C tied for second, D fourth. Judges are called judge 1, judge 2 ... */
export function ranked(...rankings: readonly string[]): PanelCard[] {
  return rankings.map((ranking, index) =>
    cardFromRanking(
      { judge: `judge ${index + 1}` },
      ranking
        .split(' ')
        .filter((group) => group !== '')
        .map((group) => group.split('=')),
    ),
  );
}

/** One card for each judge: entry to score, as in `{ A: '71.5' }`. */
export function scored(...cards: readonly Readonly<Record<string, string>>[]): PanelCard[] {
  return cards.map((scores, index) => {
    const lines = Object.entries(scores).map(([entry, score]): [string, ScoredLine] => [
      entry,
      { tier: 'kept-pattern', score: exact(score) },
    ]);
    return cardFromScores({ judge: `judge ${index + 1}` }, new Map(lines));
  });
}

/** Places out of a larger field: one row for each entry, one column for each judge. */
export function placesPanel(rows: Readonly<Record<string, readonly number[]>>): PanelCard[] {
  const judges = Object.values(rows)[0]?.length ?? 0;
  return Array.from({ length: judges }, (_, judge) => {
    const places = Object.entries(rows).map(([entry, row]) => [entry, exact(row[judge] ?? 0)] as const);
    return cardFromPlaces({ judge: `judge ${judge + 1}` }, new Map(places));
  });
}

/** The placing as text: `A B=C D` is A first, B and C sharing second, D fourth. */
export function order(input: PlacingInput): string {
  const { placed } = placeClass(input);
  const places = [...new Set(placed.map(({ place }) => place))];
  const holders = (at: number) => placed.filter(({ place }) => place === at).map(({ entry }) => entry);
  return places.map((place) => holders(place).sort().join('=')).join(' ');
}

export const rankSum = {
  method: 'rank-sum',
  cardTies: 'better',
  unlisted: 'next',
  discard: 'none',
} as const;
export const majority = {
  method: 'majority',
  cardTies: 'better',
  unlisted: 'next',
  equalMajorities: 'totals',
} as const;
export const total = { method: 'total', discard: 'none', noScore: 'zero' } as const;

/** A class of everyone who is on a card, or ruled out on one. */
export function classOf(
  cards: readonly PanelCard[],
  merge: MergeRule,
  rest: Partial<PlacingRule> & Pick<Partial<PlacingInput>, 'decisions' | 'classNumber' | 'entries'> = {},
): PlacingInput {
  const { decisions = [], classNumber = 1, entries = everyone(cards), ...rule } = rest;
  return {
    entries,
    cards,
    decisions,
    classNumber,
    rule: { merge, ties: [], afterSplit: 'go-on', placesGiven: null, rulingHolds: null, ...rule },
  };
}

const everyone = (cards: readonly PanelCard[]) => [
  ...new Set(cards.flatMap(({ lines, ruledOut }) => [...lines.keys(), ...ruledOut.keys()])),
];
