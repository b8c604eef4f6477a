import type { Show } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { dayDate, localDay, momentOf, mustBeShowDay } from '../show-time.ts';

interface AskedTime {
  readonly day: string | null;
  readonly scheduledAt: string | null;
}

interface When {
  readonly day: Date | null;
  readonly scheduledAt: Date | null;
}

/**
 * Day and moment of a class: a moment alone gives the day, and both together must agree.
 * Throws invalid_local_time, day_outside_show.
 */
export function whenOf({ day, scheduledAt }: AskedTime, show: Show): When {
  const { timeZone } = show;
  const moment = scheduledAt === null ? null : momentOf(scheduledAt, { timeZone, field: '/scheduledAt' });
  const dayOfMoment = moment === null ? null : localDay(moment, timeZone);
  if (day !== null && dayOfMoment !== null && day !== dayOfMoment) {
    const message = `at the show grounds that is on ${dayOfMoment}, and the class is on ${day}`;
    throw problem('day_outside_show', { errors: [{ field: '/scheduledAt', message }] });
  }
  const chosen = day ?? dayOfMoment;
  if (chosen !== null) mustBeShowDay(chosen, show, day === null ? '/scheduledAt' : '/day');
  return { day: chosen === null ? null : dayDate(chosen), scheduledAt: moment };
}
