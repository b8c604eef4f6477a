/** Says late adds and scratches as they arrive, until they are put away. */
import { type Signal, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DayClass } from '../desk/day-types.ts';
import { useParts } from '../parts.tsx';
import { type ClassChange, changesBetween } from './changes.ts';

interface Watched {
  seen: DayClass;
  readonly told: Signal<readonly ClassChange[]>;
}

/** As long as the page is open, whichever screen of the class is shown. */
const watched = new Map<string, Watched>();

function watchedOf(dayClass: DayClass): Watched {
  const known = watched.get(dayClass.classId);
  if (known !== undefined) return known;
  const made = { seen: dayClass, told: signal<readonly ClassChange[]>([]) };
  watched.set(dayClass.classId, made);
  return made;
}

export function ChangesNotice({ dayClass }: { readonly dayClass: DayClass }) {
  const { t } = useParts();
  const of = watchedOf(dayClass);
  useEffect(() => {
    const changes = changesBetween(of.seen, dayClass);
    of.seen = dayClass;
    // One news by itself is read; a new draw of the whole order is one news.
    if (changes.length > 0) of.told.value = [...of.told.value, ...changes];
  }, [of, dayClass]);
  const told = of.told.value;
  const moved = told.filter(({ kind }) => kind === 'moved');
  const news = told.filter(({ kind }) => kind !== 'moved');
  return (
    <div role="status" class="changes">
      {told.length === 0 ? null : (
        <div class="heed">
          <ul>
            {news.map((change, index) => (
              <li key={index}>
                {change.kind === 'status'
                  ? t('judge-change-status', {
                      number: change.backNumber,
                      status: t(`shared-status-${change.status}`),
                    })
                  : t(`judge-change-${change.kind}`, { number: change.backNumber })}
              </li>
            ))}
            {moved.length === 0 ? null : <li>{t('judge-change-order')}</li>}
          </ul>
          <button type="button" onClick={() => (of.told.value = [])}>
            {t('judge-change-read')}
          </button>
        </div>
      )}
    </div>
  );
}
