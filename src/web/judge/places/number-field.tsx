/** For a keyboard: a back number and Enter give it the next place. */
import { useSignal } from '@preact/signals';
import { goingIn } from '../entries.ts';
import { useParts } from '../parts.tsx';
import type { Placing } from './places-screen.tsx';
import { isRanked, placedNext } from './ranking.ts';

export function NumberField({ placing }: { readonly placing: Placing }) {
  const { t } = useParts();
  const typed = useSignal('');
  const told = useSignal('');
  const { dayClass, ranking, change } = placing;
  const place = () => {
    const number = typed.value.trim();
    const entry = goingIn(dayClass).find(({ backNumber }) => String(backNumber) === number);
    if (entry === undefined) told.value = t('judge-places-unknown', { number });
    else if (isRanked(ranking, entry.classEntryId)) told.value = t('judge-places-twice', { number });
    else {
      change((now) => placedNext(now, entry.classEntryId));
      typed.value = '';
      told.value = '';
    }
  };
  return (
    <form
      class="number-field"
      onSubmit={(event) => {
        event.preventDefault();
        place();
      }}
    >
      <label>
        <span>{t('judge-places-type')}</span>
        <input
          class="figures"
          inputMode="numeric"
          autocomplete="off"
          enterKeyHint="next"
          value={typed.value}
          onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
        />
      </label>
      <button type="submit">{t('judge-places-place')}</button>
      <p role="alert">{told}</p>
    </form>
  );
}
