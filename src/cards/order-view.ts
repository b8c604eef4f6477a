/** The judge's own order of her ties, or her ranking, as it is shown. */
import { z } from 'zod';
import type { Draft } from './card-record.ts';
import { type CardOrder, orderSchema } from './card-schemas.ts';

export const orderViewSchema = z
  .strictObject({
    version: z.int().nullable().describe('Of the draft, as in the ETag; null: signed.'),
    savedAt: z.string().nullable(),
    content: orderSchema,
  })
  .meta({ id: 'CardOrderView' });

/** A draft with its version, or the order of a signed card. */
export type ShownOrder = Partial<Draft<CardOrder>> & Pick<Draft<CardOrder>, 'content'>;

export const orderView = ({ version, savedAt, content }: ShownOrder) => ({
  version: version ?? null,
  savedAt: savedAt?.toISOString() ?? null,
  content,
});
