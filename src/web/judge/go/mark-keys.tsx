/** The marks of the step in hand, each one tap. */
import { useSignal } from '@preact/signals';
import { type Decimal, exact } from '../../../engine/numbers/exact.ts';
import { figure, said, signedFigure, signedSaid } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { type MarkLayout, markLayout, type Ten } from './mark-layout.ts';
import { type Step, writtenAt } from './steps.ts';
import { TypedMark } from './typed-mark.tsx';

export function MarkKeys({ model, step }: { readonly model: GoModel; readonly step: Step }) {
  const layout = markLayout(step.range);
  const written = writtenAt(model.go.value, step);
  const pick = (mark: Decimal) => void model.mark(step, mark);
  switch (layout.is) {
    case 'balance':
      return <Balance layout={layout} written={written} pick={pick} />;
    case 'rows':
      return <Rows marks={layout.marks} columns={layout.columns} written={written} pick={pick} />;
    case 'tens':
      return <Tens tens={layout.tens} written={written} pick={pick} />;
    case 'typed':
      return <TypedMark model={model} step={step} />;
  }
}

interface Keys {
  readonly written: Decimal | 'not-seen' | undefined;
  readonly pick: (mark: Decimal) => void;
}

function Balance({ layout, ...keys }: Keys & { readonly layout: MarkLayout & { is: 'balance' } }) {
  const marks = ['0', ...layout.above, ...layout.beneath];
  return (
    <KeyGroup columns={layout.above.length + 1} balance>
      {marks.map((mark) => (
        <Key key={mark} mark={mark} signed {...keys} />
      ))}
    </KeyGroup>
  );
}

function Rows({
  marks,
  columns,
  ...keys
}: Keys & { readonly marks: readonly Decimal[]; readonly columns: number }) {
  return (
    <KeyGroup columns={columns}>
      {marks.map((mark) => (
        <Key key={mark} mark={mark} {...keys} />
      ))}
    </KeyGroup>
  );
}

/** First the ten, then the mark: two taps for any of two hundred. */
function Tens({ tens, written, pick }: Keys & { readonly tens: readonly Ten[] }) {
  const { words, t } = useParts();
  const from = useSignal<Decimal | null>(null);
  const open = tens.find((ten) => ten.from === from.value);
  if (open === undefined) {
    const stands = tens.find(({ marks }) => written !== undefined && marks.includes(written));
    return (
      <KeyGroup columns={6}>
        {tens.map((ten) => (
          <button
            key={ten.from}
            type="button"
            class="mark"
            aria-pressed={ten === stands}
            aria-label={t('judge-tens', { from: said(exact(ten.from), words) })}
            onClick={() => {
              const [only] = ten.marks;
              if (ten.marks.length === 1 && only !== undefined) pick(only);
              else from.value = ten.from;
            }}
          >
            {figure(exact(ten.from), words)}
          </button>
        ))}
      </KeyGroup>
    );
  }
  const pickOf = (mark: Decimal) => {
    from.value = null;
    pick(mark);
  };
  return (
    <KeyGroup columns={7}>
      {open.marks.map((mark) => (
        <Key key={mark} mark={mark} written={written} pick={pickOf} />
      ))}
      <button type="button" class="mark back" onClick={() => (from.value = null)}>
        {t('judge-tens-back')}
      </button>
    </KeyGroup>
  );
}

interface Group {
  readonly columns: number;
  readonly balance?: boolean;
  readonly children: preact.ComponentChildren;
}

function KeyGroup({ columns, balance = false, children }: Group) {
  const { t } = useParts();
  return (
    <fieldset class={balance ? 'marks balance' : 'marks'} data-columns={columns}>
      <legend class="heard">{t('judge-marks')}</legend>
      {children}
    </fieldset>
  );
}

interface KeyProps extends Keys {
  readonly mark: Decimal;
  readonly signed?: boolean;
}

function Key({ mark, signed = false, written, pick }: KeyProps) {
  const { words } = useParts();
  const value = exact(mark);
  return (
    <button
      type="button"
      class="mark"
      data-side={mark === '0' ? 'zero' : mark.startsWith('-') ? 'beneath' : 'above'}
      aria-pressed={written === mark}
      aria-label={signed ? signedSaid(value, words) : said(value, words)}
      onClick={() => pick(mark)}
    >
      {signed ? signedFigure(value, words) : figure(value, words)}
    </button>
  );
}
