/** A line of shorthand. What it does not understand it says, and changes nothing then. */
import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { exact } from '../../../engine/numbers/exact.ts';
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import { figure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import { type Designator, designatorText } from '../shorthand/designators.ts';
import { fillIn, type LineFault } from '../shorthand/fill-in.ts';
import { readShorthand } from '../shorthand/read.ts';
import type { GoModel } from './go-model.ts';
import { penaltiesOf } from './penalty-keys.tsx';

interface LineProps {
  readonly model: GoModel;
  /** What stands in it; a key that was pressed elsewhere begins it. */
  readonly line: Signal<string>;
  readonly open: Signal<boolean>;
}

export function ShorthandLine({ model, line, open }: LineProps) {
  const { t, lexicon, speech, words } = useParts();
  const field = useRef<HTMLInputElement>(null);
  const faults = useSignal<readonly LineFault[]>([]);
  const notUnderstood = useSignal<readonly string[]>([]);
  const takeUp = () => {
    const place = field.current;
    if (place === null || document.activeElement === place) return;
    place.focus();
    place.setSelectionRange(place.value.length, place.value.length);
  };
  useEffect(() => {
    if (open.value) takeUp();
  }, [open.value]);
  // A key that was pressed elsewhere begins the line, and the next one is typed into it.
  useEffect(() => {
    if (line.value !== '') takeUp();
  }, [line.value !== '']);
  const clear = () => {
    faults.value = [];
    notUnderstood.value = [];
  };
  const take = async () => {
    clear();
    const read = readShorthand(line.value, lexicon);
    notUnderstood.value = read.notUnderstood;
    if (read.notUnderstood.length > 0) return;
    const filled = fillIn(read.items, {
      steps: model.steps,
      penalties: penaltiesOf(model.dayClass.sheet),
      inHand: model.inHand.value,
      called: ({ label }) => labelWords(label, speech),
    });
    if (!filled.ok) {
      faults.value = filled.faults;
      return;
    }
    if (!(await model.fill(filled.change, filled.last))) return;
    line.value = '';
    field.current?.blur();
  };
  return (
    <form
      class="shorthand"
      data-open={open.value}
      onSubmit={(event) => {
        event.preventDefault();
        void take();
      }}
    >
      <label for="shorthand">{t('judge-shorthand')}</label>
      <input
        ref={field}
        id="shorthand"
        class="figures"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        enterKeyHint="go"
        placeholder={t('judge-shorthand-example')}
        aria-describedby="shorthand-told"
        value={line.value}
        onInput={({ currentTarget }) => {
          line.value = currentTarget.value;
          clear();
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          line.value = '';
          clear();
          open.value = false;
          event.currentTarget.blur();
        }}
      />
      <button type="submit">{t('judge-shorthand-take')}</button>
      <div id="shorthand-told" role="alert">
        {notUnderstood.value.length > 0 ? (
          <p class="fault">
            {t('judge-shorthand-not-understood', { written: notUnderstood.value.join(' · ') })}
          </p>
        ) : null}
        {faults.value.map((fault, index) => (
          <p class="fault" key={index}>
            {fault.why === 'not-on-scale'
              ? t('judge-shorthand-not-on-scale', {
                  written: fault.text,
                  low: figure(exact(fault.range.low), words),
                  high: figure(exact(fault.range.high), words),
                })
              : t(`judge-shorthand-${fault.why}`, { written: fault.text })}
            {fault.why === 'which-penalty' ? (
              <Choices
                choices={fault.choices}
                pick={(one) => {
                  line.value = line.value.replace(fault.text, `p${designatorText(one)}`);
                  if (!line.value.includes(`p${designatorText(one)}`)) line.value = `p${designatorText(one)}`;
                  clear();
                  field.current?.focus();
                }}
              />
            ) : null}
          </p>
        ))}
      </div>
    </form>
  );
}

function Choices({
  choices,
  pick,
}: {
  readonly choices: readonly Designator[];
  readonly pick: (one: Designator) => void;
}) {
  const { speech } = useParts();
  return (
    <span class="choices-of-line">
      {choices.map((one) => (
        <button key={one.penalty.code} type="button" onClick={() => pick(one)}>
          p{designatorText(one)} {labelWords(one.penalty.label, speech)}
        </button>
      ))}
    </span>
  );
}
