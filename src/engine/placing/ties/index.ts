/** The chain of tie-breaks of a class, as steps. A new tie-break is one file and one line here. */
import type { Step } from '../refine.ts';
import type { TieBreak } from '../types.ts';
import { discarded } from './discarded.ts';
import { countBack, maneuvers } from './maneuvers.ts';
import { decided, draw, runOff, share } from './outside.ts';
import { bestSinglePlace, headToHead, mostFirsts } from './places.ts';
import { form, penalties } from './score-parts.ts';
import type { TieContext } from './tie-break.ts';
import { tieJudge } from './tie-judge.ts';

/** Recorded decisions come last, unless the chain asks for one earlier or ends by sharing the place. */
export function tieSteps(context: TieContext, chain: readonly TieBreak[]): readonly Step[] {
  const ends = chain.at(-1)?.code === 'share';
  const steps = chain.flatMap((rule) => stepsOf(context, rule));
  return ends ? [...steps.slice(0, -1), decided(context), ...steps.slice(-1)] : [...steps, decided(context)];
}

function stepsOf(context: TieContext, rule: TieBreak): readonly Step[] {
  switch (rule.code) {
    case 'maneuvers':
      return maneuvers(context, rule);
    case 'count-back':
      return countBack(context, rule);
    case 'form':
      return form(context, rule);
    case 'penalties':
      return penalties(context, rule);
    case 'tie-judge':
      return tieJudge(context, rule);
    case 'head-to-head':
      return headToHead(context, rule);
    case 'best-single-place':
      return bestSinglePlace(context, rule);
    case 'most-firsts':
      return mostFirsts(context, rule);
    case 'discarded':
      return discarded(context, rule);
    case 'run-off':
      return runOff(context, rule);
    case 'draw':
      return draw(context, rule);
    case 'share':
      return share(context, rule);
  }
}
