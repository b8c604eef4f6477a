/** At a desk where the office is signed in: which show's gate? */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { askAsOffice } from '../../shared/office-client.ts';
import { useWords } from '../../shared/words.tsx';
import { showFrom } from '../desk/read-show.ts';
import { useDesk } from '../use-desk.ts';
import { useArrival } from './screen.tsx';

type Shows = Answer<'/v1/shows'>['items'];

export function ChooseShow() {
  const { t } = useWords();
  const desk = useDesk();
  const heading = useArrival(t('gate-choose-show'));
  const shows = useSignal<Shows | 'no-answer' | undefined>(undefined);
  const ask = async () => {
    const answer = await askAsOffice({ path: '/v1/shows?limit=200' }).catch(() => undefined);
    shows.value = answer?.ok ? ((await answer.json()) as Answer<'/v1/shows'>).items : 'no-answer';
  };
  useEffect(() => void ask(), []);
  const found = shows.value;
  return (
    <>
      <header class="gate-head">
        <h1 tabIndex={-1} ref={heading}>
          {t('gate-choose-show')}
        </h1>
      </header>
      <main class="gate-main">
        {found === 'no-answer' && (
          <div class="fault" role="alert">
            <p>{t('gate-no-signal')}</p>
            <button type="button" onClick={() => void ask()}>
              {t('shared-try-again')}
            </button>
          </div>
        )}
        {Array.isArray(found) && found.length === 0 && <p class="empty">{t('gate-no-show')}</p>}
        {Array.isArray(found) && (
          <ul class="shows">
            {found.map((show) => (
              <li key={show.id}>
                <button type="button" onClick={() => void desk.chooseShow(showFrom(show))}>
                  {show.name}, {show.place}
                </button>
              </li>
            ))}
          </ul>
        )}
      </main>
    </>
  );
}
