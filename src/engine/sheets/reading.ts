/** What is read off one go: the parts that count, what they come to, and every fault of it. */
import { type Exact, zero } from '../numbers/exact.ts';
import type { GoFault, JudgeScore, ScoreFlag, ScoreParts, SheetManeuver, Tier } from './types.ts';

/** One go on one sheet, read as far as it is written. */
export interface GoReading {
  readonly tier: Tier;
  /** What the parts come to so far; `undefined` where nothing is scored or nothing is written yet. */
  readonly score: Exact | undefined;
  readonly better: JudgeScore['better'];
  readonly parts: ScoreParts;
  readonly flags: readonly ScoreFlag[];
  readonly faults: readonly GoFault[];
}

export const noParts: ScoreParts = {
  base: zero,
  maneuvers: [],
  extras: [],
  penalties: [],
  errorsOfCourse: zero,
  ruling: undefined,
  maximum: undefined,
};

/** What was written may be of any length; a fault repeats its beginning. */
const short = (text: string | undefined): string | undefined =>
  text !== undefined && text.length > 120 ? `${text.slice(0, 120)}…` : text;

/** A fault with what is not known left out. */
export function fault(code: GoFault['code'], at: string, more: Partial<GoFault> = {}): GoFault {
  return { code, at, position: more.position, written: short(more.written), allowed: more.allowed };
}

const missingCodes = new Set<GoFault['code']>([
  'mark_missing',
  'extra_missing',
  'measure_missing',
  'ruling_missing',
]);

/** Is it only not written yet? All else is wrong, and stays wrong whatever is added. */
export const isMissing = ({ code }: GoFault): boolean => missingCodes.has(code);

/** Escapes a name for a JSON pointer (RFC 6901). */
export const pointer = (name: string): string => name.replaceAll('~', '~0').replaceAll('/', '~1');

/** The maneuvers of a pattern by position, in order of position. */
export const byPosition = (maneuvers: readonly SheetManeuver[]): ReadonlyMap<number, SheetManeuver> =>
  new Map([...maneuvers].sort((a, b) => a.position - b.position).map((one) => [one.position, one]));

/** Written values by their code; own names only, so that `constructor` is a code like any other. */
export const written = <Value>(record: Readonly<Record<string, Value>> | undefined): Map<string, Value> =>
  new Map(Object.entries(record ?? {}));
