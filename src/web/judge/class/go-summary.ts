/** Where a go stands, in a word and a figure: "3 of 7", "71½", "off pattern". */
import { runningScore, scoreGo } from '../../../engine/sheets/score-go.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { DayClass } from '../desk/day-types.ts';
import { maneuversOf } from '../entries.ts';
import { shownScore } from '../go/score-parts.ts';
import { markedSteps, stepsOf } from '../go/steps.ts';
import type { useParts } from '../parts.tsx';

interface GoSummary {
  readonly is: 'blank' | 'under-way' | 'done' | 'ruled';
  readonly words: string;
  readonly figure: string;
}

export function goSummary(
  dayClass: DayClass,
  go: Go,
  { words, speech, t }: Pick<ReturnType<typeof useParts>, 'words' | 'speech' | 't'>,
): GoSummary {
  const { sheet } = dayClass;
  const maneuvers = maneuversOf(dayClass);
  if (Object.keys(go).length === 0) return { is: 'blank', words: '', figure: '' };
  const ruling = go.ruling === undefined ? '' : speech.say(`ruling-${go.ruling.code}`);
  if (sheet.kind === 'places') {
    return go.ruling === undefined
      ? { is: 'under-way', words: t('judge-remark'), figure: '' }
      : { is: 'ruled', words: ruling, figure: '' };
  }
  const figure = shownScore(sheet, runningScore(sheet, maneuvers, go), words).total;
  if (scoreGo(sheet, maneuvers, go).ok) {
    return { is: go.ruling === undefined ? 'done' : 'ruled', words: ruling || t('judge-gate-done'), figure };
  }
  const steps = stepsOf(sheet, maneuvers);
  return {
    is: 'under-way',
    words: t('judge-gate-under-way', { marked: markedSteps(steps, go), of: steps.length }),
    figure,
  };
}
