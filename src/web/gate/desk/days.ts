/** The days of a show, and the one that the gate wants to see first. */
import { calendarDay } from '../../shared/show-times.ts';
import type { ClassLine } from './gate-types.ts';

/** `yyyy-mm-dd`; `''`: classes that have no time yet. */
export const dayOf = ({ scheduledAt }: ClassLine, timeZone: string): string =>
  scheduledAt === null ? '' : calendarDay(scheduledAt, timeZone);

export const daysOf = (classes: readonly ClassLine[], timeZone: string): string[] =>
  [...new Set(classes.map((one) => dayOf(one, timeZone)))].sort();

const ahead = ['drawn', 'called', 'under-way'];

interface Asked {
  readonly timeZone: string;
  readonly now: Date;
}

/** Today where the show is on; else the first day on which a class is still to be ridden, or the last. */
export function firstDay(classes: readonly ClassLine[], { timeZone, now }: Asked): string {
  const days = daysOf(classes, timeZone);
  const today = calendarDay(now, timeZone);
  if (days.includes(today)) return today;
  const next = classes.find(({ state }) => ahead.includes(state));
  return next === undefined ? (days.at(-1) ?? '') : dayOf(next, timeZone);
}

/** By ring; classes without one come last. */
export function byRing(classes: readonly ClassLine[]): (readonly [string | null, readonly ClassLine[]])[] {
  const rings = [...new Set(classes.map(({ ring }) => ring))].sort((one, other) =>
    one === null ? 1 : other === null ? -1 : one.localeCompare(other),
  );
  return rings.map((ring) => [ring, classes.filter((one) => one.ring === ring)] as const);
}

/** Still the gate's business. */
export const isAhead = ({ state }: ClassLine): boolean => ahead.includes(state);
