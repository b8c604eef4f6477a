/** What a go is marked by, one after the other: the maneuvers, then what stands beside them. Out of the sheet's data. */
import type { Decimal } from '../../../engine/numbers/exact.ts';
import type { Go, MarkRange, ScoreSheet, SheetManeuver } from '../../../engine/sheets/types.ts';

export type Step = ManeuverStep | ExtraStep | WholeStep;

export interface ManeuverStep {
  readonly kind: 'maneuver';
  /** From 1. */
  readonly position: number;
  readonly name: string;
  readonly range: MarkRange;
  readonly coefficient: Decimal;
}

/** Form and effectiveness, collective marks. */
export interface ExtraStep {
  readonly kind: 'extra';
  readonly code: string;
  readonly label: string;
  readonly range: MarkRange;
  readonly coefficient: Decimal;
}

/** One mark, or one time, for the whole go. */
interface WholeStep {
  readonly kind: 'mark' | 'measure';
  readonly range: MarkRange;
}

/** Empty on a places sheet: there the order is all. */
export function stepsOf(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[]): readonly Step[] {
  switch (sheet.kind) {
    case 'pattern':
      return [...maneuverSteps(sheet.maneuver, maneuvers), ...sheet.extras.map(extraStep)];
    case 'percentage':
      return [...maneuverSteps(sheet.maneuver, maneuvers), ...sheet.collectives.map(extraStep)];
    case 'one-mark':
      return [{ kind: 'mark', range: sheet.mark }];
    case 'measured':
      return [{ kind: 'measure', range: sheet.measure }];
    case 'places':
      return [];
  }
}

const maneuverSteps = (range: MarkRange, maneuvers: readonly SheetManeuver[]): ManeuverStep[] =>
  [...maneuvers]
    .sort((a, b) => a.position - b.position)
    .map(({ position, name, coefficient }) => ({ kind: 'maneuver', position, name, range, coefficient }));

const extraStep = (extra: Omit<ExtraStep, 'kind'>): ExtraStep => ({ kind: 'extra', ...extra });

/** What is written at a step: a mark, `not-seen`, or nothing yet. */
export function writtenAt(go: Go, step: Step): Decimal | 'not-seen' | undefined {
  switch (step.kind) {
    case 'maneuver': {
      const mark = go.maneuvers?.find(({ position }) => position === step.position);
      if (mark === undefined) return undefined;
      return 'notSeen' in mark ? 'not-seen' : mark.mark;
    }
    case 'extra':
      return go.extras?.[step.code];
    case 'mark':
      return go.mark;
    case 'measure':
      return go.measure;
  }
}

/** Index of the first step after `index` with nothing written, else the first of all, else `steps.length`: all done. */
export function nextStep(steps: readonly Step[], go: Go, index: number): number {
  const open = (at: number) => {
    const step = steps[at];
    return step !== undefined && writtenAt(go, step) === undefined;
  };
  const all = steps.map((_, at) => at);
  return all.find((at) => at > index && open(at)) ?? all.find(open) ?? steps.length;
}

export const markedSteps = (steps: readonly Step[], go: Go): number =>
  steps.filter((step) => writtenAt(go, step) !== undefined).length;

/** Where a go differs between two versions: the first step of it. */
export const changedStep = (steps: readonly Step[], before: Go, after: Go): number | undefined => {
  const index = steps.findIndex((step) => writtenAt(before, step) !== writtenAt(after, step));
  return index < 0 ? undefined : index;
};
