import type { Transaction } from '../../platform/database.ts';
import type { FitSeat } from '../classes/fit.ts';

/** Who sits on the panel of a class now, in the order of seats. */
export async function seatedNow(
  tx: Pick<Transaction, 'prisma'>,
  classId: string,
): Promise<(FitSeat & { personId: string; seatOrder: number })[]> {
  const rows = await tx.prisma.panelSeat.findMany({
    where: { classId, withdrawnAt: null },
    orderBy: { seatOrder: 'asc' },
  });
  return rows.map(({ id, role, callOrder, tieOrder, personId, seatOrder }) => ({
    ...{ id, callOrder, tieOrder, personId, seatOrder },
    role: seatRole(role),
  }));
}

export const seatRole = (stored: string): 'judge' | 'referee' => (stored === 'referee' ? 'referee' : 'judge');
