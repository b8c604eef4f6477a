import { useWords } from '../../shared/words.tsx';
import { figureText } from './mark-words.ts';
import { fieldId, typedField } from './move-on.ts';
import type { TypedTotal } from './running-total.ts';
import { goKeys } from './sheet-fields.ts';
import type { TypedEntry } from './typed-card.ts';

interface TotalParts {
  readonly total: TypedTotal;
  /** The total as the judge wrote it, if it was typed. */
  readonly text: string;
  readonly write: (key: string, text: string) => void;
  readonly entry: TypedEntry;
}

/** The judge's own total, to hold against what the marks come to. It is compared here and not sent. */
export function TotalLine({ total, text, write, entry }: TotalParts) {
  const { t, language } = useWords();
  const id = fieldId(entry.id, goKeys.paperTotal);
  const figure = total.total === undefined ? '–' : figureText(total.total, language);
  return (
    <>
      <div class="mark paper-total">
        <label for={id}>{t('office-paper-field-paper-total')}</label>
        <input
          {...{ id, [typedField]: goKeys.paperTotal, value: text }}
          aria-label={t('office-paper-field-of', {
            label: t('office-paper-field-paper-total'),
            number: entry.backNumber,
          })}
          aria-describedby={`${id}-read`}
          autocomplete="off"
          maxLength={20}
          onInput={({ currentTarget }) => write(goKeys.paperTotal, currentTarget.value)}
        />
        <span id={`${id}-read`} class={total.paper === 'differs' ? 'read field-fault' : 'read'}>
          {total.paper === 'same' && t('office-paper-total-same')}
          {total.paper === 'differs' && t('office-paper-total-differs', { total: figure })}
        </span>
      </div>
      <p class={`total ${total.whole ? '' : 'unfinished'}`}>
        <span class="note">{t(total.whole ? 'office-paper-total' : 'office-paper-total-so-far')}</span>
        <output class="figures">{figure}</output>
        {total.placed !== 'kept-pattern' && <span class="note">{t(`office-paper-${total.placed}`)}</span>}
      </p>
    </>
  );
}
