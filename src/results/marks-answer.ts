/** The marks of one published go, figure by figure, for whoever would rather add up than read sentences. */
import { z } from 'zod';
import { type Exact, zero } from '../engine/numbers/exact.ts';
import { recordText } from '../engine/numbers/number-text.ts';
import { labelWords } from '../engine/sentences/score-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { type Go, type JudgeScore, rulingCodes, type ScoreSheet } from '../engine/sheets/types.ts';
import type { LoadedClass } from '../office/index.ts';

const number = z.string().describe('An exact number as text.');
const takes = number.describe('Points, or seconds, that it takes; positive.');
const position = z.int().min(1).max(1_000_000).describe('Position of the maneuver in the pattern, from 1.');

/** What the marks stand on; said once for all goes of the class. */
export const sheetOfResult = z.object({
  code: z.string(),
  kind: z.enum(['pattern', 'percentage', 'one-mark', 'places', 'measured']),
  title: z.string(),
  maneuvers: z
    .array(z.object({ position, name: z.string(), coefficient: number }))
    .describe('In the order in which they are ridden; none without a pattern.'),
  extras: z.array(z.object({ code: z.string(), label: z.string(), coefficient: number })),
  penalties: z.array(z.object({ code: z.string(), label: z.string(), points: number })),
});
export type SheetOfResult = z.infer<typeof sheetOfResult>;

/** Labels of penalties and extra marks in the language of the answer, where its words know them. */
export function sheetAnswer(
  { sheet: { definition }, maneuvers }: LoadedClass,
  speech: Speech,
): SheetOfResult {
  const told = (label: string) => labelWords(label, speech);
  const { code, kind, title } = definition;
  const penalties = 'penalties' in definition ? definition.penalties : [];
  return {
    ...{ code, kind, title },
    maneuvers: maneuvers.map(({ position: at, name, coefficient }) => ({ position: at, name, coefficient })),
    extras: extrasOf(definition).map((extra) => ({
      ...{ code: extra.code, label: told(extra.label), coefficient: extra.coefficient },
    })),
    penalties: penalties.map((one) => ({ code: one.code, label: told(one.label), points: one.points })),
  };
}

function extrasOf(sheet: ScoreSheet) {
  switch (sheet.kind) {
    case 'pattern':
      return sheet.extras;
    case 'percentage':
      return sheet.collectives;
    case 'one-mark':
    case 'places':
    case 'measured':
      return [];
  }
}

export const marksOfGo = z.object({
  base: number.nullable().describe('The base, the one mark, or the time; null where the sheet has none.'),
  maneuvers: z.array(
    z.object({
      position,
      mark: number.nullable().describe('null: not seen.'),
      counts: number.nullable().describe('The mark times its coefficient; null: left out, as not seen.'),
      penalties: z.array(z.object({ code: z.string(), points: takes })),
      remark: z.string().nullable(),
    }),
  ),
  extras: z.array(z.object({ code: z.string(), mark: number, counts: number })),
  penalties: z
    .array(z.object({ code: z.string(), position: position.nullable(), points: takes }))
    .describe('Against the go as a whole, or at a maneuver that has no mark.'),
  errorsOfCourse: number.nullable().describe('What they take off; null: none.'),
  ruling: z
    .object({
      code: z.enum(rulingCodes),
      effect: z.enum(['takes-points-off', 'placed-below', 'not-placed', 'score-stands']),
      takes: number.nullable(),
      remark: z.string().nullable(),
    })
    .nullable(),
  lowerLimit: number
    .nullable()
    .describe('What the parts added up to, where the lowest score of the sheet counts instead.'),
  maximum: number.nullable().describe('Percentage sheets: what the marks could have reached.'),
  remark: z.string().nullable(),
});
export type MarksOfGo = z.infer<typeof marksOfGo>;

/** `go` is as the judge wrote it, for her remarks. Every figure of `parts` is in the answer once. */
export function marksAnswer(
  sheet: ScoreSheet,
  { parts, flags, score }: JudgeScore,
  go: Go | undefined,
): MarksOfGo {
  const remarks = new Map((go?.maneuvers ?? []).map((one) => [one.position, one.remark]));
  const marked = new Set(parts.maneuvers.map((one) => one.position));
  const limit = flags.find((flag) => flag.kind === 'lower-limit');
  return {
    base: hasBase(sheet, score) ? recordText(parts.base) : null,
    maneuvers: parts.maneuvers.map(({ position: at, mark, counts }) => ({
      ...{ position: at, mark: textOf(mark), counts: textOf(counts) },
      penalties: parts.penalties
        .filter((one) => one.position === at)
        .map(({ code, points }) => ({ code, points: recordText(points) })),
      remark: remarks.get(at) ?? null,
    })),
    extras: parts.extras.map(({ code, mark, counts }) => ({
      ...{ code, mark: recordText(mark), counts: recordText(counts) },
    })),
    penalties: parts.penalties
      .filter((one) => one.position === undefined || !marked.has(one.position))
      .map((one) => ({ code: one.code, position: one.position ?? null, points: recordText(one.points) })),
    errorsOfCourse: parts.errorsOfCourse.equals(zero) ? null : recordText(parts.errorsOfCourse),
    ruling: rulingAnswer(parts.ruling, go?.ruling?.remark),
    lowerLimit: limit?.kind === 'lower-limit' ? limit.sum : null,
    maximum: textOf(parts.maximum),
    remark: go?.remark ?? null,
  };
}

function rulingAnswer(
  ruling: JudgeScore['parts']['ruling'],
  remark: string | undefined,
): MarksOfGo['ruling'] {
  if (ruling === undefined) return null;
  const { code, effect } = ruling;
  const takes = effect.kind === 'takes-points-off' ? effect.points : null;
  return { code, effect: effect.kind, takes, remark: remark ?? null };
}

const textOf = (value: Exact | undefined): string | null => (value === undefined ? null : recordText(value));

function hasBase({ kind }: ScoreSheet, score: Exact | undefined): boolean {
  if (kind === 'pattern') return true;
  return (kind === 'one-mark' || kind === 'measured') && score !== undefined;
}
