/** The office: whoever is signed in sees her screens; above all of them stands the show in hand. */
import { useEffect } from 'preact/hooks';
import { Link, Route, Router, Switch, useRoute } from 'wouter-preact';
import { ChoicesBar } from '../shared/choices-bar.tsx';
import { useWords } from '../shared/words.tsx';
import { Door } from './access/door.tsx';
import { SignInForm } from './access/sign-in-form.tsx';
import { showInHand, showRefused, takeInHand } from './office-state.ts';
import { paths } from './paths.ts';
import { Modal } from './pieces/confirm-dialog.tsx';
import { FaultNote } from './pieces/fault-note.tsx';
import { Said } from './pieces/said.tsx';
import { ScreenHead } from './pieces/screen-head.tsx';
import { screens } from './screens.tsx';
import { session, signInLeft, signInNeeded } from './session.ts';

export function OfficePage({ onLanguage }: { readonly onLanguage: () => void }) {
  const { t } = useWords();
  return (
    <Router base="/office">
      <a class="skip" href="#content">
        {t('shared-skip')}
      </a>
      <Masthead />
      <main id="content" class="desk">
        <Screens />
      </main>
      <Said />
      <SignInAgain />
      <footer class="caution">
        <p>{t('shared-caution')}</p>
        <ChoicesBar onLanguage={onLanguage} />
      </footer>
    </Router>
  );
}

function Masthead() {
  const { t } = useWords();
  const show = showInHand.value;
  return (
    <header class="masthead">
      <Link href={paths.shows}>{t('shared-name')}</Link>
      {show !== undefined && <Link href={paths.day(show.id)}>{show.name}</Link>}
      {show?.practice === true && <strong class="practice">{t('shared-practice')}</strong>}
    </header>
  );
}

function Screens() {
  const { t } = useWords();
  const [inShow, params] = useRoute('/shows/:showId/*?');
  const showId = inShow ? params.showId : undefined;
  const known = session.value !== undefined;
  useEffect(() => (known && showId !== undefined ? takeInHand(showId) : undefined), [known, showId]);
  if (!known) return <Door />;
  return (
    <>
      {showId !== undefined && <FaultNote words={showRefused.value?.words} />}
      <Switch>
        {screens.map(({ path, Screen }) => (
          <Route key={path} path={path}>
            {(found: Record<string, string | undefined>) => <Screen {...textsOf(found)} />}
          </Route>
        ))}
        <Route>
          <ScreenHead title={t('shared-nothing-here')} />
          <p>{t('shared-nothing-here-why')}</p>
        </Route>
      </Switch>
    </>
  );
}

const textsOf = (found: Record<string, string | undefined>): Record<string, string> =>
  Object.fromEntries(Object.entries(found).filter((pair): pair is [string, string] => pair[1] !== undefined));

/** Over whatever was being done: nothing of it is lost. */
function SignInAgain() {
  const { t } = useWords();
  return (
    <Modal title={t('office-session-ended')} open={signInNeeded.value} onClose={signInLeft}>
      <p>{t('office-session-ended-why')}</p>
      <SignInForm as={session.value?.account.signIn} />
    </Modal>
  );
}
