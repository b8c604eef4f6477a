/** Sheets in a contest: marks, penalties by their points, form, a ruling; scored by the engine's pattern sheet. */
import { exact } from '../../engine/numbers/exact.ts';
import { goFaultSentence } from '../../engine/sentences/fault-sentences.ts';
import { plainTeller } from '../../engine/sentences/words.ts';
import { scoreGo } from '../../engine/sheets/score-go.ts';
import type {
  Go,
  JudgeScore,
  ManeuverMark,
  MarkRange,
  PatternSheet,
  RulingCode,
  RulingEffect,
} from '../../engine/sheets/types.ts';
import { english } from '../../language/index.ts';
import { type ContestCard, ContestFault, type ContestSheet, contestForm } from './contest-form.ts';

type ContestGo = NonNullable<ContestCard['sheets']>[string];

/** What the rulings do where a contest does not say: common practice, no source. */
const usualRulings: Readonly<Record<RulingCode, RulingEffect>> = {
  'off-pattern': { kind: 'placed-below' },
  disqualified: { kind: 'not-placed' },
  excused: { kind: 'not-placed' },
  eliminated: { kind: 'not-placed' },
  'no-score': { kind: 'not-placed' },
  'no-show': { kind: 'not-placed' },
  scratched: { kind: 'not-placed' },
  retired: { kind: 'not-placed' },
};

/** Each entry's score on one card. Throws a `ContestFault` under `at` for a mark that the sheet does not allow. */
export function contestGoes(from: {
  readonly sheet: ContestSheet | undefined;
  readonly goes: Readonly<Record<string, ContestGo>>;
  readonly at: string;
}): ReadonlyMap<string, JudgeScore> {
  const written = from.sheet ?? defaultSheet;
  const { goes, at } = from;
  const sheet = patternSheet(written, Object.values(goes));
  const length = Math.max(0, ...Object.values(goes).map((go) => go.maneuvers.length));
  const maneuvers = Array.from({ length }, (_, index) => ({
    position: index + 1,
    name: `maneuver ${index + 1}`,
    coefficient: '1',
  }));
  return new Map(
    Object.entries(goes).map(([entry, go]) => {
      const scored = scoreGo(sheet, maneuvers, engineGo(go));
      if (scored.ok) return [entry, scored.score];
      const [fault] = scored.faults;
      throw new ContestFault(
        `${at}.${entry}${fault?.at.replaceAll('/', '.') ?? ''}`,
        fault ? goFaultSentence(fault, plainTeller(english)) : 'cannot be scored',
      );
    }),
  );
}

const defaultSheet: ContestSheet = contestForm.shape.placing.shape.sheet.unwrap().parse({});

function patternSheet(written: ContestSheet, goes: readonly ContestGo[]): PatternSheet {
  const points = [...new Set(goes.flatMap((go) => go.penalties))];
  const { base, step, lowest = null, notSeen, form } = written;
  const hasForm = goes.some((go) => go.form !== undefined);
  const formRange = range(form ?? {}, { low: '0', high: '5', step: form?.step ?? '0.5' });
  return {
    kind: 'pattern',
    code: 'contest',
    version: 1,
    title: 'sheet of the contest',
    source: 'the contest itself',
    base,
    maneuver: range(written, { low: '-3', high: '3', step }),
    extras: hasForm
      ? [{ code: 'form', label: 'form and effectiveness', range: formRange, coefficient: '1' }]
      : [],
    penalties: points.map((value) => ({
      code: penaltyCode(value),
      label: `penalty of ${value}`,
      points: value,
      weight: 'minor',
    })),
    rulings: { ...usualRulings, ...rulingsOf(written.rulings) },
    notSeen,
    lowest,
    totalRange: null,
  };
}

const penaltyCode = (points: string) => `p${points.replace('.', '-')}`;

function engineGo(go: ContestGo): Go {
  const { form, ruling } = go;
  return {
    maneuvers: go.maneuvers.map((mark, index): ManeuverMark => {
      const position = index + 1;
      const unseen = mark === null || mark === 'ns' || mark === 'not-seen' || mark === 'not seen';
      return unseen ? { position, notSeen: true } : { position, mark };
    }),
    penalties: go.penalties.map((points) => ({ code: penaltyCode(points) })),
    ...(form === undefined ? {} : { extras: { form } }),
    ...(ruling ? { ruling: { code: ruling } } : {}),
  };
}

/** Limits as `[low, high]`, `{ low, high }` or `{ min, max }`, inside `limits` or beside the step. */
function range(
  written: {
    limits?: ContestSheet['limits'];
    low?: string | undefined;
    high?: string | undefined;
    min?: unknown;
    max?: unknown;
  },
  usual: MarkRange,
): MarkRange {
  const { limits } = written;
  const named = Array.isArray(limits) ? { low: limits[0], high: limits[1] } : { ...written, ...limits };
  const text = (value: unknown) => (typeof value === 'string' ? value : undefined);
  return {
    low: text(named.low) ?? text('min' in named ? named.min : undefined) ?? usual.low,
    high: text(named.high) ?? text('max' in named ? named.max : undefined) ?? usual.high,
    step: usual.step,
  };
}

function rulingsOf(written: ContestSheet['rulings']): Partial<Record<RulingCode, RulingEffect>> {
  return Object.fromEntries(Object.entries(written).map(([code, effect]) => [code, effectOf(code, effect)]));
}

/** The four effects in words: below (or last), not placed (or out), stands (or discretion), or the points taken off. */
function effectOf(code: string, written: ContestSheet['rulings'][string]): RulingEffect {
  const at = `placing.sheet.rulings.${code}`;
  if (typeof written === 'number') return pointsOff(String(Math.abs(written)), at);
  if (typeof written === 'object') {
    const word = written.effect ?? written.kind;
    if (written.points !== undefined) return pointsOff(written.points, at);
    return effectOf(code, word ?? '');
  }
  const word = written.toLowerCase();
  if (/^-?\d/.test(word)) return pointsOff(word.replace('-', ''), at);
  if (/below|last/.test(word)) return { kind: 'placed-below' };
  if (/stand|discretion|flag/.test(word)) return { kind: 'score-stands' };
  if (/not|un|out|disq|elim|may/.test(word)) return { kind: 'not-placed' };
  throw new ContestFault(
    at,
    `"${written}" is no effect; placed-below, not-placed, score-stands or { "points": ... }`,
  );
}

function pointsOff(points: string, at: string): RulingEffect {
  try {
    return { kind: 'takes-points-off', points: exact(points).toString() };
  } catch {
    throw new ContestFault(at, `"${points}" is no number of points`);
  }
}
