/** The page `/pair`: a phone makes its key, is paired by a code of the show office, and says whose it is now. */
import { useCallback, useEffect, useState } from 'preact/hooks';
import { ChoicesBar } from '../shared/choices-bar.tsx';
import { keyInTheWay } from '../shared/kept-key.ts';
import { useWords } from '../shared/words.tsx';
import { codeInLink } from './code.ts';
import { CodeScreen } from './code-screen.tsx';
import { Fault, inWords } from './fault.tsx';
import { type Found, letGo, pairWith, whoIsThis } from './pairing.ts';
import { PhoneScreen } from './phone-screen.tsx';
import { Screen } from './screen.tsx';

type Doing = 'pair-asking' | 'pair-pairing';

export function PairPage({ onLanguage }: { readonly onLanguage: () => void }) {
  const { t } = useWords();
  return (
    <>
      <header class="masthead">{t('shared-name')}</header>
      <main class="sheet">
        <Pairing />
      </main>
      <footer class="caution">
        {t('shared-caution')}
        <ChoicesBar onLanguage={onLanguage} />
      </footer>
    </>
  );
}

function Pairing() {
  const { t } = useWords();
  const [found, setFound] = useState<Found>();
  const [doing, setDoing] = useState<Doing>();
  const [code, setCode] = useState('');
  /** Nothing is sent twice by a second tap. */
  const ask = useCallback(async (what: Doing, asking: () => Promise<Found>) => {
    setDoing(what);
    try {
      setFound(await asking());
    } finally {
      setDoing(undefined);
    }
  }, []);
  const pairing = async (typed: string) => {
    const next = await pairWith(typed);
    // The code of the link is used: it is not another one.
    if (next.is === 'paired') setCode('');
    return next;
  };
  useEffect(() => {
    const open = () => {
      setCode(takeCodeFromLink());
      if (keyInTheWay() === undefined) void ask('pair-asking', whoIsThis);
    };
    open();
    // A second link that is opened in the same window changes only what stands after the #.
    window.addEventListener('hashchange', open);
    return () => window.removeEventListener('hashchange', open);
  }, [ask]);
  return (
    <>
      <Shown
        {...{ found, code, busy: doing !== undefined }}
        onPair={(typed) => void ask('pair-pairing', () => pairing(typed))}
        onLookAgain={() => void ask('pair-asking', whoIsThis)}
        onLetGo={() => {
          setCode('');
          void ask('pair-asking', letGo);
        }}
      />
      <p role="status" class="note">
        {doing === undefined ? '' : t(doing)}
      </p>
    </>
  );
}

/** The code of the link that was opened; it does not stay in the address or the history. */
function takeCodeFromLink(): string {
  const code = codeInLink(location.hash);
  if (code !== '') history.replaceState(null, '', location.pathname);
  return code;
}

interface ShownProps {
  readonly found: Found | undefined;
  readonly code: string;
  readonly busy: boolean;
  readonly onPair: (code: string) => void;
  readonly onLookAgain: () => void;
  readonly onLetGo: () => void;
}

function Shown({ found, code, ...doing }: ShownProps) {
  const words = useWords();
  const { t } = words;
  const noKey = keyInTheWay();
  if (noKey !== undefined) {
    const { what, whatToDo } = inWords({ code: noKey, title: noKey, whatToDo: '' }, words);
    return (
      <Screen name="no-key" title={t('pair-no-key-title')}>
        <p class="fault">{what}</p>
        <p>{whatToDo}</p>
      </Screen>
    );
  }
  switch (found?.is) {
    case undefined:
      return (
        <Screen name="opening" title={t('pair-title')}>
          <p>{t('pair-opening')}</p>
        </Screen>
      );
    case 'paired':
      return <PhoneScreen phone={found.phone} anotherCode={code !== ''} {...doing} />;
    case 'not-paired':
      return <CodeScreen given={code} because={found.because} {...doing} />;
    case 'unknown':
      return (
        <Screen name="no-answer" title={t('pair-no-answer-title')}>
          <Fault because={found.because} />
          <div class="reach">
            <button class="main" type="button" disabled={doing.busy} onClick={doing.onLookAgain}>
              {t('shared-try-again')}
            </button>
          </div>
        </Screen>
      );
  }
}
