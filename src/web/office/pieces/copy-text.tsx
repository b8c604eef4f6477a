import { useId, useRef } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { say } from './said.tsx';

/** A text to take along: copied by one press; where the browser copies nothing, it is selected to be copied by hand. */
export function CopyText({ label, text }: { readonly label: string; readonly text: string }) {
  const { t } = useWords();
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      say(t('office-copied'));
    } catch {
      field.current?.select();
      say(t('office-copy-by-hand'));
    }
  };
  return (
    <div class="copy-text">
      <label for={id}>{label}</label>
      <textarea id={id} ref={field} readOnly rows={2} value={text} />
      <button type="button" onClick={() => void copy()}>
        {t('office-copy')}
      </button>
    </div>
  );
}
