/** The pattern of the class, drawn where it is drawn, with its maneuvers in words. */
import { PatternDrawingFigure } from '../shared/pattern-drawing.tsx';
import { useWords } from '../shared/words.tsx';
import type { Pattern } from './number-answer.ts';

export function PatternPart({ pattern, id }: { readonly pattern: Pattern; readonly id: string }) {
  const { t } = useWords();
  const { name, drawing, maneuvers } = pattern;
  return (
    <details class="pattern" id={`${id}-pattern`}>
      <summary>{t('exhibitor-pattern', { name })}</summary>
      {drawing !== null && <PatternDrawingFigure drawing={drawing} />}
      <ol class="maneuvers">
        {maneuvers.map(({ position, name: what, description }) => (
          <li key={position} value={position}>
            {what}
            {description !== null && <span class="note"> {description}</span>}
          </li>
        ))}
      </ol>
    </details>
  );
}
