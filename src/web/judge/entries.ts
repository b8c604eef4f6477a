/** Who goes in a class, and how a judge finds her next. */
import type { SheetManeuver } from '../../engine/sheets/types.ts';
import type { DayClass, DayEntry } from './desk/day-types.ts';

/** Scratched, moved and absent entries do not go; the service says it the same way. */
export const isGoing = ({ status }: DayEntry): boolean => status === 'entered' || status === 'checked-in';

export const goingIn = (dayClass: DayClass): readonly DayEntry[] => dayClass.entries.filter(isGoing);

const none: readonly SheetManeuver[] = [];

export const maneuversOf = (dayClass: DayClass): readonly SheetManeuver[] =>
  dayClass.pattern?.maneuvers ?? none;

export const isRail = (dayClass: DayClass): boolean => dayClass.sheet.kind === 'places';

/** The first who goes after `after` and of whom `isDone` says no; then from the top. */
export function nextEntry(
  dayClass: DayClass,
  isDone: (entry: DayEntry) => boolean,
  after?: string,
): DayEntry | undefined {
  const going = goingIn(dayClass);
  const at = going.findIndex(({ classEntryId }) => classEntryId === after);
  const fromThere = [...going.slice(at + 1), ...going.slice(0, at + 1)];
  return fromThere.find((entry) => entry.classEntryId !== after && !isDone(entry));
}

/** The one before (-1) or after (1) in the order of go. */
export function neighbor(dayClass: DayClass, of: string, by: -1 | 1): DayEntry | undefined {
  const going = goingIn(dayClass);
  const at = going.findIndex(({ classEntryId }) => classEntryId === of);
  return at < 0 ? undefined : going[at + by];
}
