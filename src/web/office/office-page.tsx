/** The office: whoever is signed in sees her screens; above all of them stands the show in hand. */
import { useEffect } from 'preact/hooks';
import { Route, Router, Switch, useRoute } from 'wouter-preact';
import { ChoicesBar } from '../shared/choices-bar.tsx';
import { useWords } from '../shared/words.tsx';
import { Door } from './access/door.tsx';
import { SetUpScreen } from './access/set-up-screen.tsx';
import { SignInAgain } from './access/sign-in-again.tsx';
import { ShortKeys } from './keys/short-keys.tsx';
import { Masthead } from './masthead.tsx';
import { showRefused, takeInHand } from './office-state.ts';
import { paths } from './paths.ts';
import { FaultNote } from './pieces/fault-note.tsx';
import { Said } from './pieces/said.tsx';
import { ScreenHead } from './pieces/screen-head.tsx';
import { screens } from './screens.tsx';
import { session } from './session.ts';
import { speakWith } from './spoken.ts';

export function OfficePage({ onLanguage }: { readonly onLanguage: () => void }) {
  const words = useWords();
  const { t } = words;
  speakWith(words);
  return (
    <Router base="/office">
      <a class="skip" href="#content">
        {t('shared-skip')}
      </a>
      <Desk />
      <Said />
      <SignInAgain />
      <footer class="caution">
        <p>{t('shared-caution')}</p>
        <div class="buttons">
          <ChoicesBar onLanguage={onLanguage} />
          <ShortKeys />
        </div>
      </footer>
    </Router>
  );
}

function Desk() {
  const [inShow, params] = useRoute('/shows/:showId/*?');
  const [settingUp] = useRoute(paths.setUp);
  const known = session.value !== undefined;
  const showId = inShow && known ? params.showId : undefined;
  useEffect(() => (showId === undefined ? undefined : takeInHand(showId)), [showId]);
  return (
    <>
      <Masthead showId={showId} />
      <main id="content" class="desk" tabIndex={-1}>
        {settingUp ? <SetUpScreen /> : known ? <Screens inShow={showId !== undefined} /> : <Door />}
      </main>
    </>
  );
}

function Screens({ inShow }: { readonly inShow: boolean }) {
  const { t } = useWords();
  return (
    <>
      {inShow && <FaultNote words={showRefused.value?.words} />}
      <Switch>
        {screens.map(({ path, Screen }) => (
          <Route key={path} path={path}>
            {(found: Record<string, string | undefined>) => {
              const texts = textsOf(found);
              return <Screen key={Object.values(texts).join()} {...texts} />;
            }}
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

/** The named parts of the address; the numbered ones are the same again. */
const textsOf = (found: Record<string, string | undefined>): Record<string, string> =>
  Object.fromEntries(
    Object.entries(found).filter(
      (pair): pair is [string, string] => pair[1] !== undefined && !/^\d+$/.test(pair[0]),
    ),
  );
