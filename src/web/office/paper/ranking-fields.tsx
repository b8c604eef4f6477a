import { useWords } from '../../shared/words.tsx';
import { fieldId, typedField } from './move-on.ts';
import type { TypingDesk } from './typing-desk.ts';

interface RankingParts {
  readonly desk: TypingDesk;
  readonly differing: ReadonlySet<string>;
}

/** A rail class: the back number of each place, the first first. */
export function RankingFields({ desk, differing }: RankingParts) {
  const { t } = useWords();
  const { sheet, entries } = desk.card;
  const first = sheet.kind === 'places' ? Math.min(sheet.first, entries.length) : 0;
  const { ranking } = desk.typed.value;
  const { content, unread } = desk.read.value;
  const places = Array.from({ length: Math.max(first, ranking.length) }, (_, index) => index);
  const twice = numbersTwice(desk);
  return (
    <fieldset class="go ranking">
      <legend>{t('office-paper-ranking', { first })}</legend>
      <div class="go-line">
        {places.map((index) => {
          const id = fieldId('ranking', String(index + 1));
          const unknown = unread.find(({ entry, key }) => entry === undefined && key === String(index + 1));
          const isTwice = (ranking[index] ?? '').split(/[\s,;/]+/).some((number) => twice.has(number));
          const differs = (content.ranking?.[index] ?? []).some((entry) =>
            differing.has(fieldId(entry, 'ranking')),
          );
          return (
            <div key={index} class={`mark place ${differs ? 'differs' : ''}`}>
              <label for={id}>{t('office-paper-place', { place: index + 1 })}</label>
              <input
                {...{ id, [typedField]: 'place', value: ranking[index] ?? '', inputMode: 'numeric' }}
                autocomplete="off"
                aria-describedby={`${id}-read`}
                aria-invalid={unknown !== undefined || isTwice}
                onInput={({ currentTarget }) => desk.writePlace(index, currentTarget.value)}
              />
              <span id={`${id}-read`} class="read field-fault">
                {unknown !== undefined &&
                  t('office-paper-not-in-class', { numbers: unknown.pieces.join(', ') })}
                {isTwice && t('office-paper-twice')}
              </span>
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}

function numbersTwice({ typed }: TypingDesk): ReadonlySet<string> {
  const numbers = typed.value.ranking
    .flatMap((text) => text.split(/[\s,;/]+/))
    .filter((piece) => piece !== '');
  return new Set(numbers.filter((number, index) => numbers.indexOf(number) !== index));
}
