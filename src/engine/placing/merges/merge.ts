/** What every way of merging cards is given, and what it gives. */
import type { Exact } from '../../numbers/exact.ts';
import type { Step } from '../refine.ts';
import type { EntryId, MergeMethod, MergeRule, PanelCard } from '../types.ts';

/** The cards of one class and the entries that may be placed by them. */
export interface Panel {
  readonly entries: readonly EntryId[];
  readonly cards: readonly PanelCard[];
}

export type RuleOf<M extends MergeMethod> = Extract<MergeRule, { method: M }>;

export interface Merge {
  /** Compared in this order. */
  readonly steps: readonly Step[];
  /** The number that the class is posted with; `undefined` where the method has none. */
  readonly total: (entry: EntryId) => Exact | undefined;
}

/** Runs `work` once for each entry and remembers what came out. */
export function once<T>(work: (entry: EntryId) => T): (entry: EntryId) => T {
  const known = new Map<EntryId, { readonly result: T }>();
  return (entry) => {
    let found = known.get(entry);
    if (found === undefined) {
      found = { result: work(entry) };
      known.set(entry, found);
    }
    return found.result;
  };
}
