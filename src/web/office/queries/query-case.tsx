import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { showInHand } from '../office-state.ts';
import { paths } from '../paths.ts';
import { momentOf } from '../pieces/moments.ts';
import { AnswerForm } from './answer-form.tsx';
import { EraseWords } from './erase-words.tsx';
import { isOvertaken, type Query } from './inbox.ts';
import { PostedBeside } from './posted-beside.tsx';

export interface CaseParts {
  readonly query: Query;
  readonly timeZone: string;
  /** Asks for the queries again. */
  readonly again: () => Promise<void>;
}

/** One query: what was asked on one side, what was posted on the other, and the answer below. */
export function QueryCase({ query, timeZone, again }: CaseParts) {
  const { t, language } = useWords();
  const head = `query-${query.id}`;
  const isOpen = query.state === 'open' && query.erasedAt === null;
  const asked = momentOf(query.askedAt, timeZone, language);
  return (
    <article class={`case ${isOpen ? 'waits' : ''}`} aria-labelledby={head}>
      <h3 id={head}>
        {t('office-queries-class', { number: query.class.number, name: query.class.name })}
        {query.backNumber !== null && (
          <span class="figures"> · {t('office-queries-back-number', { number: query.backNumber })}</span>
        )}
      </h3>
      <p class="note">
        {t(`office-queries-about-${query.about}`)} · {t('office-queries-asked-at', { at: asked })} ·{' '}
        {t(`office-queries-state-${query.erasedAt === null ? query.state : 'erased'}`)}
      </p>
      <div class="sides">
        <Asked query={query} />
        <PostedBeside query={query} />
      </div>
      <Answers {...{ query, timeZone }} />
      <CaseActions {...{ query, again }} />
    </article>
  );
}

function Asked({ query }: { readonly query: Query }) {
  const { t } = useWords();
  const { words, postingVersion, lastPostingVersion, reachedBy } = query;
  return (
    <section class="asked">
      <h4>{t('office-queries-asked')}</h4>
      {words === null ? (
        <p class="note">{t('office-queries-words-gone')}</p>
      ) : (
        <blockquote>{words}</blockquote>
      )}
      {postingVersion !== null && (
        <p class={isOvertaken(query) ? 'heed' : 'note'}>
          {isOvertaken(query)
            ? t('office-queries-overtaken', {
                seen: postingVersion,
                now: lastPostingVersion ?? postingVersion,
              })
            : t('office-queries-posting', { version: postingVersion })}
        </p>
      )}
      {reachedBy !== null && <p>{t('office-queries-reached-by', { how: reachedBy })}</p>}
    </section>
  );
}

function Answers({ query, timeZone }: Omit<CaseParts, 'again'>) {
  const { t, language } = useWords();
  if (query.answers.length === 0) return null;
  return (
    <section class="answers">
      <h4>{t('office-queries-answered')}</h4>
      {query.answers.map(({ id, words, outcome, answeredAt, answeredBy }) => (
        <div key={id}>
          <p>
            <strong>{t(`office-queries-outcome-${outcome}`)}</strong>{' '}
            <span class="note">
              {t('office-queries-answered-by', {
                at: momentOf(answeredAt, timeZone, language),
                name: answeredBy.name ?? t('office-queries-somebody'),
              })}
            </span>
          </p>
          {words === null ? (
            <p class="note">{t('office-queries-words-gone')}</p>
          ) : (
            <blockquote>{words}</blockquote>
          )}
        </div>
      ))}
    </section>
  );
}

/** What can still be done with it. */
function CaseActions({ query, again }: Omit<CaseParts, 'timeZone'>) {
  const { t } = useWords();
  const [adding, setAdding] = useState(false);
  const showId = showInHand.value?.id ?? '';
  if (query.erasedAt !== null || query.state === 'withdrawn') return null;
  const writes = query.state === 'open' || adding;
  return (
    <>
      {writes && <AnswerForm {...{ query, again }} onDone={() => setAdding(false)} />}
      <p class="buttons">
        {!writes && (
          <button type="button" onClick={() => setAdding(true)}>
            {t('office-queries-add')}
          </button>
        )}
        <Link href={paths.class(showId, query.class.id)}>
          {t('office-queries-to-class', { number: query.class.number })}
        </Link>
        <EraseWords {...{ query, again }} />
      </p>
    </>
  );
}
