import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { say } from '../pieces/said.tsx';
import { useMayWrite, useShowClock } from '../use-show.ts';
import type { ResultBody } from './changes.ts';
import type { Preview, Ruling, RulingKind } from './class-answers.ts';
import { RulingForm } from './ruling-form.tsx';

const kindsAnew: readonly RulingKind[] = ['run-off', 're-work', 'judge', 'coin', 'share'];

interface RulingsParts {
  readonly classId: string;
  readonly preview: Preview;
  readonly rulings: readonly Ruling[];
  readonly again: () => Promise<void>;
}

/** How ties of the class were decided. A ruling stands for ever; a later one on the same entries goes before it. */
export function Rulings({ classId, preview, rulings, again }: RulingsParts) {
  const numbers = new Map((preview.body as ResultBody).entries.map(({ id, backNumber }) => [id, backNumber]));
  return (
    <ol class="lines">
      {rulings.map((ruling) => (
        <OneRuling key={ruling.id} {...{ classId, ruling, numbers, again }} />
      ))}
    </ol>
  );
}

interface OneRulingParts {
  readonly classId: string;
  readonly ruling: Ruling;
  readonly numbers: ReadonlyMap<string, number>;
  readonly again: () => Promise<void>;
}

function OneRuling({ classId, ruling, numbers, again }: OneRulingParts) {
  const { t } = useWords();
  const { time } = useShowClock();
  const mayWrite = useMayWrite();
  const [anew, decideAnew] = useState(false);
  const { kind, order, decidedBy, why, ruledAt } = ruling;
  const numberOf = (id: string) => numbers.get(id) ?? 0;
  return (
    <li>
      <p>
        <strong>{t(`office-ruling-${kind}`)}</strong>:{' '}
        <span class="figures">{order.map((group) => group.map(numberOf).join(' = ')).join(', ')}</span>.{' '}
        {t('office-ruling-told', { by: decidedBy, time: time(ruledAt) })} “{why}”
      </p>
      {mayWrite && !anew && (
        <button type="button" class="small" onClick={() => decideAnew(true)}>
          {t('office-ruling-anew')}
        </button>
      )}
      {anew && (
        <RulingForm
          {...{ classId, kinds: kindsAnew, onLeave: () => decideAnew(false) }}
          entries={order.flat().map((id) => ({ id, backNumber: numberOf(id) }))}
          onRuled={() => {
            decideAnew(false);
            say(t('office-ruled'));
            void again();
          }}
        />
      )}
    </li>
  );
}
