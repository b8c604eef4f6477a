/** The maneuver in hand, large: what is ridden, what is written about it, and the way back and on. */
import { useRef } from 'preact/hooks';
import { exact } from '../../../engine/numbers/exact.ts';
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import { useDerived } from '../derived.ts';
import { figure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { penaltiesOf } from './penalty-keys.tsx';
import { maneuverNote, stepName, stepSign } from './step-words.ts';
import { waitingRemark } from './waiting-remarks.ts';
import { penaltiesAt, remarkAt } from './write-go.ts';

/** Less is a tap that slid. */
const swipePixels = 56;

export function InHand({ model }: { readonly model: GoModel }) {
  const { t } = useParts();
  const began = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const index = model.inHand.value;
  const end = (x: number, y: number) => {
    const from = began.current;
    began.current = null;
    if (from === null || Math.abs(x - from.x) < swipePixels || Math.abs(y - from.y) > Math.abs(x - from.x))
      return;
    model.take(x > from.x ? index - 1 : index + 1);
  };
  if (model.steps.length === 0) return null;
  return (
    <section
      class="in-hand"
      aria-label={t('judge-in-hand')}
      onPointerDown={({ clientX, clientY, pointerType }) => {
        began.current = pointerType === 'touch' ? { x: clientX, y: clientY } : null;
      }}
      onPointerUp={({ clientX, clientY }) => end(clientX, clientY)}
      onPointerCancel={() => {
        began.current = null;
      }}
    >
      <button
        type="button"
        class="turn"
        aria-label={t('judge-step-back')}
        disabled={index === 0}
        onClick={() => model.take(index - 1)}
      >
        ‹
      </button>
      <What model={model} />
      <button
        type="button"
        class="turn"
        aria-label={t('judge-step-on')}
        disabled={index >= model.steps.length}
        onClick={() => model.take(index + 1)}
      >
        ›
      </button>
      <Taken model={model} />
    </section>
  );
}

function What({ model }: { readonly model: GoModel }) {
  const parts = useParts();
  const { words, t } = parts;
  const step = model.step;
  if (step === undefined) return <h2>{t('judge-all-marked')}</h2>;
  const maneuver =
    step.kind === 'maneuver'
      ? model.dayClass.pattern?.maneuvers.find(({ position }) => position === step.position)
      : undefined;
  const note = maneuver === undefined ? '' : maneuverNote(maneuver, words);
  return (
    <div class="what">
      <h2>
        {model.steps.length > 1 ? <span class="sign">{stepSign(step, model.steps, words)}</span> : null}
        {stepName(step, parts)}
      </h2>
      {note === '' ? null : <p class="note">{note}</p>}
      <RemarkShown model={model} />
    </div>
  );
}

function RemarkShown({ model }: { readonly model: GoModel }) {
  const { t } = useParts();
  const remark = useDerived(() => {
    const { position } = model;
    if (position === undefined) return model.go.value.remark ?? '';
    const waits = model.kept.value >= 0 ? waitingRemark(model.entry.classEntryId, position) : undefined;
    return remarkAt(model.go.value, position) || (waits ?? '');
  }, [model]);
  return remark === '' ? null : (
    <p class="remark">
      <span class="heard">{t('judge-remark')}: </span>
      {remark}
    </p>
  );
}

/** Penalties there, each taken off again by a tap. */
function Taken({ model }: { readonly model: GoModel }) {
  const { words, speech, t } = useParts();
  const { position } = model;
  const go = model.go.value;
  const taken = penaltiesOf(model.dayClass.sheet).filter(({ code }) => penaltiesAt(go, code, position) > 0);
  if (taken.length === 0) return null;
  return (
    <ul class="taken-here">
      {taken.map(({ code, label, points }) => {
        const count = penaltiesAt(go, code, position);
        const called = labelWords(label, speech);
        return (
          <li key={code}>
            <button
              type="button"
              aria-label={t('judge-pardon', { label: called, points: figure(exact(points), words), count })}
              onClick={() => void model.pardon(code, position)}
            >
              <span class="points">−{figure(exact(points), words)}</span>
              {count > 1 ? <span class="count">×{count}</span> : null}
              <span class="label">{called}</span>
              <span class="off" aria-hidden="true">
                ✕
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
