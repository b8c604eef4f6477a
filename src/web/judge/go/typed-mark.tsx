/** A mark, or a time, that has too many values for keys: it is typed, with the phone's own figures. */
import { useSignal } from '@preact/signals';
import { exact } from '../../../engine/numbers/exact.ts';
import { decimalFigure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import { isOnScale } from '../shorthand/fill-in.ts';
import type { GoModel } from './go-model.ts';
import { type Step, writtenAt } from './steps.ts';

/** "17,48" is "17.48"; "017" is "17": as records have it. */
const asDecimal = (typed: string): string =>
  typed
    .trim()
    .replace(',', '.')
    .replace(/^0+(?=\d)/, '')
    .replace(/^\./, '0.')
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');

export function TypedMark({ model, step }: { readonly model: GoModel; readonly step: Step }) {
  const { words, t } = useParts();
  const written = writtenAt(model.go.value, step);
  const stands = written === undefined || written === 'not-seen' ? '' : decimalFigure(exact(written), words);
  const typed = useSignal<string | null>(null);
  const wrong = useSignal(false);
  const { low, high } = step.range;
  const take = async () => {
    if (typed.value === null) return;
    const mark = asDecimal(typed.value);
    wrong.value = !isOnScale(mark, step.range);
    if (wrong.value) return;
    await model.mark(step, mark);
    if (model.refused.value === null) typed.value = null;
  };
  return (
    <form
      class="typed"
      onSubmit={(event) => {
        event.preventDefault();
        void take();
      }}
    >
      <label for="typed-mark">{t(`judge-typed-${step.kind}`)}</label>
      <input
        id="typed-mark"
        class="figures"
        inputMode="decimal"
        autocomplete="off"
        enterKeyHint="done"
        value={typed.value ?? stands}
        aria-invalid={wrong.value}
        aria-describedby="typed-wrong"
        onInput={({ currentTarget }) => {
          typed.value = currentTarget.value;
          wrong.value = false;
        }}
        onBlur={() => void take()}
      />
      <button type="submit" class="main">
        {t('judge-typed-take')}
      </button>
      <p id="typed-wrong" role="alert">
        {wrong.value
          ? t('judge-typed-wrong', {
              low: decimalFigure(exact(low), words),
              high: decimalFigure(exact(high), words),
            })
          : ''}
      </p>
    </form>
  );
}
