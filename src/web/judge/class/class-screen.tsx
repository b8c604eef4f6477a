/** A class: its pattern, and the order of go as a gate sheet. */
import { useEffect } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { scoreGo } from '../../../engine/sheets/score-go.ts';
import { useDerived } from '../derived.ts';
import type { DayClass } from '../desk/day-types.ts';
import { goingIn, isRail, maneuversOf, nextEntry } from '../entries.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { CardStateLine } from './card-state-line.tsx';
import { ChangesNotice } from './changes-notice.tsx';
import { GateLine } from './gate-line.tsx';
import { PatternPart } from './pattern-part.tsx';

const underWay: readonly string[] = ['called', 'under-way'];

export function ClassScreen({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk, books } = useParts();
  const { classId } = dayClass;
  useEffect(() => {
    desk.marking(classId);
    return () => desk.marking(null);
  }, [desk, classId]);
  const book = books.of(classId).value;
  useWakeLock(book.shut.value === null && underWay.includes(dayClass.state));
  const next = useNext(dayClass);
  return (
    <Screen
      title={dayClass.name}
      over={[t('judge-class-short', { number: dayClass.number }), dayClass.ring].filter(Boolean).join(' · ')}
      back={{ href: '/', label: t('judge-day') }}
      reach={<Reach dayClass={dayClass} next={next} />}
    >
      <CardStateLine dayClass={dayClass} />
      <ChangesNotice dayClass={dayClass} />
      <PatternPart dayClass={dayClass} />
      <section aria-labelledby="gate-sheet">
        <h2 id="gate-sheet">{t('judge-gate-sheet')}</h2>
        {dayClass.entries.length === 0 ? (
          <p class="empty">{t('judge-gate-empty')}</p>
        ) : (
          <ol class="gate">
            {dayClass.entries.map((entry) => (
              <GateLine
                key={entry.classEntryId}
                dayClass={dayClass}
                entry={entry}
                book={book}
                isNext={entry.classEntryId === next?.classEntryId}
              />
            ))}
          </ol>
        )}
      </section>
    </Screen>
  );
}

function useNext(dayClass: DayClass) {
  const { books } = useParts();
  const book = books.of(dayClass.classId).value;
  const id = useDerived(() => {
    const { goes } = book.content.value;
    const maneuvers = maneuversOf(dayClass);
    const isDone = (entry: string) => {
      const go = goes[entry];
      return go !== undefined && scoreGo(dayClass.sheet, maneuvers, go).ok;
    };
    return nextEntry(dayClass, ({ classEntryId }) => isDone(classEntryId))?.classEntryId;
  }, [dayClass, book]);
  return isRail(dayClass) ? undefined : dayClass.entries.find(({ classEntryId }) => classEntryId === id);
}

function Reach({
  dayClass,
  next,
}: {
  readonly dayClass: DayClass;
  readonly next: ReturnType<typeof useNext>;
}) {
  const { t, books } = useParts();
  const [, go] = useLocation();
  const to = `/classes/${dayClass.classId}`;
  const shut = books.of(dayClass.classId).value.shut.value;
  if (goingIn(dayClass).length === 0) return null;
  const main = isRail(dayClass) ? (
    <button type="button" class="main" onClick={() => go(`${to}/places`)}>
      {t('judge-to-places')}
    </button>
  ) : next === undefined || shut !== null ? null : (
    <button type="button" class="main" onClick={() => go(`${to}/goes/${next.classEntryId}`)}>
      {t('judge-next-go', { number: next.backNumber })}
    </button>
  );
  return (
    <>
      <div class="pair">
        {isRail(dayClass) ? null : (
          <button type="button" onClick={() => go(`${to}/compare`)}>
            {t('judge-to-compare')}
          </button>
        )}
        <button type="button" class={main === null ? 'main' : ''} onClick={() => go(`${to}/sign`)}>
          {t(shut === 'signed' ? 'judge-to-signed' : 'judge-to-sign')}
        </button>
      </div>
      {main}
    </>
  );
}
