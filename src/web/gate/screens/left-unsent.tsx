/** The pairing has ended, and some changes were never sent: somebody must read them before they go. */
import { useContext } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { DeskContext } from '../use-desk.ts';
import { changeInWords } from './notices.tsx';

export function LeftUnsent() {
  const words = useWords();
  const desk = useContext(DeskContext);
  const left = desk?.outgoing.value ?? [];
  if (desk === undefined || left.length === 0) return null;
  const putAway = async () => {
    for (const { id } of left) await desk.drop(id);
  };
  return (
    <div class="heed">
      <p>
        <strong>{words.t('gate-left-unsent')}</strong>
      </p>
      <ul>
        {left.map((item) => (
          <li key={item.id}>
            {changeInWords(item, words)}
            {item.change.kind !== 'call' && item.change.reason !== null && ` (${item.change.reason})`}
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => void putAway()}>
        {words.t('gate-put-away')}
      </button>
    </div>
  );
}
