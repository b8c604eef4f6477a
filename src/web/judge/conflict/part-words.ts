/** What one version of a go has at a part, in words. */
import { exact } from '../../../engine/numbers/exact.ts';
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { DayClass } from '../desk/day-types.ts';
import { markLayout } from '../go/mark-layout.ts';
import { penaltiesOf } from '../go/penalty-keys.tsx';
import { stepName } from '../go/step-words.ts';
import { writtenAt } from '../go/steps.ts';
import { remarkAt } from '../go/write-go.ts';
import { figure, signedFigure } from '../numbers.ts';
import type { useParts } from '../parts.tsx';
import type { GoPart } from './differences.ts';

type Teller = Pick<ReturnType<typeof useParts>, 'words' | 'speech' | 't'>;

export function partName({ step, part }: GoPart, teller: Teller): string {
  if (step === undefined) return teller.t(`judge-difference-${part}`);
  return step.kind === 'maneuver' ? `${step.position} ${step.name}` : stepName(step, teller);
}

export function partWords(
  go: Go,
  part: GoPart,
  { dayClass, ...teller }: Teller & { dayClass: DayClass },
): string {
  const { t, words, speech } = teller;
  const none = t('judge-difference-none');
  const { step } = part;
  if (step !== undefined) {
    const written = writtenAt(go, step);
    const signed = markLayout(step.range).is === 'balance';
    const mark =
      written === undefined
        ? none
        : written === 'not-seen'
          ? t('judge-not-seen')
          : signed
            ? signedFigure(exact(written), words)
            : figure(exact(written), words);
    const position = step.kind === 'maneuver' ? step.position : undefined;
    if (position === undefined) return mark;
    return [mark, penaltyWords(go, position, { dayClass, ...teller }), remarkAt(go, position)]
      .filter(Boolean)
      .join(' · ');
  }
  switch (part.part) {
    case 'penalties':
      return penaltyWords(go, undefined, { dayClass, ...teller }) || none;
    case 'errors':
      return String(go.errorsOfCourse ?? 0);
    case 'ruling':
      return go.ruling === undefined ? none : speech.say(`ruling-${go.ruling.code}`);
    case 'remark':
    case 'step':
      return go.remark ?? none;
  }
}

function penaltyWords(
  go: Go,
  position: number | undefined,
  { dayClass, words, speech }: Teller & { dayClass: DayClass },
): string {
  const known = penaltiesOf(dayClass.sheet);
  return (go.penalties ?? [])
    .filter((one) => one.position === position)
    .map(({ code }) => {
      const penalty = known.find((one) => one.code === code);
      if (penalty === undefined) return code;
      return `−${figure(exact(penalty.points), words)} ${labelWords(penalty.label, speech)}`;
    })
    .join(', ');
}
