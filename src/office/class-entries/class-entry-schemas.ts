import { z } from 'zod';
import { id } from '../schemas/common.ts';
import { wording } from '../schemas/text.ts';
import type { PublicEntry } from '../store/public-entries.ts';
import { classEntryStatuses } from './status.ts';
import { videoAddress } from './video-address.ts';

export const newClassEntry = z.strictObject({
  entryId: id,
  reason: wording
    .nullable()
    .default(null)
    .meta({ description: 'Needed once the order of go is drawn: a late add.' }),
});

export const newStatus = z.strictObject({
  status: z.enum(['entered', 'checked-in', 'scratched', 'no-show', 'excused']),
  reason: wording.nullable().default(null).meta({ description: 'Needed for all but checking in.' }),
});
export type NewStatus = z.infer<typeof newStatus>;

export const newVideo = z.strictObject({
  url: videoAddress.nullable().describe('Where the video of the go is; null takes it off.'),
});
export type NewVideo = z.infer<typeof newVideo>;

export const classEntryBody = z.strictObject({
  id,
  classId: id,
  entryId: id,
  backNumber: z.int(),
  exhibitor: z.string().describe('Full name for the office; for the gate in its public form.'),
  horse: z.string().nullable().describe('null: for the gate, where it is not public.'),
  goPosition: z.int().nullable(),
  status: z.enum(classEntryStatuses),
  statusReason: z.string().nullable(),
  addedLate: z.boolean(),
  videoUrl: z.string().nullable().describe('For the office; null for the gate.'),
});
export type ClassEntryBody = z.infer<typeof classEntryBody>;

export const withEntry = { entry: { include: { exhibitor: true, horse: true } } } as const;

interface ClassEntryRow {
  readonly id: string;
  readonly classId: string;
  readonly entryId: string;
  readonly goPosition: number | null;
  readonly status: string;
  readonly statusReason: string | null;
  readonly addedLate: boolean;
  readonly videoUrl: string | null;
  readonly entry: {
    readonly backNumber: number;
    readonly exhibitor: { readonly name: string };
    readonly horse: { readonly name: string };
  };
}

export const classEntryOf = (row: ClassEntryRow): ClassEntryBody => ({
  id: row.id,
  classId: row.classId,
  entryId: row.entryId,
  backNumber: row.entry.backNumber,
  exhibitor: row.entry.exhibitor.name,
  horse: row.entry.horse.name,
  goPosition: row.goPosition,
  status: classEntryBody.shape.status.parse(row.status),
  statusReason: row.statusReason,
  addedLate: row.addedLate,
  videoUrl: row.videoUrl,
});

/** The gate works by back numbers: who may be called by name, and which horse, is the families' choice. */
export function asPublic(body: ClassEntryBody, entries: readonly PublicEntry[] = []): ClassEntryBody {
  const shown = entries.find(({ classEntryId }) => classEntryId === body.id);
  return {
    ...body,
    exhibitor: shown?.exhibitor ?? `No. ${body.backNumber}`,
    horse: shown?.horse ?? null,
    videoUrl: null,
  };
}
