/** One judge's score part by part, so that whoever reads it can add it up again. */
import type { Exact } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import type { JudgeScore, RulingEffect, ScoreFlag, ScoreSheet } from '../sheets/types.ts';
import type { Speech } from './speech.ts';
import { decimal, exactFigure, figure, type Names, oftenSaid, signed } from './words.ts';

/** Who tells it, on which sheet: it gives the labels of penalties and extra marks. */
export interface ScoreTeller {
  readonly speech: Speech;
  readonly names: Pick<Names, 'maneuver'>;
  readonly sheet: ScoreSheet;
}

/** `Base 70.` `Maneuver 2 (lope to C): +0.5.` `Break of gait, maneuver 2: −3.` `Total 67.5.` */
export function scoreSentences(score: JudgeScore, teller: ScoreTeller): readonly string[] {
  return [
    ...baseSentence(score, teller),
    ...maneuverSentences(score, teller),
    ...score.parts.extras.map((extra) => extraSentence(extra, teller)),
    ...score.parts.penalties.map((penalty) => penaltySentence(penalty, teller)),
    ...errorsSentence(score, teller),
    ...rulingSentence(score, teller),
    ...score.flags.flatMap((flag) => flagSentence(flag, teller.speech)),
    totalSentence(score, teller),
  ];
}

function baseSentence({ parts, score }: JudgeScore, { speech, sheet }: ScoreTeller): readonly string[] {
  const base = exactFigure(parts.base, speech);
  switch (sheet.kind) {
    case 'pattern':
      return [speech.say('score-base', { points: base })];
    case 'one-mark':
      return score === undefined ? [] : [speech.say('score-mark', { points: base })];
    case 'measured':
      return score === undefined ? [] : [speech.say('score-time', { seconds: base })];
    case 'percentage':
    case 'places':
      return [];
  }
}

/** Marks of a pattern go up or down from its base and show their sign; those of a test are out of ten. */
const shown = (mark: Exact, { speech, sheet }: ScoreTeller): string =>
  sheet.kind === 'pattern' ? signed(mark, speech) : exactFigure(mark, speech);

interface MarkedPart {
  readonly label: string;
  readonly mark: Exact;
  readonly counts: Exact;
}

function partSentence({ label, mark, counts }: MarkedPart, teller: ScoreTeller): string {
  const { speech, sheet } = teller;
  const key = [sheet.kind, label, mark.toFraction(), counts.toFraction()].join('\n');
  return oftenSaid(key, speech, () => {
    const part = { label, points: shown(mark, teller) };
    return counts.equals(mark)
      ? speech.say('score-part', part)
      : speech.say('score-part-counts', { ...part, counts: shown(counts, teller) });
  });
}

function maneuverSentences({ parts }: JudgeScore, teller: ScoreTeller): readonly string[] {
  return parts.maneuvers.map(({ position, mark, counts }) => {
    const label = teller.names.maneuver(position);
    if (mark !== undefined && counts !== undefined) return partSentence({ label, mark, counts }, teller);
    return teller.speech.say(`score-not-seen-${counts === undefined ? 'left-out' : 'absent'}`, { label });
  });
}

function extraSentence(
  { code, mark, counts }: JudgeScore['parts']['extras'][number],
  teller: ScoreTeller,
): string {
  const { sheet } = teller;
  const extras =
    sheet.kind === 'pattern' ? sheet.extras : sheet.kind === 'percentage' ? sheet.collectives : [];
  const label = labelIn(extras, code, teller.speech);
  return partSentence({ label, mark, counts }, teller);
}

function penaltySentence(
  { code, position, points }: JudgeScore['parts']['penalties'][number],
  { speech, names, sheet }: ScoreTeller,
): string {
  const label = labelIn('penalties' in sheet ? sheet.penalties : [], code, speech);
  const taken =
    sheet.kind === 'measured'
      ? speech.say('score-seconds-more', { points: signed(points, speech) })
      : exactFigure(points.neg(), speech);
  return position === undefined
    ? speech.say('score-part', { label, points: taken })
    : speech.say('score-penalty-at', { label, maneuver: names.maneuver(position), points: taken });
}

/** A sheet is written in one language; what the messages know of its labels is said in the reader's. */
function labelIn(
  parts: readonly { readonly code: string; readonly label: string }[],
  code: string,
  speech: Speech,
): string {
  const label = parts.find((one) => one.code === code)?.label ?? code;
  return labelWords(label, speech);
}

/** `Break of gait, up to 2 strides` is the message `label-break-of-gait-up-to-2-strides`; an unknown label stays. */
export function labelWords(label: string, speech: Speech): string {
  const id = label
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
  return speech.find(`label-${id}`) ?? label;
}

function errorsSentence({ parts }: JudgeScore, { speech, sheet }: ScoreTeller): readonly string[] {
  if (sheet.kind !== 'percentage' || parts.errorsOfCourse.n === 0n) return [];
  const points = exactFigure(parts.errorsOfCourse.neg(), speech);
  const unit = sheet.errorsOfCourse.from === 'percentage' ? 'percent' : 'points';
  return [speech.say(`score-errors-${unit}`, { points })];
}

function rulingSentence({ parts }: JudgeScore, teller: ScoreTeller): readonly string[] {
  if (parts.ruling === undefined) return [];
  const { code, effect } = parts.ruling;
  const ruling = teller.speech.say(`ruling-${code}`);
  return [teller.speech.say('score-ruled', { ruling, effect: effectWords(effect, teller) })];
}

function effectWords(effect: RulingEffect, { speech, sheet }: ScoreTeller): string {
  if (effect.kind !== 'takes-points-off') return speech.say(`effect-${effect.kind}`);
  const points = figure(effect.points, speech);
  return sheet.kind === 'measured'
    ? speech.say('score-seconds-more', { points: speech.say('number-plus', { figure: points }) })
    : speech.say('number-minus', { figure: points });
}

/** Not seen and the ruling are said with their part. */
function flagSentence(flag: ScoreFlag, speech: Speech): readonly string[] {
  return flag.kind === 'lower-limit'
    ? [speech.say('score-lower-limit', { sum: figure(flag.sum, speech) })]
    : [];
}

function totalSentence({ score, parts }: JudgeScore, { speech, sheet }: ScoreTeller): string {
  if (score === undefined) return speech.say(sheet.kind === 'places' ? 'score-ranked' : 'score-none');
  const total = { score: exactFigure(score, speech) };
  if (sheet.kind === 'measured') return speech.say('score-total-seconds', total);
  if (sheet.kind !== 'percentage' || parts.maximum === undefined) return speech.say('score-total', total);
  const maximum = decimal(recordText(parts.maximum), speech);
  return speech.say('score-total-percent', { ...total, maximum });
}
