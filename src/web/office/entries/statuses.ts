/** How an entry stands in its class, and what may be done about it. The service checks it again. Pure. */
import type { Answer } from '../../shared/api.ts';

export type ClassEntry = Answer<'/v1/shows/{showId}/classes/{classId}/entries'>['items'][number];
export type Status = ClassEntry['status'];
export type SetStatus = Exclude<Status, 'moved'>;

const mayFollow: Readonly<Record<Status, readonly SetStatus[]>> = {
  entered: ['checked-in', 'scratched', 'no-show', 'excused'],
  'checked-in': ['entered', 'scratched', 'no-show', 'excused'],
  scratched: ['entered', 'no-show'],
  'no-show': ['entered', 'scratched'],
  excused: ['entered'],
  moved: [],
};

export const whatMayFollow = (status: Status): readonly SetStatus[] => mayFollow[status];

/** Checking in and taking that back need none. */
export const needsReason = (before: Status, after: SetStatus): boolean =>
  after !== 'checked-in' && !(before === 'checked-in' && after === 'entered');

/** The status that takes a change back; `undefined`: there is no way straight back. */
export function backTo(before: Status, after: SetStatus): SetStatus | undefined {
  if (before === 'moved') return undefined;
  return mayFollow[after].includes(before)
    ? before
    : mayFollow[after].includes('entered')
      ? 'entered'
      : undefined;
}

export const isGoing = (status: Status): boolean => status === 'entered' || status === 'checked-in';
