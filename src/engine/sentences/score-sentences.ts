/** One judge's score part by part, so that whoever reads it can add it up again. */
import type { Exact } from '../numbers/exact.ts';
import { readingText, recordText } from '../numbers/number-text.ts';
import type { JudgeScore, RulingEffect, ScoreFlag, ScoreSheet } from '../sheets/types.ts';
import { figure, type Names, plainNames } from './words.ts';

type ManeuverName = Pick<Names, 'maneuver'>;

/**
 * `Base 70.` `Maneuver 2 (lope to C): +0.5.` `Break of gait, maneuver 2: -3.` `Total 67.5.`
 * The sheet gives the labels of penalties and extra marks.
 */
export function scoreSentences(
  score: JudgeScore,
  sheet: ScoreSheet,
  names: ManeuverName = plainNames,
): readonly string[] {
  return [
    ...baseSentence(score, sheet),
    ...maneuverSentences(score, sheet, names),
    ...score.parts.extras.map((extra) => extraSentence(extra, sheet)),
    ...score.parts.penalties.map((penalty) => penaltySentence(penalty, sheet, names)),
    ...errorsSentence(score, sheet),
    ...rulingSentence(score, sheet),
    ...score.flags.flatMap(flagSentence),
    totalSentence(score, sheet),
  ];
}

const signed = (value: Exact): string => (value.s > 0n && value.n !== 0n ? '+' : '') + readingText(value);
const starting = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const minus = (points: Exact, sheet: ScoreSheet): string =>
  sheet.kind === 'measured' ? `+${readingText(points)} seconds` : readingText(points.neg());

function baseSentence({ parts, score }: JudgeScore, sheet: ScoreSheet): readonly string[] {
  switch (sheet.kind) {
    case 'pattern':
      return [`Base ${readingText(parts.base)}.`];
    case 'one-mark':
      return score === undefined ? [] : [`Mark ${readingText(parts.base)}.`];
    case 'measured':
      return score === undefined ? [] : [`Time ${readingText(parts.base)} seconds.`];
    case 'percentage':
    case 'places':
      return [];
  }
}

function maneuverSentences({ parts }: JudgeScore, sheet: ScoreSheet, names: ManeuverName): readonly string[] {
  const mark = sheet.kind === 'pattern' ? signed : (value: Exact) => readingText(value);
  return parts.maneuvers.map(({ position, mark: given, counts }) => {
    const name = starting(names.maneuver(position));
    if (given === undefined || counts === undefined) return `${name}: not seen${notSeenCounts(counts)}.`;
    return `${name}: ${mark(given)}${counts.equals(given) ? '' : `, counts ${mark(counts)}`}.`;
  });
}

const notSeenCounts = (counts: Exact | undefined): string =>
  counts === undefined ? '; left out, neither a zero nor a fault' : '; counts as not shown';

function extraSentence({ code, mark, counts }: JudgeScore['parts']['extras'][number], sheet: ScoreSheet) {
  const extras =
    sheet.kind === 'pattern' ? sheet.extras : sheet.kind === 'percentage' ? sheet.collectives : [];
  const label = extras.find((one) => one.code === code)?.label ?? code;
  const shown = sheet.kind === 'pattern' ? signed : (value: Exact) => readingText(value);
  return `${starting(label)}: ${shown(mark)}${counts.equals(mark) ? '' : `, counts ${shown(counts)}`}.`;
}

function penaltySentence(
  { code, position, points }: JudgeScore['parts']['penalties'][number],
  sheet: ScoreSheet,
  names: ManeuverName,
): string {
  const penalties = 'penalties' in sheet ? sheet.penalties : [];
  const label = starting(penalties.find((one) => one.code === code)?.label ?? code);
  const where = position === undefined ? '' : `, ${names.maneuver(position)}`;
  return `${label}${where}: ${minus(points, sheet)}.`;
}

function errorsSentence({ parts }: JudgeScore, sheet: ScoreSheet): readonly string[] {
  if (sheet.kind !== 'percentage' || parts.errorsOfCourse.n === 0n) return [];
  const unit = sheet.errorsOfCourse.from === 'percentage' ? ' percent' : '';
  return [`Errors of course: ${readingText(parts.errorsOfCourse.neg())}${unit}.`];
}

function rulingSentence({ parts }: JudgeScore, sheet: ScoreSheet): readonly string[] {
  if (parts.ruling === undefined) return [];
  const { code, effect } = parts.ruling;
  return [`Ruled ${code.replaceAll('-', ' ')}: ${effectWords(effect, sheet)}.`];
}

function effectWords(effect: RulingEffect, sheet: ScoreSheet): string {
  switch (effect.kind) {
    case 'takes-points-off':
      return sheet.kind === 'measured' ? `+${figure(effect.points)} seconds` : `-${figure(effect.points)}`;
    case 'placed-below':
      return 'placed below all who kept the pattern';
    case 'not-placed':
      return 'may not be placed';
    case 'score-stands':
      return 'the score stands';
  }
}

/** Not seen and the ruling are said with their part. */
function flagSentence(flag: ScoreFlag): readonly string[] {
  return flag.kind === 'lower-limit'
    ? [`The parts add up to ${figure(flag.sum)}, which counts as the lowest score of the sheet.`]
    : [];
}

function totalSentence({ score, parts }: JudgeScore, sheet: ScoreSheet): string {
  if (score === undefined) return sheet.kind === 'places' ? 'Ranked, not scored.' : 'No score.';
  if (sheet.kind === 'measured') return `Total ${readingText(score)} seconds.`;
  if (sheet.kind !== 'percentage' || parts.maximum === undefined) return `Total ${readingText(score)}.`;
  return `Total ${readingText(score)} percent of ${recordText(parts.maximum)} points.`;
}
