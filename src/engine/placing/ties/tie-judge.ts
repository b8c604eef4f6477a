/**
 * The tie judges' own cards, one after the other.
 *
 * Source: tie -> the call judge's placing; still tied -> the second call judge, then the third (AMHA 2018 World
 * Championship programme p. 12); judge 1 in odd-numbered classes, judge 2 in even ones (IHSA Western Scoring
 * Explanation, https://paperzz.com/doc/7195413). An entry that the tie judge left off stands behind those on the card.
 */
import { placeOnCard } from '../card-measure.ts';
import type { Step } from '../refine.ts';
import type { JudgeId } from '../types.ts';
import type { TieSteps } from './tie-break.ts';

export const tieJudge: TieSteps<'tie-judge'> = ({ panel, classNumber }, { judges, alternate }) =>
  (alternate ? turned(judges, classNumber) : judges).map((judge): Step => {
    const card = panel.cards.find((one) => one.judge === judge);
    return {
      of: 'ties',
      compare: () =>
        card && {
          basis: { step: 'tie-judge', judge },
          better: 'lower',
          measure: (entry) => placeOnCard(card, entry),
        },
    };
  });

/** Class 1 begins with the first judge, class 2 with the second, and round again. */
function turned(judges: readonly JudgeId[], classNumber: number): readonly JudgeId[] {
  const by = judges.length === 0 ? 0 : (classNumber - 1) % judges.length;
  return [...judges.slice(by), ...judges.slice(0, by)];
}
