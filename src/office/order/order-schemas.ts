import { z } from 'zod';
import type { OrderDraw } from '../../platform/generated/prisma/client.ts';
import { classEntryStatuses } from '../class-entries/status.ts';
import { id, instant, whyBody } from '../schemas/common.ts';
import { wording } from '../schemas/text.ts';

export const newDraw = z.strictObject({
  reason: wording.nullable().default(null).meta({ description: 'Needed to draw again.' }),
  enoughGap: z
    .int()
    .min(1)
    .max(1_000)
    .nullable()
    .default(null)
    .describe('So many goes between two goes of one rider are enough; null: as many as the field allows.'),
});

export const newOrder = z.strictObject({
  order: z.array(id).min(1).max(2_000).describe('Every class entry that goes, once.'),
  reason: wording.meta(whyBody),
});

export const drawBody = z.strictObject({
  id,
  number: z.int(),
  kind: z.enum(['drawn', 'redrawn', 'by-hand', 'late-add']),
  seed: z.string().nullable(),
  enoughGap: z.int().nullable(),
  leastGap: z
    .int()
    .nullable()
    .describe('The least gap between two goes of one rider; null: nobody goes twice.'),
  order: z.array(id),
  reason: z.string().nullable(),
  drawnAt: instant,
});
export type DrawBody = z.infer<typeof drawBody>;

export const drawOf = (row: OrderDraw): DrawBody => ({
  id: row.id,
  number: row.number,
  kind: drawBody.shape.kind.parse(row.kind),
  seed: row.seed,
  enoughGap: row.enoughGap,
  leastGap: row.leastGap,
  order: row.classEntryIds,
  reason: row.reason,
  drawnAt: row.drawnAt.toISOString(),
});

/** What everyone may see of the order of go: names in their public form only. */
export const orderOfGoBody = z.strictObject({
  classId: id,
  drawn: z.boolean(),
  goes: z.array(
    z.strictObject({
      classEntryId: id,
      goPosition: z.int().nullable(),
      backNumber: z.int(),
      exhibitor: z.string().describe('In its public form.'),
      horse: z.string().nullable().describe('null: the exhibitor goes by back number alone.'),
      status: z.enum(classEntryStatuses),
    }),
  ),
});
