/** What the office's routes have in common: ids, days, instants, pages. */
import { z } from 'zod';
import { problem } from '../../platform/problems/index.ts';

export const id = z.uuid('it must be an id: a UUID').toLowerCase();

/** Calendar day at the show grounds, `yyyy-mm-dd`. */
export const day = z.iso
  .date('it must be a day: yyyy-mm-dd')
  .refine(
    (text) => text >= '1900-01-01' && text <= '2199-12-31',
    'it must be a day of the years 1900 to 2199',
  );

/** A moment, in UTC: `2026-08-15T14:00:00.000Z`. */
export const instant = z.iso.datetime().meta({ examples: ['2026-08-15T14:00:00.000Z'] });

export const pageQuery = z.strictObject({
  limit: z.coerce.number().int().min(1).max(200).default(50).describe('At most so many items.'),
  cursor: z.string().max(200).optional().describe('`nextCursor` of the page before.'),
});
export type PageQuery = z.infer<typeof pageQuery>;

export const pageOf = <Item extends z.ZodType>(item: Item) =>
  z.strictObject({
    items: z.array(item),
    nextCursor: z
      .string()
      .nullable()
      .describe('Send it as `cursor` for the next page; null: this is the last.'),
  });

export const showParams = z.object({ showId: id });
export const classParams = z.object({ showId: id, classId: id });
export const classEntryParams = z.object({ showId: id, classId: id, classEntryId: id });

export const whyBody = { description: 'Why, in words that others will read.' };

/** What a page is sorted by: an id, or a number of the program. */
type SortKey = string | number;

/** The page out of one row more than was asked for. */
export function pageFrom<Row, Item>(
  rows: readonly Row[],
  limit: number,
  { key, item }: { readonly key: (row: Row) => SortKey; readonly item: (row: Row) => Item },
): { items: Item[]; nextCursor: string | null } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  const more = rows.length > limit && last !== undefined;
  return { items: shown.map(item), nextCursor: more ? toCursor(key(last)) : null };
}

const toCursor = (key: SortKey) => Buffer.from(JSON.stringify(key)).toString('base64url');

/** The id after which the page starts. Throws invalid_cursor. */
export function afterId(cursor: string | undefined): string | undefined {
  return cursor === undefined ? undefined : fromCursor(cursor, z.uuid());
}

/** The number after which the page starts. Throws invalid_cursor. */
export function afterNumber(cursor: string | undefined): number | undefined {
  return cursor === undefined ? undefined : fromCursor(cursor, z.int());
}

function fromCursor<T>(cursor: string, form: z.ZodType<T>): T {
  try {
    return form.parse(JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8')));
  } catch {
    throw problem('invalid_cursor');
  }
}

type Stated<T> = { [Field in keyof T]?: Exclude<T[Field], undefined> };

/** Only the fields that were sent. */
export function withoutUndefined<T extends object>(change: T): Stated<T> {
  return Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined)) as Stated<T>;
}
