/** Where there is no gate to show: what that means, and what to do. */
import { ChoicesBar } from '../../shared/choices-bar.tsx';
import { type Problem, problemInWords } from '../../shared/problem-words.ts';
import { useWords } from '../../shared/words.tsx';
import { LeftUnsent } from './left-unsent.tsx';
import { useArrival } from './screen.tsx';

interface Nobody {
  readonly is: 'no-store' | 'not-paired' | 'other-phone' | 'waiting' | 'ended';
  readonly problem?: Problem;
  readonly onLanguage: () => void;
}

export function NobodyHere({ is, problem, onLanguage }: Nobody) {
  const words = useWords();
  const { t } = words;
  const title = t(`gate-${is}`);
  const heading = useArrival(title);
  const because = problem === undefined ? undefined : problemInWords(problem, words);
  return (
    <>
      <header class="gate-head">
        <h1 tabIndex={-1} ref={heading}>
          {title}
        </h1>
      </header>
      <main class="gate-main">
        <p>{t(`gate-${is}-what`)}</p>
        {because !== undefined && (
          <p class="fault">
            <strong>{because.what}</strong> {because.whatToDo}
          </p>
        )}
        {is === 'ended' && <LeftUnsent />}
        <WaysOn is={is} />
        <ChoicesBar onLanguage={onLanguage} />
        <p class="caution-line">{t('shared-caution')}</p>
      </main>
    </>
  );
}

function WaysOn({ is }: Pick<Nobody, 'is'>) {
  const { t } = useWords();
  switch (is) {
    case 'not-paired':
    case 'ended':
      return (
        <nav class="ways-on" aria-label={t('gate-ways-on')}>
          <a class="main-link" href="/pair">
            {t('gate-to-pair')}
          </a>
          <a href="/office">{t('gate-to-office')}</a>
        </nav>
      );
    case 'other-phone':
      return (
        <nav class="ways-on" aria-label={t('gate-ways-on')}>
          <a class="main-link" href="/judge">
            {t('gate-to-judge')}
          </a>
          <a href="/pair">{t('gate-to-pair')}</a>
        </nav>
      );
    case 'waiting':
    case 'no-store':
      return null;
  }
}
