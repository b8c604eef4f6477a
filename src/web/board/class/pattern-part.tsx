/** The pattern of a class as it hangs at the gate: drawn where it is drawn, and in words. */
import { PatternDrawingFigure } from '../../shared/pattern-drawing.tsx';
import { useWords } from '../../shared/words.tsx';
import type { Pattern } from './class-answer.ts';

export function PatternPart({ pattern }: { readonly pattern: Pattern }) {
  const { t } = useWords();
  return (
    <section class="pinned pattern" aria-labelledby="pattern">
      <h2 id="pattern">{t('board-pattern', { name: pattern.name })}</h2>
      {pattern.drawing !== null && <PatternDrawingFigure drawing={pattern.drawing} />}
      <ol class="maneuvers">
        {pattern.maneuvers.map(({ position, name, description }) => (
          <li key={position} value={position}>
            {name}
            {description !== null && <span class="note"> {description}</span>}
          </li>
        ))}
      </ol>
    </section>
  );
}
