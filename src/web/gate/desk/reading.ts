/** An announcement as it is read: what is said first, then place after place, each a page of its own. */
import type { Announcement } from './gate-types.ts';

type Result = Announcement['results'][number];
export type Placing = Result['placings'][number];

export type ReadingPage =
  | { readonly kind: 'opening'; readonly judge: string | null; readonly count: number }
  | { readonly kind: 'place'; readonly judge: string | null; readonly placing: Placing };

export const pagesOf = ({ results }: Announcement): ReadingPage[] =>
  results.flatMap(({ judge, placings }): ReadingPage[] => {
    const name = judge?.name ?? null;
    return [
      { kind: 'opening', judge: name, count: placings.length },
      ...placings.map((placing) => ({ kind: 'place' as const, judge: name, placing })),
    ];
  });
