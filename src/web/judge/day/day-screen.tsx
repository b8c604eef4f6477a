/** The day: today's classes of this seat, where each and its card stand; and this phone. */
import { useEffect } from 'preact/hooks';
import { ChoicesBar } from '../../shared/choices-bar.tsx';
import type { Day, DayClass } from '../desk/day-types.ts';
import type { CardState } from '../desk/desk-types.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { dayOf, signalWords } from '../state-words.ts';
import { ClassLine } from './class-line.tsx';
import { FirstHint } from './first-hint.tsx';
import { LeftBehindPart, ThisPhone } from './this-phone.tsx';

interface DayProps {
  readonly day: Day;
  readonly onLanguage: () => void;
}

export function DayScreen({ day, onLanguage }: DayProps) {
  const { t, desk, words } = useParts();
  const { show, judge, role } = day.phone;
  useEffect(() => desk.marking(null), [desk]);
  const told = { words, timeZone: show.timeZone };
  const toDo = day.classes.filter((one) => isToDo(one, desk.stateOf(one.classId).value.is));
  const others = day.classes.filter((one) => !toDo.includes(one));
  return (
    <Screen title={show.name} over={t(`judge-phone-of-${role}`, { judge: judge.name })}>
      {show.kind === 'practice' ? <p class="heed">{t('shared-practice')}</p> : null}
      <LeftBehindPart />
      <FirstHint />
      {day.classes.length === 0 ? <p class="empty">{t('judge-day-empty')}</p> : null}
      {toDo.length > 0 ? (
        <section aria-label={t('judge-day-to-do')}>
          <h2>{t('judge-day-to-do')}</h2>
          <ul class="classes">
            {toDo.map((dayClass) => (
              <ClassLine key={dayClass.classId} dayClass={dayClass} withDay />
            ))}
          </ul>
        </section>
      ) : null}
      {byDay(others, (at) => dayOf(at, told)).map(({ title, classes }) => (
        <section key={title} aria-label={title || t('judge-day-no-time')}>
          <h2>{title || t('judge-day-no-time')}</h2>
          <ul class="classes">
            {classes.map((dayClass) => (
              <ClassLine key={dayClass.classId} dayClass={dayClass} />
            ))}
          </ul>
        </section>
      ))}
      {/* That there is no signal, the notice at the head of the screen says. */}
      {desk.signal.value.is === 'no-answer' ? null : (
        <p class="note">{signalWords(desk.signal.value, told)}</p>
      )}
      <button type="button" onClick={() => desk.tryNow()}>
        {t('judge-look-again')}
      </button>
      <ThisPhone />
      <ChoicesBar onLanguage={onLanguage} />
      <p class="caution-line">{t('shared-caution')}</p>
    </Screen>
  );
}

const over: ReadonlySet<string> = new Set(['cancelled', 'combined', 'provisional', 'official', 'corrected']);

/** What waits for her comes first, whatever the program says. */
const isToDo = ({ withdrawn, state }: DayClass, card: CardState['is']): boolean =>
  !withdrawn && !over.has(state) && !card.startsWith('signed-');

/** In the order of the program; a class that has no time yet stands at the end. */
function byDay(classes: readonly DayClass[], nameOf: (instant: string) => string) {
  const days = new Map<string, DayClass[]>();
  for (const dayClass of classes) {
    const title = dayClass.scheduledAt === null ? '' : nameOf(dayClass.scheduledAt);
    days.set(title, [...(days.get(title) ?? []), dayClass]);
  }
  const all = [...days].map(([title, of]) => ({ title, classes: of }));
  return [...all.filter(({ title }) => title !== ''), ...all.filter(({ title }) => title === '')];
}
