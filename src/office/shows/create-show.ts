import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { dayDate, isTimeZone } from '../show-time.ts';
import { type NewShow, ownName, type ShowBody, showOf } from './show-schemas.ts';

/** Throws unknown_time_zone, days_out_of_order. */
export async function createShow(parts: AppParts, tx: Transaction, asked: NewShow): Promise<ShowBody> {
  checkShow(asked);
  const at = parts.clock.now();
  const { firstDay, lastDay, ...rest } = asked;
  const show = await tx.prisma.show.create({
    data: {
      ...rest,
      name: ownName(asked),
      id: parts.ids.next(),
      firstDay: dayDate(firstDay),
      lastDay: dayDate(lastDay),
      createdAt: at,
    },
  });
  await appendLine(parts, tx, {
    showId: show.id,
    type: 'show.created',
    body: { showId: show.id, kind: show.kind },
    at,
  });
  return showOf(show);
}

export function checkShow({
  timeZone,
  firstDay,
  lastDay,
}: Pick<NewShow, 'timeZone' | 'firstDay' | 'lastDay'>): void {
  if (!isTimeZone(timeZone)) {
    const message = `"${timeZone}" is not the name of a time zone`;
    throw problem('unknown_time_zone', { errors: [{ field: '/timeZone', message }] });
  }
  if (lastDay < firstDay) {
    const message = `it comes before the first day, ${firstDay}`;
    throw problem('days_out_of_order', { errors: [{ field: '/lastDay', message }] });
  }
}
