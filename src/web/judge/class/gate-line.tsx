/** One line of the gate sheet: the number, and where its go stands. */
import { Link } from 'wouter-preact';
import type { CardBook } from '../book/book.ts';
import { useDerived } from '../derived.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { isGoing } from '../entries.ts';
import { memo } from '../memo.ts';
import { useParts } from '../parts.tsx';
import { goSummary } from './go-summary.ts';

interface LineProps {
  readonly dayClass: DayClass;
  readonly entry: DayEntry;
  readonly book: CardBook;
  readonly isNext: boolean;
}

export const GateLine = memo(({ dayClass, entry, book, isNext }: LineProps) => {
  const parts = useParts();
  const { t } = parts;
  const { classEntryId, backNumber, goPosition, status } = entry;
  const told = useDerived(
    () => goSummary(dayClass, book.goOf(classEntryId).value.content, parts),
    [dayClass, book, classEntryId, parts.words, parts.speech],
  );
  const going = isGoing(entry);
  if (!going) {
    return (
      <li class="gate-line" data-going="no">
        <span class="place">{goPosition ?? ''}</span>
        <span class="number">{backNumber}</span>
        <span class="stands">{t(`shared-status-${status}`)}</span>
      </li>
    );
  }
  const { words, figure, is } = told;
  return (
    <li class="gate-line" data-is={is} data-next={isNext}>
      <Link href={`/classes/${dayClass.classId}/goes/${classEntryId}`}>
        <span class="place">{goPosition ?? ''}</span>
        <span class="number">{backNumber}</span>
        <span class="stands">
          {isNext && is === 'blank' ? t('judge-gate-next') : words}
          {status === 'checked-in' && is === 'blank' && !isNext ? ` ${t('shared-status-checked-in')}` : ''}
        </span>
        <span class="figure">{figure}</span>
      </Link>
    </li>
  );
});
