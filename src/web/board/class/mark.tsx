/** One mark: seen as "−1½", heard as "minus 1 and a half". */
import { decimalText, markText, spokenMark } from '../../shared/figure-words.ts';
import { useWords } from '../../shared/words.tsx';
import type { Sheet } from './class-answer.ts';

interface MarkToShow {
  /** `null`: not seen. */
  readonly mark: string | null;
  readonly kind: Sheet['kind'];
}

export function Mark({ mark, kind }: MarkToShow) {
  const words = useWords();
  if (mark === null) return <span class="not-seen">{words.t('board-not-seen')}</span>;
  if (kind !== 'pattern') return <>{decimalText(mark, words.language)}</>;
  return (
    <>
      <span aria-hidden="true">{markText(mark, words.language)}</span>
      <span class="heard">{spokenMark(mark, words)}</span>
    </>
  );
}
