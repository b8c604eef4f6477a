/** Days and moments by the clock of the show grounds. */
import { DateTime, IANAZone } from 'luxon';
import { problem } from '../platform/problems/index.ts';

export const isTimeZone = (name: string): boolean =>
  name.includes('/') || name === 'UTC' ? IANAZone.isValidZone(name) : false;

/** Calendar day of a `date` column. */
export const dayText = (date: Date): string => date.toISOString().slice(0, 10);
export const dayDate = (day: string): Date => new Date(`${day}T00:00:00.000Z`);

interface Place {
  readonly timeZone: string;
  /** JSON pointer of the field that the time came from. */
  readonly field: string;
}

/**
 * The moment that `text` means at the show grounds. With an offset ("2026-11-01T01:30-05:00") it stands by
 * itself; without one it is the show's own clock. Throws invalid_local_time for a time that the clock skips
 * or shows twice that day.
 */
export function momentOf(text: string, { timeZone, field }: Place): Date {
  if (/(?:Z|[+-]\d{2}:\d{2})$/.test(text)) return DateTime.fromISO(text).toJSDate();
  const local = DateTime.fromISO(text, { zone: timeZone });
  const shown = local.toFormat("yyyy-MM-dd'T'HH:mm");
  if (shown !== text.slice(0, 16)) {
    throw problem('invalid_local_time', {
      errors: [{ field, message: `the clock skips ${text} in ${timeZone}` }],
    });
  }
  if (local.getPossibleOffsets().length > 1) {
    throw problem('invalid_local_time', {
      errors: [
        { field, message: `the clock shows ${text} twice in ${timeZone}; add the offset, like -05:00` },
      ],
    });
  }
  return local.toJSDate();
}

/** The moment by the clock of the show grounds, with its offset: `2026-08-15T09:00:00.000-05:00`. */
export function localText(moment: Date, timeZone: string): string {
  const text = DateTime.fromJSDate(moment, { zone: timeZone }).toISO();
  if (text === null) throw new RangeError(`no time in ${timeZone}`);
  return text;
}

/** Calendar day of a moment at the show grounds. */
export const localDay = (moment: Date, timeZone: string): string =>
  DateTime.fromJSDate(moment, { zone: timeZone }).toFormat('yyyy-MM-dd');

interface ShowDays {
  readonly firstDay: Date;
  readonly lastDay: Date;
}

/** Throws day_outside_show. */
export function mustBeShowDay(day: string, { firstDay, lastDay }: ShowDays, field: string): void {
  if (day < dayText(firstDay) || day > dayText(lastDay)) {
    throw problem('day_outside_show', {
      errors: [{ field, message: `the show is from ${dayText(firstDay)} to ${dayText(lastDay)}` }],
    });
  }
}
