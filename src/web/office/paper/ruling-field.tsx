import type { Speech } from '../../../engine/sentences/speech.ts';
import { useWords } from '../../shared/words.tsx';
import { typedField } from './move-on.ts';
import { goKeys, type MarkedSheet, rulingsOf } from './sheet-fields.ts';

interface RulingParts {
  readonly card: MarkedSheet;
  readonly text: string;
  readonly write: (key: string, text: string) => void;
  readonly id: string;
  readonly differs: boolean;
  readonly backNumber: number;
  readonly speech: Speech | undefined;
}

/** What the judge ruled about the go; most have nothing here. */
export function RulingField({ card, text, write, id, differs, backNumber, speech }: RulingParts) {
  const { t } = useWords();
  return (
    <div class={`mark ruling ${differs ? 'differs' : ''}`}>
      <label for={id}>{t('office-paper-field-ruling')}</label>
      <select
        {...{ id, [typedField]: goKeys.ruling, value: text }}
        aria-label={t('office-paper-field-of', { label: t('office-paper-field-ruling'), number: backNumber })}
        onChange={({ currentTarget }) => write(goKeys.ruling, currentTarget.value)}
      >
        <option value="">{t('office-paper-no-ruling')}</option>
        {rulingsOf(card.sheet).map((code) => (
          <option key={code} value={code}>
            {speech?.find(`ruling-${code}`) ?? code}
          </option>
        ))}
      </select>
      {differs && <span class="heard"> {t('office-paper-differs-here')}</span>}
    </div>
  );
}
