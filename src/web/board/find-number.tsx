/** From the board to one's own number: a form that works without a script. */
import { useWords } from '../shared/words.tsx';

export function FindNumber({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  return (
    <search>
      <form class="find" action={`/shows/${showId}/find`}>
        <label>
          <span>{t('board-find')}</span>
          <input name="words" autocomplete="off" maxLength={100} required />
        </label>
        <button type="submit">{t('board-find-send')}</button>
      </form>
    </search>
  );
}
