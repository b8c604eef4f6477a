/**
 * Each thing that a tap may do to a go, as a pure function over what is kept: so two quick taps, or two tabs, never
 * lose one another. What becomes empty is left out, as if it had never been written.
 */
import type { Decimal } from '../../../engine/numbers/exact.ts';
import type { Go, ManeuverMark, RulingCode } from '../../../engine/sheets/types.ts';
import type { Step } from './steps.ts';

export type Change = (kept: Go) => Go;

/** `remark`: what was written about the maneuver before it was marked. */
export const withMark =
  (step: Step, mark: Decimal, remark?: string): Change =>
  (go) => {
    switch (step.kind) {
      case 'maneuver':
        return atManeuver(go, step.position, (before) => ({
          position: step.position,
          mark,
          ...remarkOf(before?.remark ?? remark),
        }));
      case 'extra':
        return { ...go, extras: { ...go.extras, [step.code]: mark } };
      case 'mark':
        return { ...go, mark };
      case 'measure':
        return { ...go, measure: mark };
    }
  };

export const withNotSeen =
  (position: number, remark?: string): Change =>
  (go) =>
    atManeuver(go, position, (before) => ({
      ...{ position, notSeen: true },
      ...remarkOf(before?.remark ?? remark),
    }));

/** Takes the mark off again; a maneuver without a mark has no remark either. */
export const withoutMark =
  (step: Step): Change =>
  (go) => {
    switch (step.kind) {
      case 'maneuver':
        return listed(go, 'maneuvers', others(go, step.position));
      case 'extra': {
        const { [step.code]: _, ...extras } = go.extras ?? {};
        const { extras: __, ...rest } = go;
        return Object.keys(extras).length === 0 ? rest : { ...rest, extras };
      }
      case 'mark': {
        const { mark: _, ...rest } = go;
        return rest;
      }
      case 'measure': {
        const { measure: _, ...rest } = go;
        return rest;
      }
    }
  };

/** Without a position it is against the whole go. */
export const withPenalty =
  (code: string, position: number | undefined): Change =>
  (go) => ({
    ...go,
    penalties: [...(go.penalties ?? []), { code, ...(position === undefined ? {} : { position }) }],
  });

/** Takes back the last one of that code there. */
export const withoutPenalty =
  (code: string, position: number | undefined): Change =>
  (go) => {
    const taken = go.penalties ?? [];
    const last = taken.findLastIndex((one) => one.code === code && one.position === position);
    return last < 0 ? go : listed(go, 'penalties', taken.toSpliced(last, 1));
  };

export const penaltiesAt = (go: Go, code: string, position: number | undefined): number =>
  (go.penalties ?? []).filter((one) => one.code === code && one.position === position).length;

/** `undefined` takes the ruling back. */
export const withRuling =
  (code: RulingCode | undefined, remark = ''): Change =>
  ({ ruling: _, ...go }) =>
    code === undefined ? go : { ...go, ruling: { code, ...remarkOf(remark) } };

export const withErrors =
  (count: number): Change =>
  ({ errorsOfCourse: _, ...go }) =>
    count <= 0 ? go : { ...go, errorsOfCourse: count };

/** Of the whole go; an empty one is taken off. */
export const withRemark =
  (remark: string): Change =>
  ({ remark: _, ...go }) => ({ ...go, ...remarkOf(remark) });

/** Of a maneuver that is marked; where it is not, nothing changes (see `waiting-remarks`). */
export const withManeuverRemark =
  (position: number, remark: string): Change =>
  (go) => {
    const before = go.maneuvers?.find((one) => one.position === position);
    if (before === undefined) return go;
    return atManeuver(go, position, () => {
      const { remark: _, ...mark } = before;
      return { ...mark, ...remarkOf(remark) };
    });
  };

export const remarkAt = (go: Go, position: number): string =>
  go.maneuvers?.find((one) => one.position === position)?.remark ?? '';

/** One change after the other. */
export const inTurn =
  (changes: readonly Change[]): Change =>
  (go) =>
    changes.reduce((kept, change) => change(kept), go);

const remarkOf = (remark: string | undefined): { readonly remark?: string } =>
  remark === undefined || remark.trim() === '' ? {} : { remark };

const others = (go: Go, position: number): readonly ManeuverMark[] =>
  (go.maneuvers ?? []).filter((one) => one.position !== position);

function atManeuver(go: Go, position: number, make: (before: ManeuverMark | undefined) => ManeuverMark): Go {
  const before = go.maneuvers?.find((one) => one.position === position);
  const all = [...others(go, position), make(before)].sort((a, b) => a.position - b.position);
  return { ...go, maneuvers: all };
}

function listed(go: Go, part: 'maneuvers' | 'penalties', list: readonly unknown[]): Go {
  const { [part]: _, ...rest } = go;
  return list.length === 0 ? rest : { ...rest, [part]: list };
}
