import { z } from 'zod';
import type { Entry, Exhibitor, Horse, Owner } from '../../platform/generated/prisma/client.ts';
import { id } from '../schemas/common.ts';

const backNumber = z.int().min(1).max(99_999);

export const newEntry = z.strictObject({
  backNumber,
  exhibitorId: id,
  horseId: id,
  ownerId: id.nullable().default(null),
});
export type NewEntry = z.infer<typeof newEntry>;

export const entryChange = z
  .strictObject({
    backNumber: backNumber.optional(),
    exhibitorId: id.optional(),
    horseId: id.optional(),
    ownerId: id.nullable().optional(),
  })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type EntryChange = z.infer<typeof entryChange>;

const named = z.strictObject({ id, name: z.string() });

export const entryBody = z.strictObject({
  id,
  backNumber: z.int(),
  exhibitor: named,
  horse: named,
  owner: named.nullable(),
  version: z.int(),
});
export type EntryBody = z.infer<typeof entryBody>;

export const withNames = { exhibitor: true, horse: true, owner: true } as const;

type EntryRow = Entry & {
  readonly exhibitor: Exhibitor;
  readonly horse: Horse;
  readonly owner: Owner | null;
};

const nameOf = (row: { readonly id: string; readonly name: string }) => ({ id: row.id, name: row.name });

export const entryOf = (row: EntryRow): EntryBody => ({
  id: row.id,
  backNumber: row.backNumber,
  exhibitor: nameOf(row.exhibitor),
  horse: nameOf(row.horse),
  owner: row.owner === null ? null : nameOf(row.owner),
  version: row.version,
});
