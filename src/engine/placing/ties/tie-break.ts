/** What a tie-break is given beside the panel. */
import type { Panel } from '../merges/merge.ts';
import type { Step } from '../refine.ts';
import type { MergeRule, TieBreak, TieBreakCode, TieDecision } from '../types.ts';

export interface TieContext {
  readonly panel: Panel;
  readonly merge: MergeRule;
  readonly decisions: readonly TieDecision[];
  readonly classNumber: number;
}

export type TieBreakOf<C extends TieBreakCode> = Extract<TieBreak, { code: C }>;
export type TieSteps<C extends TieBreakCode> = (context: TieContext, rule: TieBreakOf<C>) => readonly Step[];
