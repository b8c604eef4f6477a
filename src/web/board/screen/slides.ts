/** What a screen at the ring shows, one sheet after the other: now, next, and what was posted last. */
import type { Given } from '../../shared/public-page.ts';
import { type Board, type BoardClass, classesOf, postedOf } from '../board-answer.ts';
import type { OneResult, Result } from '../class/class-answer.ts';

export interface ClassSlide {
  readonly kind: 'now' | 'next';
  readonly key: string;
  readonly classes: readonly BoardClass[];
}

/** So much of a posted result as is read from afar. */
export interface ScreenResult {
  readonly results: readonly {
    readonly judge: string | null;
    readonly placings: readonly Pick<
      OneResult['placings'][number],
      'backNumber' | 'name' | 'horse' | 'place' | 'tied' | 'total'
    >[];
  }[];
}
type ScreenLine = ScreenResult['results'][number]['placings'][number];

export interface PostedSlide {
  readonly kind: 'posted';
  readonly key: string;
  readonly of: BoardClass;
  readonly judge: string | null;
  readonly lines: readonly ScreenLine[];
  /** Of the sheets of this result: 1 of 2. */
  readonly part: number;
  readonly parts: number;
}

export type Slide = ClassSlide | PostedSlide;

/** So many lines are read from the far side of a ring. */
const linesOnSlide = 8;
const classesOnSlide = 5;
/** So many of the postings come around. */
export const newest = ['newest1', 'newest2', 'newest3', 'newest4'] as const;

export const newestOf = (board: Board): BoardClass[] => postedOf(board).slice(0, newest.length);

export function slidesOf(given: Given): Slide[] {
  const board = given.board as Board;
  const upcoming = classesOf(board, 'next').slice(0, 2 * classesOnSlide);
  return [
    ...classSlides('now', classesOf(board, 'now')),
    ...classSlides('next', upcoming),
    ...newestOf(board).flatMap((of, at) => {
      const result = given[newest[at] ?? ''] as ScreenResult | undefined;
      return result === undefined ? [] : postedSlides(of, result);
    }),
  ];
}

/** An empty sheet too: it says that nothing is in the ring. */
function classSlides(kind: ClassSlide['kind'], classes: readonly BoardClass[]): ClassSlide[] {
  const sheets = inParts(classes, classesOnSlide);
  return (sheets.length === 0 ? [[]] : sheets).map((some, at) => ({
    ...{ kind, key: `${kind}-${at}`, classes: some },
  }));
}

function postedSlides(of: BoardClass, { results }: ScreenResult): PostedSlide[] {
  return results.flatMap(({ judge, placings }) => {
    const sheets = inParts(placings, linesOnSlide);
    return sheets.map(
      (lines, at): PostedSlide => ({
        ...{ kind: 'posted', key: `${of.id}-${judge ?? ''}-${at}`, of, judge, lines },
        ...{ part: at + 1, parts: sheets.length },
      }),
    );
  });
}

/** About alike, so that no sheet has a single line left over. */
function inParts<Item>(items: readonly Item[], most: number): Item[][] {
  const count = Math.ceil(items.length / most);
  const size = Math.ceil(items.length / Math.max(count, 1));
  return Array.from({ length: count }, (_, at) => items.slice(at * size, (at + 1) * size));
}

export function keptOfResult(answer: unknown): ScreenResult {
  const { results } = answer as Result;
  return {
    results: results.map(({ judge, placings }) => ({
      judge: judge?.name ?? null,
      placings: placings.map(({ backNumber, name, horse, place, tied, total }) => ({
        ...{ backNumber, name, horse, place, tied, total },
      })),
    })),
  };
}
