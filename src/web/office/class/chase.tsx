import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { paths } from '../paths.ts';
import { CopyText } from '../pieces/copy-text.tsx';
import { useShowClock } from '../use-show.ts';
import { calledAt, noteCalled, strikeCalled } from './called-judges.ts';
import type { ShowClass } from './class-answers.ts';
import type { JudgeLine } from './judge-lines.ts';

interface ChaseParts {
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly line: JudgeLine;
}

/** Where she is to be found and what to say to her; and a pencil mark that it was said. */
export function Chase({ ofClass, ring, line }: ChaseParts) {
  const { t } = useWords();
  const { time } = useShowClock();
  const { seat, stand, judgePhones } = line;
  const called = calledAt(seat.id);
  return (
    <div class="chase">
      <p>
        {t('office-chase-where', { judge: seat.name, ring: ring ?? t('office-no-ring') })}{' '}
        {t(judgePhones.length > 0 ? 'office-chase-has-phone' : 'office-chase-no-phone')}
      </p>
      <CopyText label={t('office-chase-say')} text={whatToSay(ofClass, line, t)} />
      <p class="buttons">
        {called === undefined ? (
          <button type="button" onClick={() => noteCalled(seat.id)}>
            {t('office-chase-note')}
          </button>
        ) : (
          <>
            <span>{t('office-chase-noted', { time: time(called) })}</span>
            <button type="button" onClick={() => strikeCalled(seat.id)}>
              {t('office-chase-strike')}
            </button>
          </>
        )}
        {stand.is !== 'on-paper' && (
          <Link href={paths.classPaper(ofClass.showId, ofClass.id)}>{t('office-card-came-on-paper')}</Link>
        )}
      </p>
    </div>
  );
}

function whatToSay(
  { number, name }: ShowClass,
  { stand }: JudgeLine,
  t: ReturnType<typeof useWords>['t'],
): string {
  const ofClass = { number: String(number), name };
  switch (stand.is) {
    case 'under-way':
      return stand.written < stand.expected
        ? t('office-say-under-way', { ...ofClass, written: stand.written, expected: stand.expected })
        : t('office-say-sign', ofClass);
    case 'to-be-amended':
      return t('office-say-amend', { ...ofClass, count: stand.entriesToAdd });
    case 'on-paper':
      return t('office-say-on-paper', ofClass);
    case 'waiting':
    case 'signed':
    case 'withdrawn':
      return t('office-say-waiting', ofClass);
  }
}
