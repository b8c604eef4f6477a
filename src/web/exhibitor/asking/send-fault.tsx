/** Why it was not sent, and what to do; read aloud when it comes. */
import { useWords } from '../../shared/words.tsx';

export function SendFault({ code }: { readonly code: string | undefined }) {
  const { t, find } = useWords();
  const id = `exhibitor-wrong-${code}`;
  const known = code !== undefined && find(id) !== undefined ? id : 'exhibitor-wrong-other';
  const whatToDo = find(`${known}-what`);
  return (
    <div role="alert">
      {code !== undefined && (
        <p class="fault">
          <strong>{t(known)}</strong>
          {whatToDo !== undefined && ` ${whatToDo}`}
        </p>
      )}
    </div>
  );
}
