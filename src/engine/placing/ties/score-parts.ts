/**
 * Form and effectiveness, and penalties, added over the judges.
 *
 * Source: the collective marks break a dressage tie (https://woodsdressage.com/what-is-the-procedure-for-a-tie-breaker/);
 * the higher form and effectiveness, and the fewer penalties, in pattern classes: common practice, no source.
 */
import { type Exact, exact, sum } from '../../numbers/exact.ts';
import { recordText } from '../../numbers/number-text.ts';
import type { Panel } from '../merges/merge.ts';
import type { Comparison, Step } from '../refine.ts';
import type { LineParts } from '../types.ts';
import type { TieSteps } from './tie-break.ts';

export const form: TieSteps<'form'> = ({ panel }) => [
  partStep(panel, { basis: { step: 'form' }, better: 'higher' }, (parts) => parts.form),
];

export const penalties: TieSteps<'penalties'> = ({ panel }, { count }) => [
  count === 'points'
    ? partStep(panel, { basis: { step: 'penalty-points' }, better: 'lower' }, (parts) => parts.penaltyPoints)
    : partStep(panel, { basis: { step: 'penalty-count' }, better: 'lower' }, (parts) =>
        exact(parts.penaltyCount),
      ),
];

function partStep(
  { cards }: Panel,
  comparison: Pick<Comparison, 'basis' | 'better'>,
  part: (parts: LineParts) => Exact | undefined,
): Step {
  const given = (entry: string) =>
    cards.flatMap(({ judge, lines }) => {
      const parts = lines.get(entry)?.parts;
      const value = parts && part(parts);
      return value === undefined ? [] : [{ judge, value }];
    });
  return {
    of: 'ties',
    compare: (group) => {
      if (group.every((entry) => given(entry).length === 0)) return undefined;
      return {
        ...comparison,
        measure: (entry) => {
          const parts = given(entry);
          return {
            value: parts.length === 0 ? undefined : sum(parts.map(({ value }) => value)),
            parts: parts.map(({ judge, value }) => ({ judge, value: recordText(value) })),
          };
        },
      };
    },
  };
}
