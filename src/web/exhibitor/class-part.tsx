/** One class of the entry: where it stands, what it got, why, the marks, what was said before, and the way to ask. */
import { dayAndTimeAt } from '../shared/show-times.ts';
import { useWords } from '../shared/words.tsx';
import { AskPart } from './asking/ask-part.tsx';
import { Got } from './got.tsx';
import { HistoryPart, LastChange } from './history-part.tsx';
import { MarksPart } from './marks-part.tsx';
import type { ClassOfNumber, OfNumber } from './number-answer.ts';
import { PatternPart } from './pattern-part.tsx';
import { isGoing } from './place-words.tsx';

export interface PartToShow {
  readonly line: ClassOfNumber;
  readonly show: OfNumber['show'];
  readonly backNumber: number;
}

export function ClassPart({ line, show, backNumber }: PartToShow) {
  const { t } = useWords();
  const { number, posted, pattern } = line;
  const id = `class-${number}`;
  return (
    <article class="pinned part" id={id} aria-labelledby={`${id}-name`} tabIndex={-1}>
      <Head {...{ line, show, id }} />
      {posted === null ? <NotPosted line={line} /> : <PostedPart {...{ line, show, posted }} />}
      {pattern !== null && <PatternPart {...{ pattern, id }} />}
      {posted !== null && posted.history.length > 1 && (
        <HistoryPart {...{ history: posted.history, show, id }} />
      )}
      <p class="not-printed">
        <a class="way" href={`/shows/${show.id}/classes/${number}`}>
          {t('exhibitor-class-page', { number: String(number) })}
        </a>
      </p>
      <AskPart {...{ line, show, backNumber }} />
    </article>
  );
}

interface HeadToShow extends Omit<PartToShow, 'backNumber'> {
  readonly id: string;
}

function Head({ line, show, id }: HeadToShow) {
  const { t, language } = useWords();
  const { number, name, division, ring, scheduledAt, state, status, goPosition, posting } = line;
  const { timeZone } = show;
  const where = [division, ring, scheduledAt && dayAndTimeAt(scheduledAt, { language, timeZone })];
  return (
    <header>
      <h2 id={`${id}-name`}>
        <span class="figures" aria-hidden="true">
          {number}
        </span>{' '}
        <span class="heard">{t('exhibitor-class-number', { number: String(number) })} </span>
        {name}
      </h2>
      <p class="note">{where.filter(Boolean).join(' · ')}</p>
      <p class="where-it-stands">
        {t(`shared-state-${state}`)}
        {!isGoing(status) && <strong> · {t(`shared-status-${status}`)}</strong>}
        {posting === null && isGoing(status) && (
          <>
            {' '}
            · {goPosition === null ? t('exhibitor-not-drawn') : t('exhibitor-goes', { position: goPosition })}
          </>
        )}
        {posting !== null && (
          <>
            {' '}
            ·{' '}
            <time dateTime={posting.postedAt}>
              {t('exhibitor-posted-at', { time: dayAndTimeAt(posting.postedAt, { language, timeZone }) })}
            </time>
          </>
        )}
      </p>
    </header>
  );
}

function NotPosted({ line: { posting, state } }: { readonly line: ClassOfNumber }) {
  const { t } = useWords();
  if (posting !== null) return <p class="note">{t('exhibitor-not-in-posting')}</p>;
  if (state === 'cancelled' || state === 'combined') return null;
  return <p class="note">{t('exhibitor-nothing-posted')}</p>;
}

interface PostedToShow extends Omit<PartToShow, 'backNumber'> {
  readonly posted: NonNullable<ClassOfNumber['posted']>;
}

function PostedPart({ line, show, posted }: PostedToShow) {
  const { t } = useWords();
  const { results, rule, history } = posted;
  return (
    <>
      <LastChange {...{ history, show }} />
      {results.map((result) => (
        <Got key={result.judge?.seatId ?? ''} {...{ result, alone: results.length === 1 }} />
      ))}
      <details class="rule">
        <summary>{t('exhibitor-rule')}</summary>
        <ul>
          {rule.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
      <MarksPart {...{ posted, publishCards: line.publishCards, id: `class-${line.number}` }} />
    </>
  );
}
