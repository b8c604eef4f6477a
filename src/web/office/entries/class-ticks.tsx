import { useWords } from '../../shared/words.tsx';

interface TickedClass {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly state: string;
}

interface TickParts {
  readonly classes: readonly TickedClass[];
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: readonly string[]) => void;
}

/** Classes that still take an entry. */
export function ClassTicks({ classes, chosen, onChosen }: TickParts) {
  const { t } = useWords();
  return (
    <fieldset class="ticks">
      <legend>{t('office-entries-classes')}</legend>
      {classes.length === 0 && <p class="note">{t('office-entries-no-open-class')}</p>}
      {classes.map(({ id, number, name, state }) => (
        <label key={id} class="tick">
          <input
            type="checkbox"
            checked={chosen.includes(id)}
            onChange={({ currentTarget }) =>
              onChosen(currentTarget.checked ? [...chosen, id] : chosen.filter((one) => one !== id))
            }
          />
          <span>
            {t('office-entries-class', { number, name })}{' '}
            <span class="note">{t(`shared-state-${state}`)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
