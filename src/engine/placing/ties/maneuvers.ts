/**
 * Marks of named maneuvers in order, or counted back from the highest mark; added over the judges.
 *
 * Source: a designated maneuver or obstacle breaks the tie: common practice, no source. A judge who could not
 * see a maneuver adds nothing for it; where none of the judges marked it for an entry, that entry stands behind.
 */
import { type Exact, sum } from '../../numbers/exact.ts';
import { recordText } from '../../numbers/number-text.ts';
import { allEqual, type Step } from '../refine.ts';
import type { EntryId, PanelCard, ReasonPart } from '../types.ts';
import type { TieSteps } from './tie-break.ts';

export const maneuvers: TieSteps<'maneuvers'> = ({ panel }, { order }) =>
  order.map(
    (position): Step => ({
      of: 'ties',
      compare: (group) => {
        const marks = new Map(group.map((entry) => [entry, marksAt(panel.cards, entry, position)]));
        if ([...marks.values()].every((given) => given.length === 0)) return undefined;
        return {
          basis: { step: 'maneuver', position },
          better: 'higher',
          measure: (entry) => added(marks.get(entry) ?? []),
        };
      },
    }),
  );

/** 1.5, 1, 0.5 beats 1.5, 1, 0: the first rank that differs is compared. */
export const countBack: TieSteps<'count-back'> = ({ panel }) => [
  {
    of: 'ties',
    compare: (group) => {
      const ranked = new Map(group.map((entry) => [entry, highestFirst(panel.cards, entry)]));
      const longest = Math.max(...[...ranked.values()].map((marks) => marks.length));
      for (let rank = 0; rank < longest; rank += 1) {
        const values = group.map((entry) => ranked.get(entry)?.[rank]);
        if (allEqual(values)) continue;
        return {
          basis: { step: 'count-back', rank: rank + 1 },
          better: 'higher',
          measure: (entry) => ({ value: ranked.get(entry)?.[rank] }),
        };
      }
      return undefined;
    },
  },
];

function marksAt(cards: readonly PanelCard[], entry: EntryId, position: number) {
  return cards.flatMap(({ judge, lines }) => {
    const mark = lines.get(entry)?.parts?.maneuvers.get(position);
    return mark === undefined ? [] : [{ judge, mark }];
  });
}

function added(marks: readonly { readonly judge: string; readonly mark: Exact }[]) {
  const parts: ReasonPart[] = marks.map(({ judge, mark }) => ({ judge, value: recordText(mark) }));
  return { value: marks.length === 0 ? undefined : sum(marks.map(({ mark }) => mark)), parts };
}

function highestFirst(cards: readonly PanelCard[], entry: EntryId): Exact[] {
  const marks = cards.flatMap(({ lines }) => [...(lines.get(entry)?.parts?.maneuvers.values() ?? [])]);
  return marks.sort((a, b) => b.compare(a));
}
