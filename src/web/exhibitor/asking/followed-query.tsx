/** One query as whoever asked follows it: her words, where it stands, what the office says. */
import { useState } from 'preact/hooks';
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { FollowLink } from './follow-link.tsx';
import { type Query, withdrawQuery } from './send.ts';
import { SureButton } from './sure-button.tsx';
import { type Followed, useAskingHere } from './use-asking.ts';

interface ToShow {
  readonly followed: Followed;
  readonly timeZone: string;
}

export function FollowedQuery({ followed, timeZone }: ToShow) {
  const { t } = useWords();
  const { forget } = useAskingHere();
  const { query, code } = followed;
  if (query === undefined) return <p class="note">{t('exhibitor-asked-not-read')}</p>;
  if (query === 'gone') {
    return (
      <div class="acts">
        <p class="note">{t('exhibitor-asked-gone')}</p>
        <button type="button" onClick={() => forget(code)}>
          {t('exhibitor-forget')}
        </button>
      </div>
    );
  }
  return (
    <div class="query">
      <h4>{t('exhibitor-asked')}</h4>
      <Told {...{ query, timeZone }} />
      {followed.notKept && <p class="heed">{t('exhibitor-not-kept')}</p>}
      <FollowLink followed={followed} />
      <div class="acts">
        {query.state === 'open' && <Withdraw code={code} />}
        <SureButton
          {...{
            what: t('exhibitor-forget'),
            sure: t('exhibitor-forget-sure'),
            yes: t('exhibitor-forget-yes'),
          }}
          act={() => forget(code)}
        />
      </div>
    </div>
  );
}

function Told({ query, timeZone }: { readonly query: Query; readonly timeZone: string }) {
  const { t, language } = useWords();
  const at = (instant: string) => dayAndTimeAt(instant, { language, timeZone });
  const { words, about, askedAt, postingVersion, answers } = query;
  return (
    <>
      <p class="note">
        {t('exhibitor-asked-at', { time: at(askedAt), about: t(`exhibitor-about-${about}`) })}{' '}
        {postingVersion !== null && t('exhibitor-asked-version', { version: postingVersion })}
      </p>
      {words !== null && <blockquote>{words}</blockquote>}
      <div role="status">
        <p>
          <strong>{t(`exhibitor-asked-${standing(query)}`)}</strong>
        </p>
        {answers.map((answer) => (
          <div key={answer.id} class="answer">
            <p class="note">{t('exhibitor-answer-at', { time: at(answer.answeredAt) })}</p>
            <p>
              <b>{t(`exhibitor-outcome-${answer.outcome}`)}</b>
            </p>
            <p class="words">{answer.words ?? t('exhibitor-asked-erased')}</p>
          </div>
        ))}
      </div>
    </>
  );
}

/** Erased and never answered is not the family's own taking back. */
function standing({ state, withdrawnAt }: Query): 'open' | 'answered' | 'withdrawn' | 'closed' {
  if (state !== 'withdrawn') return state;
  return withdrawnAt === null ? 'closed' : 'withdrawn';
}

function Withdraw({ code }: { readonly code: string }) {
  const { t } = useWords();
  const { put } = useAskingHere();
  const [failed, setFailed] = useState(false);
  const withdraw = async () => {
    const query = await withdrawQuery(code);
    setFailed(query === undefined);
    if (query !== undefined) put(code, query);
  };
  return (
    <>
      <SureButton
        {...{
          ...{ what: t('exhibitor-withdraw'), sure: t('exhibitor-withdraw-sure') },
          yes: t('exhibitor-withdraw-yes'),
        }}
        act={() => void withdraw()}
      />
      <div role="alert">{failed && <p class="fault">{t('exhibitor-withdraw-failed')}</p>}</div>
    </>
  );
}
