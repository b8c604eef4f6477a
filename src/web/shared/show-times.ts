/** Days and times as the clock of the show grounds has them. */

interface Where {
  readonly language: string;
  readonly timeZone: string;
}

/** `8:00 AM`, `08:00` */
export const timeAt = (instant: string | Date, { language, timeZone }: Where): string =>
  new Date(instant).toLocaleTimeString(language, { timeStyle: 'short', timeZone });

/** `Sat, Oct 31, 8:00 AM` */
export const dayAndTimeAt = (instant: string | Date, { language, timeZone }: Where): string =>
  new Date(instant).toLocaleString(language, {
    ...{ weekday: 'short', day: 'numeric', month: 'short', ...clock(language) },
    timeZone,
  });

/** `Oct 31, 8:00 AM`, where the weekday is of no use. */
export const dateAndTimeAt = (instant: string | Date, { language, timeZone }: Where): string =>
  new Date(instant).toLocaleString(language, {
    ...{ day: 'numeric', month: 'short', ...clock(language) },
    timeZone,
  });

/** `Saturday, October 31`; for telling days apart too. */
export const dayAt = (instant: string | Date, { language, timeZone }: Where): string =>
  new Date(instant).toLocaleDateString(language, {
    ...{ weekday: 'long', day: 'numeric', month: 'long' },
    timeZone,
  });

/** `2026-10-31` to `2026-11-01` as `October 31 – November 1, 2026`. Days of the calendar, in no zone. */
export function daysBetween(first: string, last: string, language: string): string {
  const words = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
  return words.formatRange(new Date(`${first}T00:00:00Z`), new Date(`${last}T00:00:00Z`));
}

/** `2026-10-31`: the day that it is there. */
export const calendarDay = (instant: string | Date, timeZone: string): string =>
  new Date(instant).toLocaleDateString('sv-SE', { timeZone });

/** As `timeAt` writes it: `8:00 AM`, but `08:00` by a clock of 24 hours. */
function clock(language: string): { readonly hour: 'numeric' | '2-digit'; readonly minute: '2-digit' } {
  const { hour12 } = new Intl.DateTimeFormat(language, { timeStyle: 'short' }).resolvedOptions();
  return { hour: hour12 === true ? 'numeric' : '2-digit', minute: '2-digit' };
}
