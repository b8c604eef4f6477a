/** Moments of a show, by the clock on its wall. */
import { dateAndTimeAt, timeAt } from '../../shared/show-times.ts';

/** `2027-05-14T09:30:00Z`, `Europe/Vienna` -> "11:30" */
export const timeOf = (instant: string, timeZone: string, language: string): string =>
  timeAt(instant, { language, timeZone });

/** With its day: "14 May, 11:30" */
export const momentOf = (instant: string, timeZone: string, language: string): string =>
  dateAndTimeAt(instant, { language, timeZone });

/** `2027-05-14` -> "Friday, 14 May 2027" */
export const dayOf = (day: string, language: string): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'full', timeZone: 'UTC' }).format(new Date(day));
