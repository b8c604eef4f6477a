/** Two versions of one go, part by part, and the go that is put together of them. Pure. */
import type { Go, ManeuverMark } from '../../../engine/sheets/types.ts';
import type { Step } from '../go/steps.ts';

export type Side = 'mine' | 'theirs';

export interface GoPart {
  /** A step's key, or a part of the whole go. */
  readonly key: string;
  readonly step: Step | undefined;
  readonly part: 'step' | 'penalties' | 'ruling' | 'remark' | 'errors';
  readonly differs: boolean;
}

/** In the order of the sheet. Penalties go with the maneuver that they are against. */
export function partsOf(steps: readonly Step[], mine: Go, theirs: Go): readonly GoPart[] {
  const whole = (part: Exclude<GoPart['part'], 'step'>): GoPart => ({
    ...{ key: part, step: undefined, part },
    differs: textOf(wholePart(mine, part)) !== textOf(wholePart(theirs, part)),
  });
  return [
    ...steps.map(
      (step): GoPart => ({
        ...{ key: keyOf(step), step, part: 'step' },
        differs: textOf(stepPart(mine, step)) !== textOf(stepPart(theirs, step)),
      }),
    ),
    ...(['penalties', 'errors', 'ruling', 'remark'] as const).map(whole),
  ];
}

export const keyOf = (step: Step): string =>
  step.kind === 'maneuver'
    ? `maneuver-${step.position}`
    : step.kind === 'extra'
      ? `extra-${step.code}`
      : step.kind;

const textOf = (part: unknown): string => JSON.stringify(part ?? null);

/** What one version has at a step: its mark with the remark, and the penalties there. */
function stepPart(go: Go, step: Step) {
  switch (step.kind) {
    case 'maneuver': {
      const { mark, notSeen, remark } = (maneuverAt(go, step.position) ?? {}) as {
        mark?: string;
        notSeen?: true;
        remark?: string;
      };
      return { mark, notSeen, remark, penalties: codesAt(go, step.position) };
    }
    case 'extra':
      return go.extras?.[step.code];
    case 'mark':
      return go.mark;
    case 'measure':
      return go.measure;
  }
}

const maneuverAt = (go: Go, position: number): ManeuverMark | undefined =>
  go.maneuvers?.find((one) => one.position === position);

const penaltiesAt = (go: Go, position: number | undefined) =>
  (go.penalties ?? []).filter((one) => one.position === position);

const codesAt = (go: Go, position: number | undefined): readonly string[] =>
  penaltiesAt(go, position)
    .map(({ code }) => code)
    .sort();

function wholePart(go: Go, part: Exclude<GoPart['part'], 'step'>) {
  switch (part) {
    case 'penalties':
      return codesAt(go, undefined);
    case 'errors':
      return go.errorsOfCourse ?? 0;
    case 'ruling':
      return go.ruling === undefined ? null : [go.ruling.code, go.ruling.remark ?? ''];
    case 'remark':
      return go.remark ?? '';
  }
}

interface Picked {
  readonly parts: readonly GoPart[];
  readonly mine: Go;
  readonly theirs: Go;
  /** By key; what does not differ needs no pick. */
  readonly picks: Readonly<Record<string, Side>>;
}

/** As she chose, part by part. */
export function pickedGo({ parts, mine, theirs, picks }: Picked): Go {
  const from = (key: string): Go => (picks[key] === 'theirs' ? theirs : mine);
  const steps = parts.flatMap(({ step, key }) => (step === undefined ? [] : [{ step, of: from(key) }]));
  const maneuvers = steps.flatMap(({ step, of }) =>
    step.kind === 'maneuver' ? (maneuverAt(of, step.position) ?? []) : [],
  );
  const extras = steps.flatMap(({ step, of }) => {
    const mark = step.kind === 'extra' ? of.extras?.[step.code] : undefined;
    return step.kind === 'extra' && mark !== undefined ? [[step.code, mark] as const] : [];
  });
  const penalties = [
    ...steps.flatMap(({ step, of }) => (step.kind === 'maneuver' ? penaltiesAt(of, step.position) : [])),
    ...penaltiesAt(from('penalties'), undefined),
  ];
  const { mark } = from('mark');
  const { measure } = from('measure');
  const { errorsOfCourse } = from('errors');
  const { ruling } = from('ruling');
  const { remark } = from('remark');
  return {
    ...(maneuvers.length === 0 ? {} : { maneuvers }),
    ...(extras.length === 0 ? {} : { extras: Object.fromEntries(extras) }),
    ...(penalties.length === 0 ? {} : { penalties }),
    ...(mark === undefined ? {} : { mark }),
    ...(measure === undefined ? {} : { measure }),
    ...(errorsOfCourse === undefined ? {} : { errorsOfCourse }),
    ...(ruling === undefined ? {} : { ruling }),
    ...(remark === undefined ? {} : { remark }),
  };
}
