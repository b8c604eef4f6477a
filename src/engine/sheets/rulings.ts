/** What a judge ruled about a go, and what that does on this sheet. Status comes before score. */
import { type Exact, exact, zero } from '../numbers/exact.ts';
import { fault, written } from './reading.ts';
import type { Go, GoFault, ScoreFlag, ScoreParts, ScoreSheet, Tier } from './types.ts';

export interface RulingReading {
  readonly tier: Tier;
  readonly part: ScoreParts['ruling'];
  /** Points that the ruling takes off; zero for most. */
  readonly takes: Exact;
  readonly flags: readonly ScoreFlag[];
  readonly faults: readonly GoFault[];
}

const none: RulingReading = {
  tier: 'kept-pattern',
  part: undefined,
  takes: zero,
  flags: [],
  faults: [],
};

export function readRuling(sheet: ScoreSheet, ruling: Go['ruling']): RulingReading {
  if (ruling === undefined) return none;
  const { code } = ruling;
  const known = written(sheet.rulings);
  const effect = known.get(code);
  if (effect === undefined) {
    const allowed = { kind: 'codes', codes: [...known.keys()] } as const;
    return { ...none, faults: [fault('ruling_unknown', '/ruling/code', { written: code, allowed })] };
  }
  const part = { code, effect };
  switch (effect.kind) {
    case 'takes-points-off':
      return { ...none, part, takes: exact(effect.points) };
    case 'placed-below':
    case 'not-placed':
      return { ...none, part, tier: effect.kind };
    case 'score-stands':
      return { ...none, part, flags: [{ kind: 'score-stands', ruling: code }] };
  }
}

/**
 * A maneuver that counts as not shown, because it could not be seen, makes the pattern a question that only
 * the judge can answer: without her ruling the go is incomplete.
 */
export function rulingStillMissing(
  sheet: ScoreSheet,
  go: Go,
  flags: readonly ScoreFlag[],
): readonly GoFault[] {
  const unseen = flags.find((flag) => flag.kind === 'not-seen' && flag.treatedAs === 'absent');
  if (go.ruling !== undefined || unseen?.kind !== 'not-seen') return [];
  const allowed = { kind: 'codes', codes: Object.keys(sheet.rulings) } as const;
  return [fault('ruling_missing', '/ruling', { position: unseen.position, allowed })];
}
