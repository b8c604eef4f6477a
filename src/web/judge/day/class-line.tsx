/** A class of the day: number, name, ring and time, where it stands and where her card is. */
import { Link } from 'wouter-preact';
import type { DayClass } from '../desk/day-types.ts';
import { useParts } from '../parts.tsx';
import { useTimeZone } from '../show.ts';
import { cardStateWords, dayOf, timeOf } from '../state-words.ts';

interface ClassLineParts {
  readonly dayClass: DayClass;
  /** Where no heading says which day it is. */
  readonly withDay?: boolean;
}

export function ClassLine({ dayClass, withDay = false }: ClassLineParts) {
  const { t, desk, words } = useParts();
  const told = { words, timeZone: useTimeZone() };
  const { classId, number, name, division, ring, scheduledAt, state, seatRole, withdrawn } = dayClass;
  const when =
    scheduledAt === null ? [] : [...(withDay ? [dayOf(scheduledAt, told)] : []), timeOf(scheduledAt, told)];
  const where = [ring, ...when, division];
  return (
    <li>
      <Link href={`/classes/${classId}`}>
        <span class="number">{number}</span>
        <span class="words">
          <strong>{name}</strong>
          <span class="note">{where.filter((part) => part !== null).join(' · ')}</span>
          <span class="note">
            {t(`shared-state-${state}`)}
            {seatRole === 'referee' ? ` · ${t('judge-referee')}` : ''}
          </span>
          <span class="state">
            {withdrawn ? t('judge-shut-withdrawn') : cardStateWords(desk.stateOf(classId).value, told)}
          </span>
        </span>
      </Link>
    </li>
  );
}
