/** Every posting of a class, the last one first: what was changed stays readable, with its reason. */
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { type BoardClass, type BoardShow, classAddress } from '../board-answer.ts';
import type { Posting } from './class-answer.ts';

interface PostingsToShow {
  readonly show: BoardShow;
  readonly of: BoardClass;
  readonly postings: readonly Posting[];
  /** Id of the one that is on the page. */
  readonly shown: string;
}

export function Postings({ show, of, postings, shown }: PostingsToShow) {
  const { t, language } = useWords();
  const { timeZone } = show;
  const last = postings.at(-1)?.id;
  return (
    <section class="postings" aria-labelledby="postings">
      <h2 id="postings">{t('board-postings')}</h2>
      <ol class="lines" reversed>
        {[...postings].reverse().map(({ id, version, state, reason, postedAt }) => (
          <li key={id}>
            <p>
              <b>{t('board-version', { version })}</b> {t(`shared-state-${state}`)},{' '}
              <time dateTime={postedAt}>{dayAndTimeAt(postedAt, { language, timeZone })}</time>
            </p>
            {reason !== null && <p>{t('board-changed-because', { reason })}</p>}
            {id === shown ? (
              <p class="note">{t('board-posting-shown')}</p>
            ) : (
              <p>
                <a href={classAddress(show.id, of) + (id === last ? '' : `?posting=${id}`)}>
                  {t('board-posting-read', { version })}
                </a>
              </p>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
