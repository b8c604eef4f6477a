import type { FaultWords } from '../../shared/fault-words.ts';
import { useWords } from '../../shared/words.tsx';

interface Faulty {
  readonly words: FaultWords | undefined;
  /** What exactly, point by point. */
  readonly points?: readonly string[];
  readonly again?: (() => void) | undefined;
}

/** What went wrong and what to do, told at once; with `again` it can be tried again. Always there, so that it is heard. */
export function FaultNote({ words, points = [], again }: Faulty) {
  const { t } = useWords();
  return (
    <div role="alert">
      {words !== undefined && (
        <div class="fault">
          <strong>{words.what}</strong> {words.whatToDo}
          {points.map((point) => (
            <p key={point}>{point}</p>
          ))}
          {again !== undefined && (
            <p>
              <button type="button" onClick={again}>
                {t('shared-try-again')}
              </button>
            </p>
          )}
        </div>
      )}
    </div>
  );
}
