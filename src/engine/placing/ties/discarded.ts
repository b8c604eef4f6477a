/**
 * The discarded highs and lows are brought back: all scores or places are added.
 *
 * Source: common practice, no source; which extremes were left out stands in the merge's own reason.
 */
import { mergeCards } from '../merges/index.ts';
import type { TieSteps } from './tie-break.ts';

export const discarded: TieSteps<'discarded'> = ({ panel, merge }) => {
  if (!('discard' in merge) || merge.discard === 'none') return [];
  const all = mergeCards(panel, { ...merge, discard: 'none' });
  return all.steps.map((step) => ({
    of: 'ties',
    compare: (group) => {
      const answer = step.compare(group);
      return typeof answer === 'object' ? { ...answer, basis: { step: 'discarded' } } : answer;
    },
  }));
};
