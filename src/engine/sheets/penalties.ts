/** Penalties: each as often as it was taken, against a maneuver or against the whole go. */
import { type Exact, exact, sum } from '../numbers/exact.ts';
import { allowedPositions } from './maneuver-marks.ts';
import { byPosition, fault } from './reading.ts';
import type { Go, GoFault, Penalty, ScoreParts, SheetManeuver } from './types.ts';

export interface PenaltyReading {
  readonly parts: ScoreParts['penalties'];
  readonly faults: readonly GoFault[];
}

export function readPenalties(
  penalties: readonly Penalty[],
  maneuvers: readonly SheetManeuver[],
  taken: Go['penalties'],
): PenaltyReading {
  const points = pointsByCode(penalties);
  const known = byPosition(maneuvers);
  const parts: ScoreParts['penalties'][number][] = [];
  const faults: GoFault[] = [];
  for (const [index, { code, position }] of (taken ?? []).entries()) {
    const at = `/penalties/${index}`;
    const takes = points.get(code);
    if (takes === undefined) {
      const allowed = { kind: 'codes', codes: [...points.keys()] } as const;
      faults.push(fault('penalty_unknown', `${at}/code`, { position, written: code, allowed }));
    } else parts.push({ code, position, points: takes });
    if (position !== undefined && !known.has(position)) {
      const more = { written: String(position), allowed: allowedPositions(known) };
      faults.push(fault('maneuver_unknown', `${at}/position`, { position, ...more }));
    }
  }
  return { parts, faults };
}

const catalogues = new WeakMap<readonly Penalty[], ReadonlyMap<string, Exact>>();

/** The points of a catalogue, read once for each sheet. */
function pointsByCode(penalties: readonly Penalty[]): ReadonlyMap<string, Exact> {
  const before = catalogues.get(penalties);
  if (before !== undefined) return before;
  const points = new Map(penalties.map((one) => [one.code, exact(one.points)]));
  catalogues.set(penalties, points);
  return points;
}

export const pointsTaken = (parts: ScoreParts['penalties']): Exact => sum(parts.map(({ points }) => points));
