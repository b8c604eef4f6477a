import { useCallback, useEffect, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { askOnce, type Refused } from '../ask.ts';
import { paths } from '../paths.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { type CurrentSession, forgetSession, session, tokenHeld } from '../session.ts';
import { SignInForm } from './sign-in-form.tsx';

/** Before anything is seen: whose session this window has, or signing in. */
export function Door() {
  const { t } = useWords();
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const [ended, setEnded] = useState(false);
  const held = tokenHeld.value;
  const look = useCallback(async () => {
    setRefused(undefined);
    const outcome = await askOnce<CurrentSession>({ path: '/v1/sessions/current' });
    if (outcome.ok) session.value = outcome.body;
    else if (outcome.code.startsWith('token_')) {
      forgetSession();
      setEnded(true);
    } else setRefused(outcome);
  }, []);
  useEffect(() => {
    if (held) void look();
  }, [held, look]);
  if (held && refused === undefined) return <p class="note">{t('office-one-moment')}</p>;
  return (
    <section class="narrow">
      <ScreenHead title={t('office-sign-in')} />
      {ended && <p class="heed">{t('office-session-ended')}</p>}
      {refused === undefined ? (
        <>
          <SignInForm />
          <p>
            <Link href={paths.setUp}>{t('office-set-up-first')}</Link>
          </p>
        </>
      ) : (
        <FaultNote words={refused.words} again={() => void look()} />
      )}
    </section>
  );
}
