/** For whoever checks: by what the posting can be proved, the signed record, and the table as a file. */
import { useWords } from '../../shared/words.tsx';
import type { Result } from './class-answer.ts';

export function CheckIt({ result: { class: ofClass, posting } }: { readonly result: Result }) {
  const { t } = useWords();
  const { id, bodyHash, ledger } = posting;
  return (
    <section class="check" aria-labelledby="check">
      <h2 id="check">{t('board-check')}</h2>
      <p class="not-printed">
        <a href={`/v1/classes/${ofClass.id}/result.csv`} download>
          {t('board-csv')}
        </a>
      </p>
      <p>{t('board-check-why')}</p>
      <dl>
        <dt>{t('board-head', { sequence: ledger.sequence })}</dt>
        <dd class="figures">{ledger.hash}</dd>
        <dt>{t('board-body-hash')}</dt>
        <dd class="figures">{bodyHash}</dd>
      </dl>
      <p class="not-printed">
        <a href={`/v1/postings/${id}`}>{t('board-signed-posting')}</a>{' '}
        <a href="/.well-known/jwks.json">{t('board-keys')}</a>
      </p>
    </section>
  );
}
