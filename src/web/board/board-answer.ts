/** What the board's pages read of the API, and how they sort it. */
import type { Answer } from '../shared/api.ts';
import type { LiveEvent } from '../shared/live.ts';

export type Board = Answer<'/v1/shows/{showId}/board'>;
export type BoardShow = Board['show'];
export type BoardClass = Board['classes'][number];

/** Where a class belongs on a board. `over`: it is not held. */
export type Part = 'now' | 'next' | 'posted' | 'over';

export function partOf({ state }: Pick<BoardClass, 'state'>): Part {
  switch (state) {
    case 'called':
    case 'under-way':
    case 'cards-in':
      return 'now';
    case 'provisional':
    case 'official':
    case 'corrected':
      return 'posted';
    case 'cancelled':
    case 'combined':
      return 'over';
    default:
      return 'next';
  }
}

export const classesOf = ({ classes }: Board, part: Part): BoardClass[] =>
  classes.filter((one) => partOf(one) === part);

/** What was posted last stands first. */
export const postedOf = (board: Board): BoardClass[] =>
  classesOf(board, 'posted').sort((a, b) => (b.postedAt ?? '').localeCompare(a.postedAt ?? ''));

/** In the order in which the program names the rings; those without a ring last. */
export function byRing(classes: readonly BoardClass[]): { ring: string | null; classes: BoardClass[] }[] {
  const rings = [...new Set(classes.map(({ ring }) => ring))].sort(
    (a, b) => Number(a === null) - Number(b === null),
  );
  return rings.map((ring) => ({ ring, classes: classes.filter((one) => one.ring === ring) }));
}

export const classAddress = (showId: string, { number }: Pick<BoardClass, 'number'>): string =>
  `/shows/${showId}/classes/${number}`;

/** Does an event tell of a class in a way that the board shows? Names do not stand on it. */
export const movesBoard = ({ type = '' }: LiveEvent): boolean =>
  /^(result|card|class|order|show)\./.test(type);

/** The class that an event is about; a line of the ledger holds ids in its body. */
export function classOfEvent({ body }: LiveEvent): string | undefined {
  const line = body as { readonly body?: { readonly classId?: unknown } } | undefined;
  const classId = line?.body?.classId;
  return typeof classId === 'string' ? classId : undefined;
}
