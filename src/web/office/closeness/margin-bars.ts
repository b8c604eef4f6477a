/** How close two neighbors were, as bars: the shorter, the closer. Pure. */
import { changeOf, drawn, type Margins } from './closeness-answers.ts';

export interface MarginBar {
  readonly key: string;
  readonly place: number;
  readonly ahead: number;
  readonly behind: number;
  /** Where judges are placed separately: whose result this is. */
  readonly judge: string | null;
  /** `size`: recorded, in points or places; `share` of the longest bar, 0 to 1. */
  readonly change:
    | { readonly by: 'points' | 'places'; readonly size: string; readonly share: number }
    | { readonly by: 'none'; readonly why: 'status' | 'no-single-change' };
  readonly sentence: string;
}

export function marginBars({ margins }: Margins): readonly MarginBar[] {
  const sizes = margins
    .map(changeOf)
    .flatMap((change) => (change.by === 'none' ? [] : [drawn(String(change.size))]));
  const longest = Math.max(...sizes, Number.MIN_VALUE);
  return margins.map((margin) => {
    const { place, ahead, behind, judge, sentence } = margin;
    const change = changeOf(margin);
    return {
      ...{ place, ahead, behind, sentence, judge: judge?.name ?? null },
      key: `${judge?.seatId ?? ''} ${ahead} ${behind}`,
      change:
        change.by === 'none'
          ? change
          : { by: change.by, size: String(change.size), share: drawn(String(change.size)) / longest },
    };
  });
}

/** The one that hung on least; of several the best place. */
export function closest(bars: readonly MarginBar[]): MarginBar | undefined {
  const shareOf = ({ change }: MarginBar) => (change.by === 'none' ? Number.POSITIVE_INFINITY : change.share);
  return bars
    .filter(({ change }) => change.by !== 'none')
    .toSorted((a, b) => shareOf(a) - shareOf(b) || a.place - b.place)[0];
}
