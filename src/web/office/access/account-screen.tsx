import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { Field } from '../pieces/field.tsx';
import { momentOf } from '../pieces/moments.ts';
import { Part } from '../pieces/part.tsx';
import { say } from '../pieces/said.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { SendingForm, useOnce } from '../pieces/sending-form.tsx';
import { Shown } from '../pieces/shown.tsx';
import { forgetSession, session, sessionBegan } from '../session.ts';
import { useAsked } from '../use-asked.ts';

type Sessions = Answer<'/v1/accounts/{accountId}/sessions'>;

/** One's own account: where one is signed in, another password, signing out. */
export function AccountScreen() {
  const { t } = useWords();
  const account = session.value?.account;
  if (account === undefined) return null;
  return (
    <>
      <ScreenHead title={account.name}>
        <p class="note">{t(`office-duty-${account.duty}`)}</p>
        <SignOut />
      </ScreenHead>
      <Part title={t('office-sessions')}>
        <OwnSessions accountId={account.id} />
      </Part>
      <Part title={t('office-password')}>
        <ChangePassword signIn={account.signIn} />
      </Part>
    </>
  );
}

/** Signing out works without signal too: the token is forgotten here, and the service ends the session by itself. */
function SignOut() {
  const { t } = useWords();
  const { once } = useOnce();
  const signOut = () =>
    once(async () => {
      await ask<undefined>({ method: 'DELETE', path: '/v1/sessions/current' });
      forgetSession();
      say(t('office-signed-out'));
    });
  return (
    <p class="buttons">
      <button type="button" onClick={() => void signOut()}>
        {t('office-sign-out')}
      </button>
    </p>
  );
}

function OwnSessions({ accountId }: { readonly accountId: string }) {
  const { t, language } = useWords();
  const sessions = useAsked<Sessions>(`/v1/accounts/${accountId}/sessions`);
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const end = async (id: string) => {
    const outcome = await ask<undefined>({ method: 'DELETE', path: `/v1/sessions/${id}` });
    setRefused(outcome.ok ? undefined : outcome);
    if (outcome.ok) say(t('office-session-ended-other'));
    await sessions.again();
  };
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const moment = (instant: string) => momentOf(instant, here, language);
  return (
    <Shown asked={sessions}>
      {({ items }) => (
        <>
          <ul class="lines">
            {items.map(({ id, createdAt, seenAt, endsAt, current }) => (
              <li key={id}>
                {t('office-session-line', {
                  begun: moment(createdAt),
                  seen: moment(seenAt),
                  ends: moment(endsAt),
                })}{' '}
                {current ? (
                  <strong>{t('office-session-this')}</strong>
                ) : (
                  <button type="button" class="small grave" onClick={() => void end(id)}>
                    {t('office-session-end')}
                    <span class="heard"> {moment(createdAt)}</span>
                  </button>
                )}
              </li>
            ))}
          </ul>
          <FaultNote words={refused?.words} />
        </>
      )}
    </Shown>
  );
}

function ChangePassword({ signIn }: { readonly signIn: string }) {
  const { t } = useWords();
  const [currentPassword, setCurrent] = useState('');
  const [newPassword, setNew] = useState('');
  return (
    <SendingForm<Answer<'/v1/accounts/current/passwords', 'post'>>
      action={t('office-password-change')}
      send={() =>
        ask({
          ...{ method: 'POST', path: '/v1/accounts/current/passwords' },
          body: { currentPassword, newPassword },
        })
      }
      onDone={({ token }) => {
        sessionBegan(token);
        setCurrent('');
        setNew('');
        say(t('office-password-changed'));
      }}
    >
      {(fields) => (
        <>
          <input
            class="heard"
            type="text"
            name="username"
            autocomplete="username"
            value={signIn}
            readOnly
            tabIndex={-1}
            aria-hidden="true"
          />
          <Field
            {...{ label: t('office-password-present'), value: currentPassword, onValue: setCurrent }}
            {...{ type: 'password', autocomplete: 'current-password', fault: fields.get('/currentPassword') }}
          />
          <Field
            {...{ label: t('office-set-up-new-password'), hint: t('office-set-up-password-hint') }}
            {...{ value: newPassword, onValue: setNew, type: 'password', autocomplete: 'new-password' }}
            fault={fields.get('/newPassword')}
          />
        </>
      )}
    </SendingForm>
  );
}
