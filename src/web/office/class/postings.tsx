import { useWords } from '../../shared/words.tsx';
import { useShowClock } from '../use-show.ts';
import type { Posting } from './class-answers.ts';

/** What was posted, the last first: version, state, reason, and where it was heard. */
export function Postings({ postings, showId, number }: PostingsParts) {
  const { t } = useWords();
  const { moment } = useShowClock();
  const [last] = postings;
  if (last === undefined) return <p class="note">{t('office-posted-nothing')}</p>;
  return (
    <>
      <ol class="lines" reversed>
        {postings.map(({ id, version, state, reason, postedAt, ledger }) => (
          <li key={id}>
            {t('office-posted-line', { version, state: t(`office-posted-${state}`), time: moment(postedAt) })}
            {reason !== null && <> “{reason}”</>}{' '}
            <span class="note">{t('office-posted-ledger', { line: String(ledger.sequence) })}</span>
          </li>
        ))}
      </ol>
      <p>
        {t('office-posted-heard')}{' '}
        <a href={`/shows/${showId}/classes/${number}`}>{t('office-posted-look')}</a>
      </p>
    </>
  );
}

interface PostingsParts {
  /** The last first. */
  readonly postings: readonly Posting[];
  readonly showId: string;
  /** Of the class. */
  readonly number: number;
}
