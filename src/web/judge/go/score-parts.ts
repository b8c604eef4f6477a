/** The running total with its parts, as it stands at the head of a go. Exact; the engine's own reading. */
import { type Exact, sum, zero } from '../../../engine/numbers/exact.ts';
import type { RunningScore } from '../../../engine/sheets/score-go.ts';
import type { ScoreSheet } from '../../../engine/sheets/types.ts';
import type { Words } from '../../shared/words.tsx';
import { decimalFigure, figure, said, signedFigure } from '../numbers.ts';

interface ShownPart {
  /** Id of its words: `judge-part-maneuvers`. */
  readonly label: string;
  readonly text: string;
}

interface ShownScore {
  readonly parts: readonly ShownPart[];
  readonly total: string;
  readonly totalSaid: string;
}

export function shownScore(sheet: ScoreSheet, reading: RunningScore, words: Words): ShownScore {
  const parts = partsOf(sheet, reading, words);
  return { parts, ...totalOf(sheet, reading, words) };
}

function partsOf(sheet: ScoreSheet, { parts }: RunningScore, words: Words): readonly ShownPart[] {
  const [maneuvers, extras] = [counted(parts.maneuvers), counted(parts.extras)];
  const penalties = sum(parts.penalties.map(({ points }) => points));
  const ruling = parts.ruling?.effect.kind === 'takes-points-off' ? parts.ruling.effect.points : undefined;
  const ruled = ruling === undefined ? [] : [{ label: 'judge-part-ruling', text: `−${ruling}` }];
  const part = (label: string, text: string) => ({ label: `judge-part-${label}`, text });
  switch (sheet.kind) {
    case 'pattern':
      return [
        part('base', figure(parts.base, words)),
        part('maneuvers', signedFigure(maneuvers, words)),
        ...(sheet.extras.length === 0 ? [] : [part('form', signedFigure(extras, words))]),
        part('penalties', figure(penalties.neg(), words)),
        ...ruled,
      ];
    case 'percentage':
      return [
        part('movements', figure(maneuvers, words)),
        part('collectives', figure(extras, words)),
        part('errors', figure(parts.errorsOfCourse.neg(), words)),
        part('maximum', figure(parts.maximum ?? zero, words)),
      ];
    case 'one-mark':
      return [
        part('mark', figure(parts.base, words)),
        part('penalties', figure(penalties.neg(), words)),
        ...ruled,
      ];
    case 'measured':
      return [
        part('time', decimalFigure(parts.base, words)),
        part('penalties', signedFigure(penalties, words)),
      ];
    case 'places':
      return [];
  }
}

const counted = (parts: readonly { readonly counts: Exact | undefined }[]): Exact =>
  sum(parts.flatMap(({ counts }) => (counts === undefined ? [] : [counts])));

function totalOf(
  sheet: ScoreSheet,
  { tier, score }: RunningScore,
  words: Words,
): Pick<ShownScore, 'total' | 'totalSaid'> {
  const { t } = words;
  if (tier === 'not-placed') return { total: '—', totalSaid: t('judge-total-barred') };
  if (score === undefined) return { total: '·', totalSaid: t('judge-total-none') };
  if (sheet.kind === 'percentage') {
    const total = t('judge-percent', { figure: decimalFigure(score, words) });
    return { total, totalSaid: total };
  }
  if (sheet.kind === 'measured') {
    const total = t('judge-seconds', { figure: decimalFigure(score, words) });
    return { total, totalSaid: total };
  }
  return { total: figure(score, words), totalSaid: said(score, words) };
}
