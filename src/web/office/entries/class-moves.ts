/** What a split or a combination moves, told before it is done. Pure. */

export interface MovingEntry {
  readonly id: string;
  readonly entryId: string;
  readonly backNumber: number;
  readonly status: string;
}

const isThere = ({ status }: MovingEntry): boolean => status !== 'moved';

export interface SplitPreview {
  readonly move: readonly MovingEntry[];
  readonly stay: readonly MovingEntry[];
}

export function splitPreview(entries: readonly MovingEntry[], chosen: ReadonlySet<string>): SplitPreview {
  const there = entries.filter(isThere);
  return { move: there.filter(({ id }) => chosen.has(id)), stay: there.filter(({ id }) => !chosen.has(id)) };
}

export interface CombinePreview {
  /** They join this class. */
  readonly join: readonly MovingEntry[];
  /** Entered in both: they go once. */
  readonly inBoth: readonly MovingEntry[];
}

export function combinePreview(
  here: readonly MovingEntry[],
  joining: readonly (readonly MovingEntry[])[],
): CombinePreview {
  const known = new Set(here.filter(isThere).map(({ entryId }) => entryId));
  const join: MovingEntry[] = [];
  const inBoth: MovingEntry[] = [];
  for (const entry of joining.flat().filter(isThere)) {
    if (known.has(entry.entryId)) inBoth.push(entry);
    else join.push(entry);
    known.add(entry.entryId);
  }
  return { join, inBoth };
}
