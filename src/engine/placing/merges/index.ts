/** The ways of merging judges' cards. A new way is one file and one line here. */
import type { MergeRule } from '../types.ts';
import { mergeMajority } from './majority.ts';
import type { Merge, Panel } from './merge.ts';
import { mergeOwnCard } from './own-card.ts';
import { mergePairwise } from './pairwise.ts';
import { mergePlacePoints } from './place-points.ts';
import { mergeRankSum } from './rank-sum.ts';
import { mergeScores } from './scores.ts';
import { mergeTwoJudgesAndReferee } from './two-judges-and-referee.ts';

/** Throws a RangeError for a panel that the method cannot merge; `checkPlacing` finds these before. */
export function mergeCards(panel: Panel, rule: MergeRule): Merge {
  switch (rule.method) {
    case 'separate': {
      const [card, ...others] = panel.cards;
      if (card === undefined || others.length > 0)
        throw new RangeError('separate cards are placed one by one');
      return mergeOwnCard(card);
    }
    case 'total':
    case 'mean':
      return mergeScores(panel, rule);
    case 'rank-sum':
      return mergeRankSum(panel, rule);
    case 'place-points':
      return mergePlacePoints(panel, rule);
    case 'majority':
      return mergeMajority(panel, rule);
    case 'two-judges-and-referee':
      return mergeTwoJudgesAndReferee(panel);
    case 'pairwise':
      return mergePairwise(panel);
  }
}
