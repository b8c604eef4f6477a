/** How far the judges of one class agree, all together, two by two, and each on a scale of his or her own. */
import type { EntryId, PanelCard } from '../placing/types.ts';
import { type Concordance, concordance } from './concordance.ts';
import { type JudgeTendency, judgeTendency } from './judge-tendency.ts';
import { type JudgePair, judgePairs } from './rank-correlation.ts';

export interface Agreement {
  readonly together: Concordance;
  readonly pairs: readonly JudgePair[];
  /** In the order of the cards. */
  readonly judges: readonly JudgeTendency[];
}

/** `orderOfGo`: entries as they went; empty where it is not known (rail classes), and then there is no drift. */
export function agreement(cards: readonly PanelCard[], orderOfGo: readonly EntryId[]): Agreement {
  return {
    together: concordance(cards),
    pairs: judgePairs(cards),
    judges: cards.map((card) => judgeTendency(card, orderOfGo)),
  };
}
