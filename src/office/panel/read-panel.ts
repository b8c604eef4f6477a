import type { Transaction } from '../../platform/database.ts';
import type { PanelBody } from './panel-schemas.ts';
import { seatRole } from './seats.ts';

/** The panel of a class as it stands, withdrawn seats last. */
export async function readPanel(
  tx: Pick<Transaction, 'prisma'>,
  { id: classId, version }: { id: string; version: number },
): Promise<PanelBody> {
  const rows = await tx.prisma.panelSeat.findMany({
    where: { classId },
    include: { person: { select: { name: true } } },
    orderBy: [{ withdrawnAt: { sort: 'asc', nulls: 'first' } }, { seatOrder: 'asc' }],
  });
  const seats = rows.map((row) => ({
    id: row.id,
    personId: row.personId,
    name: row.person.name,
    seatOrder: row.seatOrder,
    role: seatRole(row.role),
    callOrder: row.callOrder,
    tieOrder: row.tieOrder,
    withdrawnAt: row.withdrawnAt?.toISOString() ?? null,
    replacesSeatId: row.replacesId,
  }));
  return { classVersion: version, seats };
}
