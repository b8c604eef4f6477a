/** The places so far, a line each: moved up and down, taken out, set level with the one above, or dragged. */
import { useSignal } from '@preact/signals';
import { Link } from 'wouter-preact';
import { useParts } from '../parts.tsx';
import type { Placing } from './places-screen.tsx';
import { leveled, movedPlace, placeOf, putBefore, takenOut } from './ranking.ts';
import { useDrag } from './use-drag.ts';

export function PlacedLines({ placing }: { readonly placing: Placing }) {
  const { t } = useParts();
  const { ranking, change, shut, first } = placing;
  const open = useSignal<string | null>(null);
  const drag = useDrag((entry, before) => change((now) => putBefore(now, entry, before)));
  if (ranking.length === 0) return <p class="empty">{t('judge-places-empty')}</p>;
  return (
    <ol class="placed" ref={drag.list}>
      {ranking.flatMap((level, at) =>
        level.map((entry) => (
          <Line
            key={entry}
            {...{ placing, entry }}
            place={placeOf(ranking, at)}
            isShared={level.length > 1}
            isBeyond={placeOf(ranking, at) > first}
            isOpen={open.value === entry && !shut}
            isDragged={drag.dragged.value === entry}
            toggle={() => {
              open.value = open.value === entry ? null : entry;
            }}
            grip={shut ? undefined : drag.grip(entry)}
          />
        )),
      )}
    </ol>
  );
}

interface LineProps {
  readonly placing: Placing;
  readonly entry: string;
  readonly place: number;
  readonly isShared: boolean;
  readonly isBeyond: boolean;
  readonly isOpen: boolean;
  readonly isDragged: boolean;
  readonly toggle: () => void;
  readonly grip: { readonly onPointerDown: (event: PointerEvent) => void } | undefined;
}

function Line(props: LineProps) {
  const { placing, entry, place, isShared, isBeyond, isOpen, isDragged, toggle, grip } = props;
  const { t } = useParts();
  const { dayClass, change } = placing;
  const number = dayClass.entries.find(({ classEntryId }) => classEntryId === entry)?.backNumber ?? 0;
  const move = (by: -1 | 1) => change((now) => movedPlace(now, entry, by));
  const press = (event: KeyboardEvent) => {
    if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    event.preventDefault();
    move(event.key === 'ArrowUp' ? -1 : 1);
  };
  return (
    <li data-entry={entry} data-open={isOpen} data-dragged={isDragged} data-beyond={isBeyond}>
      <button
        type="button"
        class="placed-line"
        aria-expanded={isOpen}
        aria-label={t('judge-places-line', { place, number, shared: isShared ? 'yes' : 'no' })}
        onClick={toggle}
        onKeyDown={press}
      >
        <span class="place">{isShared ? `=${place}` : place}</span>
        <span class="number">{number}</span>
      </button>
      {grip === undefined ? null : (
        <span class="grip" aria-hidden="true" {...grip}>
          ≡
        </span>
      )}
      {isOpen ? (
        <div class="line-tools">
          <button type="button" onClick={() => move(-1)}>
            {t('judge-places-up')}
          </button>
          <button type="button" onClick={() => move(1)}>
            {t('judge-places-down')}
          </button>
          <button type="button" onClick={() => change((now) => leveled(now, entry))}>
            {t('judge-places-level')}
          </button>
          <button type="button" onClick={() => change((now) => takenOut(now, entry))}>
            {t('judge-places-out')}
          </button>
          <Link href={`/classes/${dayClass.classId}/goes/${entry}`}>{t('judge-places-ruling')}</Link>
        </div>
      ) : null}
    </li>
  );
}
