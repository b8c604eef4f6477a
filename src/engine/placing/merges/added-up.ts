/** Merges that add up what each judge contributes: scores, places, points for places. */
import type { Exact } from '../../numbers/exact.ts';
import type { Basis, EntryId } from '../types.ts';
import { type Contribution, discardExtremes, reasonParts, totalOf } from './contributions.ts';
import { type Merge, once } from './merge.ts';

interface Addition {
  readonly basis: Extract<Basis, { discard: unknown }>;
  readonly better: 'higher' | 'lower';
  readonly given: (entry: EntryId) => readonly Contribution[];
  /** Of the contributions with the discarded ones marked; their weighted sum where nothing else is said. */
  readonly value?: (contributions: readonly Contribution[]) => Exact;
}

export function mergeByAdding({ basis, better, given, value = totalOf }: Addition): Merge {
  const contributions = once((entry) => discardExtremes(given(entry), basis.discard));
  const total = once((entry) => value(contributions(entry)));
  return {
    total,
    steps: [
      {
        of: 'merge',
        compare: () => ({
          basis,
          better,
          measure: (entry) => ({ value: total(entry), parts: reasonParts(contributions(entry)) }),
        }),
      },
    ],
  };
}
