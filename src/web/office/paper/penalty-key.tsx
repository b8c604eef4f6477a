import type { ScoreSheet } from '../../../engine/sheets/types.ts';
import { useWords } from '../../shared/words.tsx';
import { useSpeech } from './card-speech.ts';
import { labelOf } from './labels.ts';
import { figureText } from './mark-words.ts';
import { penaltiesOf } from './sheet-fields.ts';

/** What the numbers behind `*` mean: the penalties of the sheet, counted through. */
export function PenaltyKey({ sheet }: { readonly sheet: ScoreSheet }) {
  const { t, language } = useWords();
  const speech = useSpeech();
  const penalties = penaltiesOf(sheet);
  return (
    <details class="typing-key" open={true}>
      <summary>{t('office-paper-key')}</summary>
      <ul class="keys">
        <li>{t('office-paper-key-enter')}</li>
        {sheet.kind !== 'places' && <li>{t('office-paper-key-mark')}</li>}
        {(sheet.kind === 'pattern' || sheet.kind === 'percentage') && (
          <li>{t('office-paper-key-not-seen')}</li>
        )}
        {penalties.length > 0 && <li>{t('office-paper-key-penalty')}</li>}
      </ul>
      {penalties.length > 0 && (
        <ol class="penalties">
          {penalties.map((penalty) => (
            <li key={penalty.code}>
              {labelOf(penalty.label, speech)}{' '}
              <span class="figures">
                {t(sheet.kind === 'measured' ? 'office-paper-seconds' : 'office-paper-takes', {
                  points: figureText(penalty.points, language),
                })}
              </span>
            </li>
          ))}
        </ol>
      )}
    </details>
  );
}
