/** The classes of one day, ring by ring. */
import { useSignal } from '@preact/signals';
import { Link } from 'wouter-preact';
import { ChoicesBar } from '../../shared/choices-bar.tsx';
import { dayAt, timeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { byRing, dayOf, daysOf, firstDay, isAhead } from '../desk/days.ts';
import { goers } from '../desk/gate-sheet.ts';
import type { ClassLine, Show } from '../desk/gate-types.ts';
import { useDesk } from '../use-desk.ts';
import { Screen } from './screen.tsx';
import { ThisDevice } from './this-device.tsx';

interface DayParts {
  readonly show: Show;
  readonly onLanguage: () => void;
}

export function DayScreen({ show, onLanguage }: DayParts) {
  const { t } = useWords();
  const desk = useDesk();
  const classes = desk.board?.what.classes;
  return (
    <Screen title={show.name} over={t('gate-title')} show={show}>
      {classes === undefined && <p class="empty">{t('gate-looking')}</p>}
      {classes?.length === 0 && <p class="empty">{t('gate-no-classes')}</p>}
      {classes !== undefined && classes.length > 0 && <Days show={show} classes={classes} />}
      <ThisDevice />
      <ChoicesBar onLanguage={onLanguage} />
      <p class="caution-line">{t('shared-caution')}</p>
    </Screen>
  );
}

function Days({ show, classes }: { readonly show: Show; readonly classes: readonly ClassLine[] }) {
  const { t, language } = useWords();
  const { timeZone } = show;
  const chosen = useSignal<string | undefined>(undefined);
  const day = chosen.value ?? firstDay(classes, { timeZone, now: new Date() });
  const days = daysOf(classes, timeZone);
  const nameOf = (one: string) =>
    one === '' ? t('gate-no-day') : dayAt(`${one}T12:00:00Z`, { language, timeZone: 'UTC' });
  return (
    <>
      {days.length > 1 && (
        <nav class="days" aria-label={t('gate-days')}>
          {days.map((one) => (
            <button
              key={one}
              type="button"
              aria-pressed={one === day}
              onClick={() => {
                chosen.value = one;
              }}
            >
              {nameOf(one)}
            </button>
          ))}
        </nav>
      )}
      {byRing(classes.filter((one) => dayOf(one, timeZone) === day)).map(([ring, inRing]) => (
        <section key={ring ?? ''} class="ring">
          <h2>{ring ?? t('gate-no-ring')}</h2>
          <ul class="program">
            {inRing.map((line) => (
              <ClassRow key={line.id} line={line} timeZone={timeZone} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function ClassRow({ line, timeZone }: { readonly line: ClassLine; readonly timeZone: string }) {
  const { t, language } = useWords();
  const desk = useDesk();
  const { id, number, name, scheduledAt, state } = line;
  const sheet = desk.sheetOf(id)?.what;
  const going = sheet === undefined ? [] : goers(sheet);
  const here = going.filter(({ status }) => status === 'checked-in').length;
  return (
    <li>
      <Link href={`/classes/${id}`} class={`program-line is-${state}`}>
        <span class="program-number">{number}</span>
        <span class="program-words">
          <strong>{name}</strong>
          <span class="note">
            {scheduledAt !== null && `${timeAt(scheduledAt, { language, timeZone })} · `}
            {t(`shared-state-${state}`)}
            {isAhead(line) &&
              going.length > 0 &&
              ` · ${t('gate-checked-in-count', { here, going: going.length })}`}
          </span>
        </span>
        <span aria-hidden="true">›</span>
      </Link>
    </li>
  );
}
