import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Exhibitor, ExhibitorConsent } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { mustNotBeErased } from '../exhibitors/erased.ts';
import { tellNamesChanged } from '../exhibitors/names-changed.ts';
import { isMinor, publicNameForms } from '../public-name.ts';
import { dayDate, dayText, localDay } from '../show-time.ts';
import { publicNameFormOf } from '../shows/show-schemas.ts';
import { lockShow } from '../store/locks.ts';
import { type ConsentBody, consentOf, type NewConsent } from './consent-schemas.ts';
import { inYouthClasses } from './youth.ts';

interface Asked {
  readonly showId: string;
  readonly exhibitorId: string;
  readonly consent: NewConsent;
  /** The account that records it. */
  readonly recordedBy: string;
}

/**
 * Takes down whose word it is that the name may be public, and in which form. From then on it is shown so, in what
 * was posted before too. Throws not_found, exhibitor_erased, consent_needs_parent, consent_overtaken,
 * invalid_request for a day to come.
 */
export async function recordConsent(parts: AppParts, tx: Transaction, asked: Asked): Promise<ConsentBody> {
  const { showId, exhibitorId, consent, recordedBy } = asked;
  const at = parts.clock.now();
  const show = await lockShow(tx, showId);
  mustBePast(consent, localDay(at, show.timeZone));
  const exhibitor = await tx.prisma.exhibitor.findFirst({ where: { id: exhibitorId, showId } });
  if (exhibitor === null) throw problem('not_found');
  mustNotBeErased(exhibitor);
  await mustBeOfAge(tx, exhibitor, consent);
  await mustNotBeOvertaken(tx, exhibitorId, consent);
  const { publicName, givenOn, ...rest } = consent;
  const row = await tx.prisma.exhibitorConsent.create({
    data: {
      ...{ ...rest, publicName, givenOn: dayDate(givenOn) },
      ...{ id: parts.ids.next(), showId, exhibitorId, recordedBy, recordedAt: at },
    },
  });
  await tx.prisma.exhibitor.update({
    where: { id: exhibitorId },
    data: { publicName, version: { increment: 1 } },
  });
  await tellNamesChanged(parts, tx, { showId, at });
  const body = { exhibitorId, consentId: row.id, publicName };
  await appendLine(parts, tx, { showId, type: 'consent.recorded', body, at });
  return consentOf(row);
}

/**
 * All that was recorded, in that order; the last one holds. Whoever opens it leaves a line in the ledger.
 * Throws not_found.
 */
export async function openConsents(
  parts: AppParts,
  tx: Transaction,
  { showId, exhibitorId }: Pick<Asked, 'showId' | 'exhibitorId'>,
): Promise<ConsentBody[]> {
  if ((await tx.prisma.exhibitor.count({ where: { id: exhibitorId, showId } })) === 0)
    throw problem('not_found');
  const rows = await tx.prisma.exhibitorConsent.findMany({
    where: { exhibitorId },
    orderBy: [{ recordedAt: 'asc' }, { id: 'asc' }],
  });
  const at = parts.clock.now();
  await appendLine(parts, tx, { showId, type: 'consent.opened', body: { exhibitorId }, at });
  return rows.map(consentOf);
}

function mustBePast({ givenOn }: NewConsent, today: string): void {
  if (givenOn <= today) return;
  const message = `it must not be in the future; at the show grounds it is ${today}`;
  throw problem('invalid_request', { errors: [{ field: '/givenOn', message }] });
}

/** Who was under 18 on the day of giving it had no say of her own in it. */
async function mustBeOfAge(
  tx: Transaction,
  { id, bornOn }: Exhibitor,
  { givenBy, givenOn: day }: NewConsent,
): Promise<void> {
  if (givenBy !== 'exhibitor') return;
  const born = bornOn === null ? null : dayText(bornOn);
  const inYouthClass = (await inYouthClasses(tx, [id])).has(id);
  if (!isMinor({ bornOn: born }, { day, inYouthClass })) return;
  const message =
    born === null
      ? "the exhibitor's age is not known and she is entered in a youth class: a parent or guardian must give it"
      : `the exhibitor was under 18 on ${day}: a parent or guardian must give it`;
  throw problem('consent_needs_parent', { errors: [{ field: '/givenBy', message }] });
}

/** A form that turns up late may hide more of the name than the last word, and never show more. */
async function mustNotBeOvertaken(
  tx: Transaction,
  exhibitorId: string,
  { publicName, givenOn }: NewConsent,
): Promise<void> {
  const last: ExhibitorConsent | null = await tx.prisma.exhibitorConsent.findFirst({
    where: { exhibitorId },
    orderBy: [{ recordedAt: 'desc' }, { id: 'desc' }],
  });
  if (last === null || givenOn >= dayText(last.givenOn)) return;
  const shown = publicNameForms.indexOf(publicNameFormOf(last.publicName));
  if (publicNameForms.indexOf(publicName) >= shown) return;
  const message = `a word of ${dayText(last.givenOn)} is on record, which shows less of the name`;
  throw problem('consent_overtaken', { errors: [{ field: '/givenOn', message }] });
}
