import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { useSpeech } from './card-speech.ts';
import {
  type Difference,
  fieldWords,
  idOfDifference,
  keyOfDifference,
  valueWords,
} from './difference-words.ts';
import { goToField } from './move-on.ts';
import type { MarkedSheet } from './sheet-fields.ts';

interface DifferenceParts {
  readonly differences: readonly Difference[];
  readonly card: MarkedSheet;
}

/** Field by field what each of the two read. Neither is right by that: the paper is looked at again. */
export function DifferenceTable({ differences, card }: DifferenceParts) {
  const words = useWords();
  const { t } = words;
  const teller = { ...words, card, speech: useSpeech() };
  const caption = t('office-paper-differences', { count: differences.length });
  return (
    <RuledTable caption={caption} captionSeen={true} class="differences">
      <thead>
        <tr>
          <th scope="col">{t('office-paper-number')}</th>
          <th scope="col">{t('office-paper-where')}</th>
          <th scope="col">{t('office-paper-mine')}</th>
          <th scope="col">{t('office-paper-other')}</th>
        </tr>
      </thead>
      <tbody>
        {differences.map((difference) => (
          <tr key={`${idOfDifference(difference)} ${difference.part} ${difference.code}`}>
            <th scope="row" class="figures">
              {difference.backNumber}
            </th>
            <td>
              <button
                type="button"
                class="plain"
                onClick={() => goToField(difference.classEntryId, keyOfDifference(difference))}
              >
                {fieldWords(difference, teller)}
              </button>
            </td>
            <td class="figures">{valueWords(difference, difference.mine, teller)}</td>
            <td class="figures">{valueWords(difference, difference.other, teller)}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
