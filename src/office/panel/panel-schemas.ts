import { z } from 'zod';
import { id, instant, whyBody } from '../schemas/common.ts';
import { wording } from '../schemas/text.ts';

const order = z.int().min(1).max(15).nullable().default(null);

export const newPanel = z.strictObject({
  seats: z
    .array(
      z.strictObject({
        personId: id,
        role: z.enum(['judge', 'referee']).default('judge'),
        callOrder: order.describe('1: the call judge, 2: the next ...'),
        tieOrder: order.describe('1: the first tie judge, 2: the next ...'),
      }),
    )
    .max(15, 'a panel has at most 15 seats')
    .describe('In the order of seats.'),
});
export type NewPanel = z.infer<typeof newPanel>;

export const withdrawal = z.strictObject({
  reason: wording.meta(whyBody),
  replacementId: id
    .nullable()
    .default(null)
    .describe('The person who takes the seat over, with its role, call order and tie order; null: nobody.'),
});
export type Withdrawal = z.infer<typeof withdrawal>;

export const panelBody = z.strictObject({
  classVersion: z.int().describe('Version of the class, which If-Match asks for.'),
  seats: z.array(
    z.strictObject({
      id,
      personId: id,
      name: z.string(),
      seatOrder: z.int(),
      role: z.enum(['judge', 'referee']),
      callOrder: z.int().nullable(),
      tieOrder: z.int().nullable(),
      withdrawnAt: instant.nullable(),
      replacesSeatId: id.nullable(),
    }),
  ),
});
export type PanelBody = z.infer<typeof panelBody>;
