/** The marks for the maneuvers of a pattern: one for each, or a note that it could not be seen. */
import { type Exact, zero } from '../numbers/exact.ts';
import { allowedRange, isFault, type ReadRange, readMark, times } from './mark.ts';
import { byPosition, fault } from './reading.ts';
import type {
  Allowed,
  GoFault,
  ManeuverMark,
  NotSeenRule,
  ScoreFlag,
  ScoreParts,
  SheetManeuver,
} from './types.ts';

export interface ManeuverReading {
  readonly parts: ScoreParts['maneuvers'];
  readonly faults: readonly GoFault[];
  readonly flags: readonly ScoreFlag[];
  /** What the marks that count could have reached: their highest mark times the coefficient. */
  readonly maximum: Exact;
}

interface Written {
  readonly mark: ManeuverMark;
  readonly at: string;
}

/** Reads the marks in order of position; each maneuver must have exactly one. */
export function readManeuvers(rules: {
  readonly range: ReadRange;
  readonly notSeen: NotSeenRule;
  readonly maneuvers: readonly SheetManeuver[];
  readonly marks: readonly ManeuverMark[] | undefined;
}): ManeuverReading {
  const { range, notSeen, maneuvers } = rules;
  const known = byPosition(maneuvers);
  const { found, faults } = sortOut(rules.marks ?? [], known);
  const parts: ScoreParts['maneuvers'][number][] = [];
  const flags: ScoreFlag[] = [];
  let maximum = zero;
  for (const { position, coefficient } of known.values()) {
    const one = found.get(position);
    if (one === undefined) {
      faults.push(fault('mark_missing', '/maneuvers', { position, allowed: allowedRange(range.written) }));
      continue;
    }
    if ('notSeen' in one.mark) {
      flags.push({ kind: 'not-seen', position, treatedAs: notSeen });
      parts.push({ position, mark: undefined, counts: notSeen === 'absent' ? zero : undefined });
      if (notSeen === 'absent') maximum = maximum.add(times(range.high, coefficient));
      continue;
    }
    const mark = readMark(one.mark.mark, range, { at: `${one.at}/mark`, position });
    if (isFault(mark)) {
      faults.push(mark);
      continue;
    }
    parts.push({ position, mark, counts: times(mark, coefficient) });
    maximum = maximum.add(times(range.high, coefficient));
  }
  return { parts, faults, flags, maximum };
}

/** By position; a maneuver that the pattern does not have, and a second mark for the same one, are faults. */
function sortOut(marks: readonly ManeuverMark[], known: ReadonlyMap<number, SheetManeuver>) {
  const found = new Map<number, Written>();
  const faults: GoFault[] = [];
  for (const [index, mark] of marks.entries()) {
    const at = `/maneuvers/${index}`;
    const { position } = mark;
    if (!known.has(position)) {
      const more = { written: String(position), allowed: allowedPositions(known) };
      faults.push(fault('maneuver_unknown', `${at}/position`, { position, ...more }));
    } else if (found.has(position)) {
      faults.push(fault('maneuver_twice', `${at}/position`, { position, written: String(position) }));
    } else found.set(position, { mark, at });
  }
  return { found, faults };
}

/** A class without a pattern has none. */
export function allowedPositions(known: ReadonlyMap<number, SheetManeuver>): Allowed {
  const positions = [...known.keys()].map(String);
  const [low] = positions;
  const high = positions.at(-1);
  if (low === undefined || high === undefined) return { kind: 'codes', codes: [] };
  return { kind: 'range', low, high, step: undefined };
}

/** The sum of what they count; what is left out counts nothing. */
export function countsOf(parts: readonly { readonly counts: Exact | undefined }[]): Exact {
  let total = zero;
  for (const { counts } of parts) if (counts !== undefined) total = total.add(counts);
  return total;
}
