/**
 * What decides a tie outside the arithmetic: a recorded decision (run-off, re-work, ruling), a draw by lot, or
 * that the place is shared.
 *
 * Source: run-off if all tied agree, otherwise co-champions and an agreed coin (NRHA handbook, Rules for judging
 * B(2), https://docslib.org/doc/501289/r-ules-for-judging, in part from memory).
 */
import { exact } from '../../numbers/exact.ts';
import { lot } from '../../numbers/lot.ts';
import type { Step } from '../refine.ts';
import type { EntryId, TieDecision } from '../types.ts';
import type { TieContext, TieSteps } from './tie-break.ts';

/** The last decision that was about all of the group; an earlier one about them no longer stands. */
function decisionOn(group: readonly EntryId[], decisions: readonly TieDecision[]): TieDecision | undefined {
  return decisions.findLast(({ order }) => {
    const about = new Set(order.flat());
    return group.every((entry) => about.has(entry));
  });
}

/** Recorded decisions; stands at the end of every chain, and where a run-off stands in it. */
export function decided({ decisions }: Pick<TieContext, 'decisions'>): Step {
  return {
    of: 'ties',
    compare: (group) => {
      const decision = decisionOn(group, decisions);
      if (decision === undefined || decision.kind === 'declined') return undefined;
      const rank = new Map(
        decision.order.flatMap((tied, index) => tied.map((entry) => [entry, index + 1] as const)),
      );
      if (new Set(group.map((entry) => rank.get(entry))).size === 1) return 'shared';
      return {
        basis: { step: 'decision', id: decision.id, kind: decision.kind },
        better: 'lower',
        measure: (entry) => ({ value: exact(rank.get(entry) ?? rank.size + 1) }),
      };
    },
  };
}

export const runOff: TieSteps<'run-off'> = ({ decisions }) => [
  {
    of: 'ties',
    compare: (group) => {
      const decision = decisionOn(group, decisions);
      return decision === undefined ? 'waits' : decided({ decisions }).compare(group);
    },
  },
];

/** By lot: the smallest of the entries' lots comes first (`numbers/lot.ts`). */
export const draw: TieSteps<'draw'> = (_context, { seed }) => [
  {
    of: 'ties',
    compare: () => ({
      basis: { step: 'draw', seed },
      better: 'lower',
      measure: (entry) => {
        const text = `0x${lot(seed, entry)}`;
        return { value: exact(BigInt(text)), text };
      },
    }),
  },
];

export const share: TieSteps<'share'> = () => [{ of: 'ties', compare: () => 'shared' }];
