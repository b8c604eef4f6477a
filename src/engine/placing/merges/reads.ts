/** What each way of merging reads off a card; asked wherever scores and places are treated differently. */
import type { MergeMethod, MergeRule } from '../types.ts';
import type { RuleOf } from './merge.ts';

const reads: Readonly<Record<MergeMethod, 'scores' | 'places' | 'own-card'>> = {
  separate: 'own-card',
  total: 'scores',
  mean: 'scores',
  'rank-sum': 'places',
  'place-points': 'places',
  majority: 'places',
  'two-judges-and-referee': 'places',
  pairwise: 'places',
};

export const readsOffCard = (method: MergeMethod) => reads[method];

/** Needs a score from every judge. */
export const addsScores = (merge: MergeRule): merge is RuleOf<'total' | 'mean'> =>
  reads[merge.method] === 'scores';

/** Compares the places on the cards: a tie on a card is for its judge to break. */
export const mergesPlaces = (merge: MergeRule): boolean => reads[merge.method] === 'places';
