/** One field; it works without a script, and with one it leaves no name in the address. */
import type { TargetedSubmitEvent } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../shared/words.tsx';
import { mostLetters } from './look-up-address.ts';

interface Form {
  readonly showId: string;
  readonly words: string;
  readonly find: (words: string) => void;
}

export function FindForm({ showId, words, find }: Form) {
  const { t } = useWords();
  const id = useId();
  const send = (event: TargetedSubmitEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget).get('words');
    if (typeof typed === 'string') find(typed.trim());
  };
  return (
    <search>
      <form class="finding" action={`/shows/${showId}/find`} onSubmit={send}>
        <label for={id}>{t('exhibitor-find-what')}</label>
        <input
          {...{ id, name: 'words', defaultValue: words, maxLength: mostLetters }}
          autocomplete="off"
          enterkeyhint="search"
          aria-describedby={`${id}-how`}
          required
        />
        <button type="submit" class="main">
          {t('exhibitor-find-send')}
        </button>
        <p id={`${id}-how`} class="note">
          {t('exhibitor-find-how')}
        </p>
      </form>
    </search>
  );
}
