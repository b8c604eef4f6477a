/** Moments of a show, by the clock on its wall. */

/** `2027-05-14T09:30:00Z`, `Europe/Vienna` -> "11:30" */
export const timeOf = (instant: string, timeZone: string, language: string): string =>
  new Intl.DateTimeFormat(language, { timeZone, hour: '2-digit', minute: '2-digit' }).format(
    new Date(instant),
  );

/** With its day: "14 May, 11:30" */
export const momentOf = (instant: string, timeZone: string, language: string): string =>
  new Intl.DateTimeFormat(language, {
    ...{ timeZone, day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' },
  }).format(new Date(instant));

/** `2027-05-14` -> "Friday, 14 May 2027" */
export const dayOf = (day: string, language: string): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'full', timeZone: 'UTC' }).format(new Date(day));
