/** How the steps of a go are called. */
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import type { Speech } from '../../../engine/sentences/speech.ts';
import type { Words } from '../../shared/words.tsx';
import type { DayManeuver } from '../desk/day-types.ts';
import type { Step } from './steps.ts';

interface Teller {
  readonly words: Words;
  readonly speech: Speech;
}

/** "Lope on the right lead to D", "form and effectiveness", "mark". */
export function stepName(step: Step, { words, speech }: Teller): string {
  switch (step.kind) {
    case 'maneuver':
      return step.name;
    case 'extra':
      return labelWords(step.label, speech);
    case 'mark':
    case 'measure':
      return words.t(`judge-step-${step.kind}`);
  }
}

/** What stands in the small cell of the line: "3", "F", "F2". */
export function stepSign(step: Step, steps: readonly Step[], { t }: Words): string {
  if (step.kind === 'maneuver') return String(step.position);
  if (step.kind !== 'extra') return t(`judge-sign-${step.kind}`);
  const extras = steps.filter(({ kind }) => kind === 'extra');
  return t('judge-sign-extra', { number: extras.indexOf(step) + 1, count: extras.length });
}

/** "lope · right lead · C to D · counts twice": what the pattern says beside the name. */
export function maneuverNote(
  { gait, leadOrDiagonal, startCone, endCone, coefficient }: DayManeuver,
  { t, find }: Words,
): string {
  const gaitId = gait?.replaceAll('_', '-');
  const parts = [
    gaitId === undefined ? undefined : (find(`judge-gait-${gaitId}`) ?? gait ?? undefined),
    leadOrDiagonal === null ? undefined : t(`judge-hand-${leadOrDiagonal}`),
    startCone === null || endCone === null ? undefined : way(startCone, endCone, t),
    coefficient === '1' ? undefined : t('judge-coefficient', { coefficient }),
  ];
  return parts.filter((part) => part !== undefined).join(' · ');
}

const way = (from: string, to: string, t: Words['t']): string =>
  from === to ? t('judge-way-at', { cone: from }) : t('judge-way', { from, to });
