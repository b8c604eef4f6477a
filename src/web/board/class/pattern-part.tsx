/** The pattern of a class in words, as it hangs at the gate. */
import { useWords } from '../../shared/words.tsx';
import type { Pattern } from './class-answer.ts';

export function PatternPart({ pattern }: { readonly pattern: Pattern }) {
  const { t } = useWords();
  return (
    <section class="pinned pattern" aria-labelledby="pattern">
      <h2 id="pattern">{t('board-pattern', { name: pattern.name })}</h2>
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
