/** The running total with its parts, always in view; what it is now is said after each change. */
import { useSignal, useSignalEffect } from '@preact/signals';
import { useDerived } from '../derived.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { shownScore } from './score-parts.ts';

export function TotalLine({ model }: { readonly model: GoModel }) {
  const { words, t } = useParts();
  const shown = useDerived(
    () => shownScore(model.dayClass.sheet, model.reading.value, words),
    [model, words],
  );
  if (model.dayClass.sheet.kind === 'places') return null;
  return (
    <section class="total" aria-label={t('judge-total-line')}>
      <dl>
        {shown.parts.map(({ label, text }) => (
          <div key={label}>
            <dt>{t(label)}</dt>
            <dd>{text}</dd>
          </div>
        ))}
        <div class="sum">
          <dt>{t('judge-part-total')}</dt>
          <dd>{shown.total}</dd>
        </div>
      </dl>
      <TotalSaid model={model} />
    </section>
  );
}

/** Brief: the next horse is coming. */
function TotalSaid({ model }: { readonly model: GoModel }) {
  const { words, t } = useParts();
  const told = useSignal('');
  useSignalEffect(() => {
    if (model.kept.value === 0) return;
    const { totalSaid } = shownScore(model.dayClass.sheet, model.reading.peek(), words);
    told.value = t('judge-total-said', { total: totalSaid });
  });
  return (
    <p class="heard" role="status">
      {told}
    </p>
  );
}
