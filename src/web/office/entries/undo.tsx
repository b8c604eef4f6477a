/** What was just done to an entry, with the way back, until the next thing is done. */
import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import type { Refused } from '../ask.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { useOnce } from '../pieces/sending-form.tsx';

interface Undoable {
  /** What happened: "214 is scratched." */
  readonly words: string;
  /** Takes it back; resolves with why it could not be. */
  readonly takeBack: () => Promise<Refused | undefined>;
}

const last = signal<Undoable | undefined>(undefined);
const refused = signal<Refused | undefined>(undefined);

export function mayBeUndone(undoable: Undoable): void {
  last.value = undoable;
  refused.value = undefined;
}

export function Undo() {
  const { t } = useWords();
  const { once } = useOnce();
  useEffect(
    () => () => {
      last.value = undefined;
      refused.value = undefined;
    },
    [],
  );
  const undoable = last.value;
  const undo = () =>
    once(async () => {
      const why = await undoable?.takeBack();
      if (why === undefined) last.value = undefined;
      refused.value = why;
    });
  return (
    <div class="undo">
      <p role="status">{undoable?.words}</p>
      {undoable !== undefined && (
        <button type="button" onClick={() => void undo()}>
          {t('office-entries-undo')}
        </button>
      )}
      <FaultNote words={refused.value?.words} />
    </div>
  );
}
