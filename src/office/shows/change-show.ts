import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { withoutUndefined } from '../schemas/common.ts';
import { dayDate } from '../show-time.ts';
import { lockShow } from '../store/locks.ts';
import { checkShow } from './create-show.ts';
import { ownName, type ShowBody, type ShowChange, showOf } from './show-schemas.ts';

interface Change {
  readonly showId: string;
  readonly versionRead: number;
  readonly change: ShowChange;
}

/** Throws not_found, stale_version, unknown_time_zone, days_out_of_order, day_outside_show. */
export async function changeShow(
  parts: AppParts,
  tx: Transaction,
  { showId, versionRead, change }: Change,
): Promise<ShowBody> {
  const at = parts.clock.now();
  const before = await lockShow(tx, showId);
  mustBeCurrent(before.version, versionRead);
  const after = { ...showOf(before), ...withoutUndefined(change) };
  checkShow(after);
  await mustKeepClassDays(tx, after);
  const { place, timeZone, minorPublicName } = after;
  const name = ownName(after);
  const show = await tx.prisma.show.update({
    where: { id: showId },
    data: {
      ...{ name, place, timeZone, minorPublicName },
      firstDay: dayDate(after.firstDay),
      lastDay: dayDate(after.lastDay),
      version: { increment: 1 },
    },
  });
  const body = { showId, version: show.version };
  await appendLine(parts, tx, { showId, type: 'show.changed', body, at });
  return showOf(show);
}

/** A class that was put on a day must still have that day. */
async function mustKeepClassDays(tx: Transaction, { id, firstDay, lastDay }: ShowBody): Promise<void> {
  const left = await tx.prisma.showClass.findFirst({
    where: { showId: id, OR: [{ day: { lt: dayDate(firstDay) } }, { day: { gt: dayDate(lastDay) } }] },
    select: { number: true },
  });
  if (left !== null) {
    throw problem('day_outside_show', {
      detail: `Class ${left.number} is on a day that would no longer be part of the show.`,
    });
  }
}
