/** The phones of a show, as the office sees them, and how one is taken off it. */
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { type ListedPhone, roleOf } from './phone-schemas.ts';

/** The phones of a show, newest first; at most 500. */
export async function listPhones({ db }: AppParts, showId: string): Promise<ListedPhone[]> {
  const rows = await db.prisma.phone.findMany({
    where: { showId },
    include: { person: { select: { name: true } } },
    orderBy: [{ pairedAt: 'desc' }, { id: 'desc' }],
    take: 500,
  });
  return rows.map(({ id, role, personId, person, label, thumbprint, invitationId, ...when }) => ({
    ...{
      id,
      role: roleOf(role),
      personId,
      personName: person?.name ?? null,
      label,
      thumbprint,
      invitationId,
    },
    pairedAt: when.pairedAt.toISOString(),
    revokedAt: when.revokedAt?.toISOString() ?? null,
    revokedWhy: when.revokedWhy,
  }));
}

interface Revocation {
  readonly showId: string;
  readonly phoneId: string;
  /** In the office's words, or that the phone did it itself; kept with the phone, not in the ledger. */
  readonly why: string;
}

/**
 * From the moment of the commit nothing of the phone is taken any more; what it wrote and signed stays. Doing it twice
 * changes nothing. Throws not_found.
 */
export function revokePhone(parts: AppParts, { showId, phoneId, why }: Revocation): Promise<void> {
  const at = parts.clock.now();
  return inTransaction(parts.db, async (tx) => {
    const { count } = await tx.prisma.phone.updateMany({
      where: { id: phoneId, showId, revokedAt: null },
      data: { revokedAt: at, revokedWhy: why },
    });
    if (count > 0) {
      await appendLine(parts, tx, { showId, type: 'phone.revoked', body: { phoneId }, at });
    } else if ((await tx.prisma.phone.count({ where: { id: phoneId, showId } })) === 0) {
      throw problem('not_found');
    }
  });
}
