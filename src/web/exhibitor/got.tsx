/** Place and total in large figures, and under them the sentences why. */
import { scoreText } from '../board/class/score-text.ts';
import { useWords } from '../shared/words.tsx';
import type { EntryResult } from './number-answer.ts';

interface ToShow {
  readonly result: EntryResult;
  /** No other judge placed the class for herself. */
  readonly alone: boolean;
}

export function Got({ result, alone }: ToShow) {
  const { t, language } = useWords();
  const { judge, place, of, tied, total, because } = result;
  return (
    <section class="got">
      {judge !== null && !alone && <h3>{t('exhibitor-by-judge', { judge: judge.name })}</h3>}
      <dl class="got-figures">
        <div>
          <dt>{t('exhibitor-place')}</dt>
          <dd>
            {place === null ? (
              t('exhibitor-without-place')
            ) : (
              <>
                <b class="figures">{place}</b> {t('exhibitor-of', { of })}
                {tied && <span class="tied"> {t('exhibitor-tied')}</span>}
              </>
            )}
          </dd>
        </div>
        {total !== null && (
          <div>
            <dt>{t('exhibitor-total')}</dt>
            <dd>
              <b class="figures">{scoreText(total, { language })}</b>
            </dd>
          </div>
        )}
      </dl>
      <div class="why">
        <h3>{t('exhibitor-why')}</h3>
        {because.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  );
}
