import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Entry } from '../../platform/generated/prisma/client.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { type FieldFault, problem } from '../../platform/problems/index.ts';
import { withoutUndefined } from '../schemas/common.ts';
import { lockShow } from '../store/locks.ts';
import { type EntryBody, type EntryChange, entryOf, type NewEntry, withNames } from './entry-schemas.ts';

/** Gives an exhibitor with a horse a back number. Throws not_found, back_number_taken, unknown_reference. */
export async function addEntry(
  parts: AppParts,
  tx: Transaction,
  asked: NewEntry & { showId: string },
): Promise<EntryBody> {
  const at = parts.clock.now();
  const { showId, backNumber } = asked;
  await lockShow(tx, showId);
  await mustBeFreeBackNumber(tx, { showId, backNumber });
  await mustBeOfShow(tx, showId, asked);
  const row = await tx.prisma.entry.create({
    data: { ...asked, id: parts.ids.next(), createdAt: at },
    include: withNames,
  });
  await appendLine(parts, tx, { showId, type: 'entry.created', body: lineBody(row), at });
  return entryOf(row);
}

/** All that makes the entry, so that a later change of the record without a line shows. */
const lineBody = ({ id: entryId, backNumber, exhibitorId, horseId, ownerId, version }: Entry) => ({
  ...{ entryId, backNumber, exhibitorId, horseId, ownerId, version },
});

interface Change {
  readonly showId: string;
  readonly entryId: string;
  readonly versionRead: number;
  readonly change: EntryChange;
}

/**
 * Changes an entry. Who rides which horse under which number stays once a card of one of its classes was signed.
 * Throws not_found, stale_version, class_under_way, back_number_taken, unknown_reference.
 */
export async function changeEntry(parts: AppParts, tx: Transaction, asked: Change): Promise<EntryBody> {
  const at = parts.clock.now();
  const { showId, entryId, versionRead, change } = asked;
  await lockShow(tx, showId);
  const before = await tx.prisma.entry.findFirst({ where: { id: entryId, showId } });
  if (before === null) throw problem('not_found');
  mustBeCurrent(before.version, versionRead);
  const { ownerId: _, ...judged } = withoutUndefined(change);
  if (Object.keys(judged).length > 0) await mustNotBeJudged(tx, entryId);
  if (change.backNumber !== undefined && change.backNumber !== before.backNumber) {
    await mustBeFreeBackNumber(tx, { showId, backNumber: change.backNumber });
  }
  await mustBeOfShow(tx, showId, change);
  const row = await tx.prisma.entry.update({
    where: { id: entryId },
    data: { ...withoutUndefined(change), version: { increment: 1 } },
    include: withNames,
  });
  await appendLine(parts, tx, { showId, type: 'entry.changed', body: lineBody(row), at });
  return entryOf(row);
}

async function mustBeFreeBackNumber(
  tx: Transaction,
  where: { showId: string; backNumber: number },
): Promise<void> {
  const holder = await tx.prisma.entry.findFirst({
    where,
    select: { id: true, exhibitor: { select: { name: true } }, horse: { select: { name: true } } },
  });
  if (holder === null) return;
  // The office sees full names; nobody else gets here.
  const message = `${where.backNumber} is ${holder.exhibitor.name} with ${holder.horse.name}`;
  throw problem('back_number_taken', {
    errors: [{ field: '/backNumber', message }],
    more: { holderId: holder.id },
  });
}

async function mustBeOfShow(tx: Transaction, showId: string, asked: EntryChange): Promise<void> {
  const { exhibitorId, horseId, ownerId } = asked;
  const there = (id: string) => ({ where: { id, showId } });
  const errors: FieldFault[] = [];
  const missing = (field: string, what: string) =>
    errors.push({ field, message: `there is no such ${what} in this show` });
  if (exhibitorId && (await tx.prisma.exhibitor.count(there(exhibitorId))) === 0)
    missing('/exhibitorId', 'exhibitor');
  if (horseId && (await tx.prisma.horse.count(there(horseId))) === 0) missing('/horseId', 'horse');
  if (ownerId && (await tx.prisma.owner.count(there(ownerId))) === 0) missing('/ownerId', 'owner');
  if (errors.length > 0) throw problem('unknown_reference', { errors });
}

async function mustNotBeJudged(tx: Transaction, entryId: string): Promise<void> {
  const judged = await tx.prisma.classEntry.findFirst({
    where: { entryId, status: { not: 'moved' }, showClass: { cards: { some: { revisions: { some: {} } } } } },
    select: { showClass: { select: { number: true } } },
  });
  if (judged !== null) {
    throw problem('class_under_way', {
      detail: `A card of class ${judged.showClass.number} was signed with this entry on it.`,
    });
  }
}
