import { useWords } from '../../shared/words.tsx';
import { fieldId, typedField } from './move-on.ts';
import { goKeys } from './sheet-fields.ts';
import type { TypingDesk } from './typing-desk.ts';

/** Ties on this card, once every go stands: whom the judge placed before whom, as the paper says. */
export function TieFields({ desk }: { readonly desk: TypingDesk }) {
  const { t } = useWords();
  const { ties } = desk.read.value;
  if (ties.length === 0) return null;
  const numberOf = (id: string) => desk.card.entries.find((entry) => entry.id === id)?.backNumber ?? 0;
  return (
    <section class="ties" aria-label={t('office-paper-ties')}>
      <h2>{t('office-paper-ties')}</h2>
      <p class="note">{t('office-paper-ties-what')}</p>
      {ties.map((tie) => (
        <fieldset key={tie.join()} class="go">
          <legend class="figures">{tie.map(numberOf).join(', ')}</legend>
          <div class="go-line">
            {tie.map((entry) => {
              const id = fieldId(entry, goKeys.tiePlace);
              return (
                <div key={entry} class="mark">
                  <label for={id}>{t('office-paper-tie-place', { number: numberOf(entry) })}</label>
                  <input
                    {...{ id, [typedField]: goKeys.tiePlace, inputMode: 'numeric', autocomplete: 'off' }}
                    value={desk.goOf(entry).value[goKeys.tiePlace] ?? ''}
                    onInput={({ currentTarget }) => desk.write(entry, goKeys.tiePlace, currentTarget.value)}
                  />
                </div>
              );
            })}
          </div>
        </fieldset>
      ))}
    </section>
  );
}
