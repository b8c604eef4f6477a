/**
 * The go as a line: each maneuver a note that stands above or beneath the line as it was marked. On a desk the same list
 * stands as a sheet, with names. A tap takes the maneuver in hand.
 */
import { exact } from '../../../engine/numbers/exact.ts';
import type { Words } from '../../shared/words.tsx';
import { useDerived } from '../derived.ts';
import { figure, said, signedFigure, signedSaid } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { markLayout } from './mark-layout.ts';
import { stepName, stepSign } from './step-words.ts';
import { type Step, writtenAt } from './steps.ts';
import { remarkAt } from './write-go.ts';

export function Staff({ model }: { readonly model: GoModel }) {
  const { t } = useParts();
  if (model.steps.length < 2) return null;
  return (
    <ol class="staff" aria-label={t('judge-staff')}>
      {model.steps.map((step, index) => (
        <li key={index} data-beside={step.kind === 'extra'}>
          <Note model={model} step={step} index={index} />
        </li>
      ))}
    </ol>
  );
}

interface NoteProps {
  readonly model: GoModel;
  readonly step: Step;
  readonly index: number;
}

function Note({ model, step, index }: NoteProps) {
  const parts = useParts();
  const { words, t } = parts;
  const written = useDerived(() => writtenAt(model.go.value, step), [model, step]);
  const taken = useDerived(() => takenAt(model, step, words), [model, step, words]);
  const isInHand = useDerived(() => model.inHand.value === index, [model, index]);
  const remark = useDerived(
    () => (step.kind === 'maneuver' ? remarkAt(model.go.value, step.position) : ''),
    [model, step],
  );
  const signed = markLayout(step.range).is === 'balance';
  const mark = written === undefined || written === 'not-seen' ? undefined : exact(written);
  const shown = mark === undefined ? '' : signed ? signedFigure(mark, words) : figure(mark, words);
  const heard =
    mark === undefined
      ? t(written === undefined ? 'judge-not-marked' : 'judge-not-seen')
      : signed
        ? signedSaid(mark, words)
        : said(mark, words);
  const lift =
    mark === undefined || !signed ? 0 : Number(mark.div(exact(step.range.step)).n) * (mark.s < 0n ? -1 : 1);
  return (
    <button
      type="button"
      class="note-of-go"
      aria-current={isInHand ? 'step' : undefined}
      data-written={written === undefined ? 'no' : written === 'not-seen' ? 'not-seen' : 'yes'}
      onClick={() => model.take(index)}
    >
      <span class="sign" aria-hidden="true">
        {stepSign(step, model.steps, words)}
      </span>
      <span class="name">{stepName(step, parts)}</span>
      <span class="value" style={{ '--lift': String(lift) }} aria-hidden="true">
        {written === 'not-seen' ? t('judge-sign-not-seen') : shown}
      </span>
      <span class="heard">{heard}</span>
      {taken === '' ? null : (
        <span class="taken">
          <span class="heard">{t('judge-staff-penalties')} </span>
          {taken}
        </span>
      )}
      {remark === '' ? null : <span class="remark">{remark}</span>}
    </button>
  );
}

/** "−3 −5": points of the penalties there. */
function takenAt(model: GoModel, step: Step, words: Words): string {
  if (step.kind !== 'maneuver') return '';
  const { parts } = model.reading.value;
  return parts.penalties
    .filter(({ position }) => position === step.position)
    .map(({ points }) => figure(points.neg(), words))
    .join(' ');
}
