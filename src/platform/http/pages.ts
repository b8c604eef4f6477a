/** Lists come in pages; the cursor says after which item the next one starts, and means nothing to the reader. */
import { z } from 'zod';
import { problem } from '../problems/index.ts';

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
