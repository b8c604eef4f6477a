import { z } from 'zod';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { forgetAnswers } from '../../platform/http/answer-once.ts';
import { type FieldFault, problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import { id, instant } from '../schemas/common.ts';
import { lockShow } from '../store/locks.ts';
import { erasedName, mustNotBeErased } from './erased.ts';
import { tellNamesChanged } from './names-changed.ts';
import { eraseQueriesOf } from './query-words.ts';
import { whereWritten, writtenPlace } from './written-words.ts';

export const erasureReasons = [
  'asked-by-family',
  'asked-by-exhibitor',
  'authority',
  'entered-in-error',
] as const;

/** The reason is a code, since free words about someone whose name goes might hold the name again. */
export const newErasure = z
  .strictObject({
    reason: z.enum(erasureReasons),
    backNumber: z
      .int()
      .min(1)
      .max(99_999)
      .optional()
      .describe('A back number of the exhibitor, repeated: it cannot be undone.'),
    exhibitorId: id.optional().describe('Or the id of the exhibitor, repeated.'),
    ownerIds: z
      .array(id)
      .max(20)
      .default([])
      .describe("Owners of the exhibitor's horses whose names are to go with hers, e.g. the parents'."),
  })
  .refine(({ backNumber, exhibitorId }) => backNumber !== undefined || exhibitorId !== undefined, {
    path: ['backNumber'],
    error: 'repeat a back number or the id of the exhibitor: it cannot be undone',
  });
export type NewErasure = z.infer<typeof newErasure>;

export const erasureBody = z.strictObject({
  exhibitorId: id,
  erasedAt: instant,
  consentsRemoved: z.int(),
  ownersErased: z.int(),
  queriesErased: z
    .int()
    .describe('Queries to the office under a back number of the exhibitor, with their answers.'),
  answersForgotten: z.int().describe('Answers that were kept for a request sent twice, and held the name.'),
  stillWritten: z
    .array(writtenPlace)
    .describe(
      'Records with words of the name in what people wrote themselves: to be looked at; they are left as they are.',
    ),
});
export type ErasureBody = z.infer<typeof erasureBody>;

interface Asked {
  readonly showId: string;
  readonly exhibitorId: string;
  readonly erasure: NewErasure;
}

/**
 * The name, how it is spoken, the date of birth, videos and what the family signed are gone for good; places, cards
 * and postings stay under the back number. The ledger and the postings never held a name, so they are as they were.
 * Throws not_found, exhibitor_erased, erasure_not_confirmed, unknown_reference.
 */
export async function eraseExhibitor(parts: AppParts, tx: Transaction, asked: Asked): Promise<ErasureBody> {
  const { showId, exhibitorId, erasure } = asked;
  const at = parts.clock.now();
  await lockShow(tx, showId);
  await tx.sql.rows(lockClasses, [showId]);
  const exhibitor = await tx.prisma.exhibitor.findFirst({
    where: { id: exhibitorId, showId },
    include: withEntries,
  });
  if (exhibitor === null) throw problem('not_found');
  mustNotBeErased(exhibitor);
  const { name, entries } = exhibitor;
  mustBeRepeated(asked, entries);
  mustBeOwners(erasure.ownerIds, entries);
  const queriesErased = await eraseQueriesOf(tx, { exhibitorId, at });
  const stillWritten = await whereWritten(tx, { showId, name });
  const removed = await makeNameless(tx, { ...asked, at });
  const answersForgotten = await forgetAnswers(tx, [
    ...[exhibitorId, ...erasure.ownerIds],
    ...entries.flatMap(({ id: entry, horseId, classEntries }) => [
      ...[entry, horseId],
      ...classEntries.map((one) => one.id),
    ]),
    ...(await entriesOfOwners(tx, erasure.ownerIds)),
  ]);
  await tellNamesChanged(parts, tx, { showId, at });
  await appendLine(parts, tx, {
    ...{ showId, type: 'exhibitor.erased', at },
    body: { exhibitorId, reason: erasure.reason, ownerIds: erasure.ownerIds },
  });
  return {
    ...{ exhibitorId, erasedAt: at.toISOString() },
    ...{ answersForgotten, stillWritten, queriesErased },
    ...removed,
  };
}

/** Whoever is changing a class may be writing an answer with the name in it: it is waited for. */
const lockClasses: Statement = {
  name: 'office.lock-classes-of-show',
  text: 'SELECT id FROM show_class WHERE show_id = $1::uuid ORDER BY id FOR NO KEY UPDATE',
};

const withEntries = { entries: { include: { classEntries: { select: { id: true } } } } } as const;

async function makeNameless(
  tx: Transaction,
  { showId, exhibitorId, erasure, at }: Asked & { readonly at: Date },
): Promise<Pick<ErasureBody, 'consentsRemoved' | 'ownersErased'>> {
  await tx.prisma.exhibitor.update({
    where: { id: exhibitorId },
    data: {
      ...{ name: erasedName, bornOn: null, spokenAs: null, publicName: 'back-number', erasedAt: at },
      version: { increment: 1 },
    },
  });
  await forgetTraces(tx, { showId, exhibitorId });
  const consents = await tx.prisma.exhibitorConsent.deleteMany({ where: { exhibitorId } });
  const owners = await tx.prisma.owner.updateMany({
    where: { id: { in: erasure.ownerIds }, showId },
    data: { name: erasedName },
  });
  return { consentsRemoved: consents.count, ownersErased: owners.count };
}

/** A video shows who rides, and a note on how her horse is spoken of may hold her name. */
async function forgetTraces(tx: Transaction, { showId, exhibitorId }: Pick<Asked, 'showId' | 'exhibitorId'>) {
  const ofHers = { showId, entry: { exhibitorId } };
  await tx.prisma.classEntry.updateMany({ where: ofHers, data: { videoUrl: null } });
  await tx.prisma.horse.updateMany({
    where: { showId, entries: { some: { exhibitorId } } },
    data: { spokenAs: null },
  });
}

interface OwnEntry {
  readonly backNumber: number;
  readonly ownerId: string | null;
}

function mustBeRepeated({ exhibitorId, erasure }: Asked, entries: readonly OwnEntry[]): void {
  const errors: FieldFault[] = [];
  if (erasure.exhibitorId !== undefined && erasure.exhibitorId !== exhibitorId) {
    errors.push({ field: '/exhibitorId', message: 'it is not the id of the exhibitor in the address' });
  }
  const { backNumber } = erasure;
  if (backNumber !== undefined && !entries.some((entry) => entry.backNumber === backNumber)) {
    errors.push({ field: '/backNumber', message: `${backNumber} is not a back number of this exhibitor` });
  }
  if (errors.length > 0) throw problem('erasure_not_confirmed', { errors });
}

function mustBeOwners(ownerIds: readonly string[], entries: readonly OwnEntry[]): void {
  const message = 'it is not the owner of a horse that this exhibitor is entered with';
  const errors = ownerIds.flatMap((ownerId, index) =>
    entries.some((entry) => entry.ownerId === ownerId) ? [] : [{ field: `/ownerIds/${index}`, message }],
  );
  if (errors.length > 0) throw problem('unknown_reference', { errors });
}

/** An owner may have horses that others show: their entries' kept answers hold the owner's name. */
async function entriesOfOwners(tx: Transaction, ownerIds: readonly string[]): Promise<string[]> {
  const rows = await tx.prisma.entry.findMany({
    where: { ownerId: { in: [...ownerIds] } },
    select: { id: true },
  });
  return rows.map(({ id: entry }) => entry);
}
