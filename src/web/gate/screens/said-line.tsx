import { useWords } from '../../shared/words.tsx';
import { said } from '../said.ts';

/** Stays until the next thing is done: nobody has to be quick to take something back. */
export function SaidLine() {
  const { t } = useWords();
  const what = said.value;
  const undo = what?.undo;
  return (
    <footer class={what === undefined ? 'said is-empty' : 'said'}>
      <p role="status">{what?.text}</p>
      {undo !== undefined && (
        <button type="button" onClick={() => void undo()}>
          {t('gate-undo')}
        </button>
      )}
    </footer>
  );
}
