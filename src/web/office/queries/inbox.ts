/** What families ask, sorted for whoever answers. Pure. */
import type { Answer } from '../../shared/api.ts';

export type Query = Answer<'/v1/shows/{showId}/queries'>['items'][number];
export type Outcome = Query['answers'][number]['outcome'];

export const outcomes: readonly Outcome[] = ['stands', 'corrected', 'explained'];

export interface Inbox {
  /** The longest waiting first. */
  readonly open: readonly Query[];
  /** Answered, withdrawn or erased: what happened last first. */
  readonly closed: readonly Query[];
}

export function inboxOf(queries: readonly Query[]): Inbox {
  const isOpen = ({ state, erasedAt }: Query) => state === 'open' && erasedAt === null;
  return {
    open: queries.filter(isOpen).toSorted((a, b) => compare(a.askedAt, b.askedAt)),
    closed: queries
      .filter((query) => !isOpen(query))
      .toSorted((a, b) => compare(lastMoment(b), lastMoment(a))),
  };
}

const lastMoment = ({ askedAt, withdrawnAt, erasedAt, answers }: Query): string =>
  [askedAt, withdrawnAt, erasedAt, ...answers.map(({ answeredAt }) => answeredAt)]
    .filter((at) => at !== null)
    .toSorted()
    .at(-1) ?? askedAt;

/** Moments of one form (ISO, UTC) sort as texts. */
const compare = (a: string, b: string): number => Number(a > b) - Number(a < b);

/** The family looked at an older posting than the one that stands now. */
export const isOvertaken = ({ postingVersion, lastPostingVersion }: Query): boolean =>
  postingVersion !== null && lastPostingVersion !== null && postingVersion < lastPostingVersion;
