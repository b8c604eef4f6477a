/** What was taken off, in figures: "−3 −5". Which faults they were stands in the notes of the go. */
import { figureText } from '../../shared/figure-words.ts';
import { useWords } from '../../shared/words.tsx';

interface Penalties {
  readonly penalties: readonly { readonly points: string }[];
}

export function PenaltyPoints({ penalties }: Penalties) {
  const { t, language } = useWords();
  if (penalties.length === 0) return null;
  return (
    <span class="penalty">
      <span class="heard">{t('board-penalty')} </span>
      {penalties.map(({ points }) => `−${figureText(points, language)}`).join(' ')}
    </span>
  );
}
