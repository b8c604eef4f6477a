import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Role } from './actor.ts';
import { type IssuedToken, issueToken } from './tokens.ts';

interface AskedPass {
  readonly showId: string;
  readonly role: Role;
  readonly seatId: string | null;
  readonly label: string | null;
  readonly hours: number;
}

/** Hands out a pass for one show. Throws not_found, unknown_reference, seat_withdrawn. */
export function issuePass(parts: AppParts, asked: AskedPass): Promise<IssuedToken> {
  const { showId, role, seatId, label, hours } = asked;
  const at = parts.clock.now();
  return inTransaction(parts.db, async (tx) => {
    const show = await tx.prisma.show.findUnique({ where: { id: showId }, select: { id: true } });
    if (show === null) throw problem('not_found');
    if (seatId !== null) await mustBeSeatOfShow(tx, { showId, seatId });
    const expiresAt = new Date(at.getTime() + hours * 3_600_000);
    const issued = await issueToken(parts, tx, { role, showId, seatId, label, expiresAt });
    await appendLine(tx, { showId, type: 'token.issued', body: { jti: issued.jti, role }, at });
    return issued;
  });
}

async function mustBeSeatOfShow(tx: Transaction, where: { showId: string; seatId: string }): Promise<void> {
  const seat = await tx.prisma.panelSeat.findFirst({
    where: { id: where.seatId, showId: where.showId },
    select: { withdrawnAt: true },
  });
  if (seat === null) {
    throw problem('unknown_reference', {
      errors: [{ field: '/seatId', message: 'no such seat in this show' }],
    });
  }
  if (seat.withdrawnAt !== null) throw problem('seat_withdrawn');
}

/** Takes a pass back; doing it twice changes nothing. Throws not_found. */
export function revokePass(parts: AppParts, { showId, jti }: { showId: string; jti: string }): Promise<void> {
  const at = parts.clock.now();
  return inTransaction(parts.db, async (tx) => {
    const revoked = await tx.prisma.accessToken.updateMany({
      where: { jti, showId, revokedAt: null },
      data: { revokedAt: at },
    });
    if (revoked.count > 0) {
      await appendLine(tx, { showId, type: 'token.revoked', body: { jti }, at });
    } else if ((await tx.prisma.accessToken.count({ where: { jti, showId } })) === 0) {
      throw problem('not_found');
    }
  });
}
