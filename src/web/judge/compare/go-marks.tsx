/** The marks of a go in a row, or its total. It is made again only when its own go changes. */
import { exact } from '../../../engine/numbers/exact.ts';
import { runningScore } from '../../../engine/sheets/score-go.ts';
import { useDerived } from '../derived.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { maneuversOf } from '../entries.ts';
import { markLayout } from '../go/mark-layout.ts';
import { shownScore } from '../go/score-parts.ts';
import { stepName } from '../go/step-words.ts';
import { type Step, writtenAt } from '../go/steps.ts';
import { figure, signedFigure } from '../numbers.ts';
import { useParts } from '../parts.tsx';

interface MarksProps {
  readonly dayClass: DayClass;
  readonly entry: DayEntry;
  readonly steps: readonly Step[];
  readonly totalOnly?: boolean;
}

export function GoMarks({ dayClass, entry, steps, totalOnly = false }: MarksProps) {
  const parts = useParts();
  const { books, words, t } = parts;
  const book = books.of(dayClass.classId).value;
  const go = useDerived(() => book.goOf(entry.classEntryId).value.content, [book, entry]);
  if (totalOnly) {
    return (
      <>{shownScore(dayClass.sheet, runningScore(dayClass.sheet, maneuversOf(dayClass), go), words).total}</>
    );
  }
  const shown = (step: Step): string => {
    const written = writtenAt(go, step);
    if (written === undefined) return '·';
    if (written === 'not-seen') return t('judge-sign-not-seen');
    const value = exact(written);
    return markLayout(step.range).is === 'balance' ? signedFigure(value, words) : figure(value, words);
  };
  return (
    <span class="marks-of-go">
      {steps.map((step, index) => (
        <span key={index} data-penalty={hasPenalty(go, step)}>
          <span class="heard">{stepName(step, parts)}: </span>
          {shown(step)}
          <span class="heard">, </span>
        </span>
      ))}
    </span>
  );
}

const hasPenalty = (
  { penalties = [] }: { penalties?: readonly { position?: number }[] },
  step: Step,
): boolean => step.kind === 'maneuver' && penalties.some(({ position }) => position === step.position);
