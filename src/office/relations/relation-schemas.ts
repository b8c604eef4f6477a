import { z } from 'zod';
import type { ClassRelation } from '../../platform/generated/prisma/client.ts';
import { id, instant, whyBody } from '../schemas/common.ts';
import { nameText, wording } from '../schemas/text.ts';

export const newSplit = z.strictObject({
  reason: wording.meta(whyBody),
  into: z
    .array(
      z.strictObject({
        number: z.int().min(1).max(99_999).describe('Class number of the new class.'),
        name: nameText,
        division: nameText.nullable().default(null),
        classEntryIds: z.array(id).min(1).max(2_000).describe('Who moves to it.'),
      }),
    )
    .min(1)
    .max(20)
    .describe('The new classes; whoever is not named stays.'),
});
export type NewSplit = z.infer<typeof newSplit>;

export const newCombination = z.strictObject({
  reason: wording.meta(whyBody),
  classIds: z.array(id).min(1).max(20).describe('The classes whose entries join this one.'),
});
export type NewCombination = z.infer<typeof newCombination>;

export const relationBody = z.strictObject({
  id,
  kind: z.enum(['split', 'combined']),
  fromClassId: id,
  toClassId: id,
  classEntryIds: z.array(id).describe('The class entries of the class they left.'),
  reason: z.string(),
  relatedAt: instant,
});
export type RelationBody = z.infer<typeof relationBody>;

export const relationsBody = z.strictObject({ items: z.array(relationBody) });

export const relationOf = (row: ClassRelation): RelationBody => ({
  id: row.id,
  kind: row.kind === 'split' ? 'split' : 'combined',
  fromClassId: row.fromClassId,
  toClassId: row.toClassId,
  classEntryIds: row.classEntryIds,
  reason: row.reason,
  relatedAt: row.relatedAt.toISOString(),
});
