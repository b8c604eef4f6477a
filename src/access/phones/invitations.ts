/** Invitations: the office makes a code, a phone takes it up once, or it ends. */
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../../platform/database.ts';
import type { Invitation } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { qrSvg } from '../qr-code.ts';
import { drawCode, hashOfCode } from './pairing-code.ts';
import { type ListedInvitation, type MadeInvitation, type NewInvitation, roleOf } from './phone-schemas.ts';

interface AskedInvitation {
  readonly showId: string;
  /** The account of the office. */
  readonly createdBy: string;
  /** Scheme, host and port that the phone will call. */
  readonly origin: string;
  readonly asked: NewInvitation;
}

/**
 * Draws a code and keeps its hash. Throws not_found, unknown_reference. Two equal codes among the ten thousand of a
 * year's shows: 1 in 20,000; then the database refuses the second (already_exists) and the office asks again.
 */
export async function makeInvitation(
  parts: AppParts,
  { showId, createdBy, origin, asked }: AskedInvitation,
): Promise<MadeInvitation> {
  const createdAt = parts.clock.now();
  const code = drawCode();
  const link = `${origin}/pair#${code}`;
  const personId = 'personId' in asked ? asked.personId : null;
  const invited = { id: parts.ids.next(), role: asked.role, personId, label: asked.label ?? null };
  const endsAt = new Date(createdAt.getTime() + asked.minutes * 60_000);
  await inTransaction(parts.db, async (tx) => {
    await mustBeOfShow(tx, { showId, personId });
    const codeHash = hashOfCode(parts.tokenKey, code);
    await tx.prisma.invitation.create({
      data: { ...invited, showId, codeHash, createdBy, createdAt, endsAt },
    });
    const body = { invitationId: invited.id, role: invited.role, personId };
    await appendLine(parts, tx, { showId, type: 'invitation.made', body, at: createdAt });
  });
  return { ...invited, code, link, qrSvg: await qrSvg(link), endsAt: endsAt.toISOString() };
}

async function mustBeOfShow(
  tx: Transaction,
  { showId, personId }: { readonly showId: string; readonly personId: string | null },
): Promise<void> {
  if ((await tx.prisma.show.count({ where: { id: showId } })) === 0) throw problem('not_found');
  if (personId === null || (await tx.prisma.person.count({ where: { id: personId, showId } })) > 0) return;
  const message = 'there is no such person in this show';
  throw problem('unknown_reference', { errors: [{ field: '/personId', message }] });
}

/** Takes an invitation back; doing it twice changes nothing. Throws not_found, invitation_used. */
export function revokeInvitation(
  parts: AppParts,
  { showId, invitationId }: { readonly showId: string; readonly invitationId: string },
): Promise<void> {
  const at = parts.clock.now();
  return inTransaction(parts.db, async (tx) => {
    const { count } = await tx.prisma.invitation.updateMany({
      where: { id: invitationId, showId, usedAt: null, revokedAt: null },
      data: { revokedAt: at },
    });
    if (count > 0) {
      await appendLine(parts, tx, { showId, type: 'invitation.revoked', body: { invitationId }, at });
      return;
    }
    const found = await tx.prisma.invitation.findFirst({
      where: { id: invitationId, showId },
      select: { usedAt: true, phone: { select: { id: true } } },
    });
    if (found === null) throw problem('not_found');
    if (found.usedAt !== null)
      throw problem('invitation_used', { more: { phoneId: found.phone?.id ?? null } });
  });
}

const listed = { person: { select: { name: true } }, phone: { select: { id: true } } } as const;

/** The invitations of a show, newest first; at most 500. */
export async function listInvitations(parts: AppParts, showId: string): Promise<ListedInvitation[]> {
  const now = parts.clock.now();
  const rows = await parts.db.prisma.invitation.findMany({
    where: { showId },
    include: listed,
    orderBy: { id: 'desc' },
    take: 500,
  });
  return rows.map((row) => ({
    ...{ id: row.id, role: roleOf(row.role), personId: row.personId, label: row.label },
    ...{ personName: row.person?.name ?? null, state: stateOf(row, now), createdBy: row.createdBy },
    createdAt: row.createdAt.toISOString(),
    endsAt: row.endsAt.toISOString(),
    phoneId: row.phone?.id ?? null,
  }));
}

function stateOf({ usedAt, revokedAt, endsAt }: Invitation, now: Date): ListedInvitation['state'] {
  if (usedAt !== null) return 'used';
  if (revokedAt !== null) return 'revoked';
  return endsAt > now ? 'open' : 'ended';
}
