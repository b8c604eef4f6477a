import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { PanelSeat } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { lockOpenClass } from '../store/locks.ts';
import type { PanelBody, Withdrawal } from './panel-schemas.ts';
import { readPanel } from './read-panel.ts';

interface Asked extends Withdrawal {
  readonly showId: string;
  readonly classId: string;
  readonly seatId: string;
}

/**
 * A judge leaves the panel, at any time: her card, if she signed one, stays as evidence and counts no more.
 * Another may take her place in every order. Throws not_found, class_not_open, seat_withdrawn,
 * unknown_reference, seat_taken.
 */
export async function withdrawJudge(parts: AppParts, tx: Transaction, asked: Asked): Promise<PanelBody> {
  const { showId, classId, seatId, replacementId } = asked;
  const at = parts.clock.now();
  await lockOpenClass(tx, showId, classId);
  const seat = await tx.prisma.panelSeat.findFirst({ where: { id: seatId, classId } });
  if (seat === null) throw problem('not_found');
  if (seat.withdrawnAt !== null) throw problem('seat_withdrawn', { detail: 'She has withdrawn already.' });
  await tx.prisma.panelSeat.update({
    where: { id: seatId },
    data: { withdrawnAt: at, withdrawnWhy: asked.reason, callOrder: null, tieOrder: null },
  });
  await appendLine(parts, tx, { showId, type: 'panel.withdrawn', body: { classId, seatId }, at });
  if (replacementId !== null) await replace(tx, { parts, seat, personId: replacementId, at });
  const { version } = await tx.prisma.showClass.update({
    where: { id: classId },
    data: { version: { increment: 1 } },
  });
  return readPanel(tx, { id: classId, version });
}

interface Replacing {
  readonly parts: AppParts;
  readonly seat: PanelSeat;
  readonly personId: string;
  readonly at: Date;
}

async function replace(tx: Transaction, { parts, seat, personId, at }: Replacing): Promise<void> {
  const { showId, classId, role, callOrder, tieOrder } = seat;
  const field = '/replacementId';
  if ((await tx.prisma.person.count({ where: { id: personId, showId } })) === 0) {
    throw problem('unknown_reference', {
      errors: [{ field, message: 'there is no such person in this show' }],
    });
  }
  if ((await tx.prisma.panelSeat.count({ where: { classId, personId, withdrawnAt: null } })) > 0) {
    throw problem('seat_taken', { errors: [{ field, message: 'she sits on this panel already' }] });
  }
  const { _max } = await tx.prisma.panelSeat.aggregate({ where: { classId }, _max: { seatOrder: true } });
  const seatOrder = (_max.seatOrder ?? 0) + 1;
  const id = parts.ids.next();
  await tx.prisma.panelSeat.create({
    data: {
      ...{ id, showId, classId, personId, role, callOrder, tieOrder, seatOrder },
      replacesId: seat.id,
      createdAt: at,
    },
  });
  await appendLine(parts, tx, { showId, type: 'panel.seated', body: { classId, seatId: id }, at });
}
