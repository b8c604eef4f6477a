/** Which postings this browser has seen, so that what is new can be marked: ids and numbers, kept in it alone. */
import type { BoardClass } from './board-answer.ts';

/** Version of the posting by class. */
type SeenVersions = Readonly<Record<string, number>>;

const nameOf = (showId: string): string => `ringledger-seen-${showId}`;

/** Whatever was posted before the first visit is not new to anybody. */
export function unseenPostings(showId: string, posted: readonly BoardClass[]): ReadonlySet<string> {
  const seen = read(showId);
  if (seen === undefined) {
    keep(showId, versionsOf(posted));
    return new Set();
  }
  const isNew = ({ id, postingVersion }: BoardClass) => (seen[id] ?? 0) < (postingVersion ?? 0);
  return new Set(posted.filter(isNew).map(({ id }) => id));
}

export function markSeen(showId: string, posted: readonly BoardClass[]): void {
  keep(showId, { ...read(showId), ...versionsOf(posted) });
}

const versionsOf = (posted: readonly BoardClass[]): SeenVersions =>
  Object.fromEntries(posted.map(({ id, postingVersion }) => [id, postingVersion ?? 0]));

/** A browser may keep nothing, as in some private windows: then all of it was seen. */
function read(showId: string): SeenVersions | undefined {
  try {
    const text = localStorage.getItem(nameOf(showId));
    return text === null ? undefined : (JSON.parse(text) as SeenVersions);
  } catch {
    return undefined;
  }
}

function keep(showId: string, seen: SeenVersions): void {
  try {
    localStorage.setItem(nameOf(showId), JSON.stringify(seen));
  } catch {
    // Nothing is marked as new, then.
  }
}
