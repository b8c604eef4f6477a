/** Splitting a tied group by a value, and running a chain of such steps until all are placed or tied for good. */
import type { Exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import type { Basis, EntryId, OpenTie, Reason, ReasonPart } from './types.ts';

/** What a step found for each entry of a group; no value: nothing to compare, behind all that have one. */
export interface Measure {
  readonly value: Exact | undefined;
  readonly parts?: readonly ReasonPart[];
  /** Spelling in the record, where it is not the number's own (a hash). */
  readonly text?: string;
}

/** One comparison of a group. */
export interface Comparison {
  readonly basis: Basis;
  readonly better: 'higher' | 'lower';
  readonly splits?: 'all' | 'best-first';
  readonly measure: (entry: EntryId) => Measure;
}

/** `waits`: someone must record a decision first. `shared`: the tie is final. `undefined`: the step has nothing to say. */
export type StepAnswer = Comparison | 'waits' | 'shared' | undefined;

export interface Step {
  readonly of: 'status' | 'merge' | 'ties';
  readonly compare: (group: readonly EntryId[]) => StepAnswer;
}

export interface Refined {
  readonly groups: readonly (readonly EntryId[])[];
  readonly reasons: readonly Reason[];
  readonly openTies: readonly OpenTie[];
}

/**
 * Runs the steps over the entries. After a split each smaller group goes on at the same step, which may
 * see more now that the group is smaller, or (tie-breaks only, `start-again`) at the first tie-break.
 */
export function refine(
  entries: readonly EntryId[],
  steps: readonly Step[],
  afterSplit: 'go-on' | 'start-again',
): Refined {
  const groups: (readonly EntryId[])[] = [];
  const reasons: Reason[] = [];
  const openTies: OpenTie[] = [];
  const firstTieBreak = steps.findIndex((step) => step.of === 'ties');
  const waiting: { group: readonly EntryId[]; at: number }[] = [{ group: entries, at: 0 }];
  let place = 1;

  const settle = (group: readonly EntryId[], open?: OpenTie['waitsFor']) => {
    groups.push(group);
    if (open !== undefined) openTies.push({ entries: group, place, waitsFor: open });
    place += group.length;
  };

  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { group, at } = next;
    const step = steps[at];
    if (group.length === 0) continue;
    if (group.length === 1) settle(group);
    else if (step === undefined) settle(group, 'chain-ended');
    else {
      const answer = step.compare(group);
      if (answer === 'waits') settle(group, 'run-off');
      else if (answer === 'shared') settle(group);
      else if (answer === undefined) waiting.push({ group, at: at + 1 });
      else {
        const { reason, split } = compareGroup(group, answer, place);
        reasons.push(reason);
        const again = step.of === 'ties' && afterSplit === 'start-again' ? firstTieBreak : at;
        if (split.length === 1) waiting.push({ group, at: at + 1 });
        else for (const part of split.toReversed()) waiting.push({ group: part, at: again });
      }
    }
  }
  return { groups, reasons, openTies };
}

function compareGroup(group: readonly EntryId[], comparison: Comparison, place: number) {
  const { better, basis, splits = 'all' } = comparison;
  const measured = group.map((entry) => ({ entry, ...comparison.measure(entry) }));
  const reason: Reason = {
    place,
    better,
    splits,
    basis,
    compared: measured
      .filter(({ value }) => splits === 'all' || value !== undefined)
      .map(({ entry, value, text, parts }) => ({
        entry,
        value: value === undefined ? null : (text ?? recordText(value)),
        ...(parts === undefined ? {} : { parts }),
      })),
  };
  return { reason, split: splitByValue(measured, better, splits) };
}

/** Ordered groups of equal value; entries with no value come last, together. Order within a group is kept. */
export function splitByValue(
  measured: readonly { readonly entry: EntryId; readonly value: Exact | undefined }[],
  better: 'higher' | 'lower',
  splits: 'all' | 'best-first',
): EntryId[][] {
  const sign = better === 'higher' ? -1 : 1;
  const ordered = measured
    .map((line) => ({ ...line }))
    .sort((a, b) => {
      if (a.value === undefined || b.value === undefined) {
        return Number(a.value === undefined) - Number(b.value === undefined);
      }
      return sign * a.value.compare(b.value);
    });
  const groups: { value: Exact | undefined; entries: EntryId[] }[] = [];
  for (const { entry, value } of ordered) {
    const last = groups.at(-1);
    if (last !== undefined && sameValue(last.value, value)) last.entries.push(entry);
    else groups.push({ value, entries: [entry] });
  }
  const [best, ...rest] = groups.map((group) => group.entries);
  if (best === undefined) return [];
  return splits === 'all' || rest.length === 0 ? [best, ...rest] : [best, rest.flat()];
}

/** Do all have the same value, or all none? Then there is nothing to split by. */
export function allEqual(values: readonly (Exact | undefined)[]): boolean {
  return values.every((value) => sameValue(value, values[0]));
}

function sameValue(a: Exact | undefined, b: Exact | undefined): boolean {
  return a === undefined || b === undefined ? a === b : a.equals(b);
}
