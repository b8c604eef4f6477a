/** What the office's routes have in common: ids, days, instants. */
import { z } from 'zod';
import { id } from '../../platform/http/id.ts';

export { id };

/** Calendar day at the show grounds, `yyyy-mm-dd`. */
export const day = z.iso
  .date('it must be a day: yyyy-mm-dd')
  .refine(
    (text) => text >= '1900-01-01' && text <= '2199-12-31',
    'it must be a day of the years 1900 to 2199',
  );

/** A moment, in UTC: `2026-08-15T14:00:00.000Z`. */
export const instant = z.iso.datetime().meta({ examples: ['2026-08-15T14:00:00.000Z'] });

export const showParams = z.object({ showId: id });
export const classParams = z.object({ showId: id, classId: id });
export const classEntryParams = z.object({ showId: id, classId: id, classEntryId: id });

export const whyBody = { description: 'Why, in words that others will read.' };

/** What any guarded route may refuse. */
export const accessRefusals = ['token_missing', 'token_invalid', 'not_allowed', 'not_found'] as const;

type Stated<T> = { [Field in keyof T]?: Exclude<T[Field], undefined> };

/** Only the fields that were sent. */
export function withoutUndefined<T extends object>(change: T): Stated<T> {
  return Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined)) as Stated<T>;
}
