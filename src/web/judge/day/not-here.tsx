/** Where there is no day to show: what that means, and what to do. */
import type { ComponentChildren } from 'preact';
import { ChoicesBar } from '../../shared/choices-bar.tsx';
import { problemInWords } from '../../shared/problem-words.ts';
import { useWords } from '../../shared/words.tsx';
import type { DayState, ServiceProblem } from '../desk/desk-types.ts';
import { useParts } from '../parts.tsx';
import { useArrival } from '../screen.tsx';

type NoDay = Exclude<DayState['is'], 'here' | 'revoked'> | 'no-store';

interface NotHereProps {
  readonly is: NoDay;
  readonly because: ServiceProblem | null;
  readonly onLanguage: () => void;
}

export function NotHere({ is, because, onLanguage }: NotHereProps) {
  const words = useWords();
  const { t } = words;
  const heading = useArrival(t(`judge-${is}`));
  return (
    <>
      <header class="top">
        <h1 tabIndex={-1} ref={heading}>
          {t(`judge-${is}`)}
        </h1>
      </header>
      <main class="page">
        <p>{t(`judge-${is}-what`)}</p>
        {because === null ? null : (
          <p class="fault">
            <strong>{problemInWords(because, words).what}</strong>
            {problemInWords(because, words).whatToDo}
          </p>
        )}
        <WayOn is={is} />
        <ChoicesBar onLanguage={onLanguage} />
        <p class="caution-line">{t('shared-caution')}</p>
      </main>
    </>
  );
}

function WayOn({ is }: { readonly is: NoDay }): ComponentChildren {
  const { t } = useWords();
  switch (is) {
    case 'not-paired':
      return (
        <a class="main-link" href="/pair">
          {t('judge-to-pair')}
        </a>
      );
    case 'gate-phone':
      return (
        <a class="main-link" href="/gate">
          {t('judge-to-gate')}
        </a>
      );
    case 'paired-no-day':
      return <TryNow />;
    case 'loading':
    case 'no-store':
      return null;
  }
}

function TryNow() {
  const { t, desk } = useParts();
  return (
    <button type="button" class="main" onClick={() => desk.tryNow()}>
      {t('shared-try-again')}
    </button>
  );
}
