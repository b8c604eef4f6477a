/** A rail class: numbers are tapped in the order of their places. Dragging a line is an extra; taps and keys do it all. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { scoreGo } from '../../../engine/sheets/score-go.ts';
import { CardStateLine } from '../class/card-state-line.tsx';
import { ChangesNotice } from '../class/changes-notice.tsx';
import { useDerived } from '../derived.ts';
import type { DayClass } from '../desk/day-types.ts';
import { goingIn } from '../entries.ts';
import { outcomeWords } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { NumberField } from './number-field.tsx';
import { PlacedLines } from './placed-lines.tsx';
import { isRanked, placedNext, type Ranking } from './ranking.ts';

export interface Placing {
  readonly dayClass: DayClass;
  readonly ranking: Ranking;
  /** How many places the sheet gives. */
  readonly first: number;
  readonly shut: boolean;
  readonly change: (change: (ranking: Ranking) => Ranking) => void;
}

export function PlacesScreen({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk, books, words, speech } = useParts();
  const [, go] = useLocation();
  const { classId, sheet } = dayClass;
  const book = books.of(classId).value;
  const refused = useSignal('');
  const ranking = useDerived(() => book.order.value.content.ranking ?? [], [book]);
  useEffect(() => {
    desk.marking(classId);
    return () => desk.marking(null);
  }, [desk, classId]);
  const shut = book.shut.value !== null;
  useWakeLock(!shut);
  const told = (outcome: Awaited<ReturnType<typeof book.writeOrder>>) => {
    refused.value = outcome.ok ? '' : outcomeWords(outcome, { words, speech, dayClass });
  };
  const change = (changed: (before: Ranking) => Ranking) =>
    void book.writeOrder((kept) => ({ ...kept, ranking: changed(kept.ranking ?? []) })).then(told);
  const placing: Placing = {
    ...{ dayClass, ranking, shut, change },
    first: sheet.kind === 'places' ? sheet.first : 0,
  };
  return (
    <Screen
      title={t('judge-places')}
      over={`${dayClass.number} ${dayClass.name}`}
      back={{ href: `/classes/${classId}`, label: t('judge-gate-sheet') }}
      reach={
        <>
          {shut ? null : <Numbers placing={placing} />}
          <div class="pair">
            <button
              type="button"
              disabled={book.order.value.undoable === 0 || shut}
              onClick={() => void book.undoOrder().then(told)}
            >
              {t('judge-undo')}
            </button>
            <button type="button" onClick={() => go(`/classes/${classId}/sign`)}>
              {t(book.shut.value === 'signed' ? 'judge-to-signed' : 'judge-to-sign')}
            </button>
          </div>
        </>
      }
    >
      <CardStateLine dayClass={dayClass} />
      <ChangesNotice dayClass={dayClass} />
      <p class="note">{t('judge-places-how', { first: placing.first })}</p>
      <div role="alert">{refused.value === '' ? null : <p class="fault">{refused.value}</p>}</div>
      <PlacedLines placing={placing} />
      {shut ? null : <NumberField placing={placing} />}
    </Screen>
  );
}

/** Who may still be placed; what she ruled out is not among them. */
function Numbers({ placing }: { readonly placing: Placing }) {
  const { t, books } = useParts();
  const { dayClass, ranking, change } = placing;
  const book = books.of(dayClass.classId).value;
  const left = goingIn(dayClass)
    .filter(({ classEntryId }) => !isRanked(ranking, classEntryId))
    .filter(({ classEntryId }) => {
      const scored = scoreGo(dayClass.sheet, [], book.goOf(classEntryId).value.content);
      return !scored.ok || scored.score.tier !== 'not-placed';
    })
    .sort((a, b) => a.backNumber - b.backNumber);
  if (left.length === 0) return null;
  return (
    <fieldset class="rail-numbers">
      <legend class="heard">{t('judge-places-left')}</legend>
      {left.map(({ classEntryId, backNumber }) => (
        <button
          key={classEntryId}
          type="button"
          class="mark"
          onClick={() => change((now) => placedNext(now, classEntryId))}
        >
          {backNumber}
        </button>
      ))}
    </fieldset>
  );
}
