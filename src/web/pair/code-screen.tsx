/** The code of the show office is typed, or came with the link. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../shared/words.tsx';
import { asWritten, isWhole } from './code.ts';
import { Fault } from './fault.tsx';
import type { InTheWay } from './pairing.ts';
import { Screen } from './screen.tsx';

interface CodeScreenProps {
  /** Of the link; empty: none. */
  readonly given: string;
  readonly because: InTheWay | undefined;
  readonly busy: boolean;
  readonly onPair: (code: string) => void;
}

export function CodeScreen({ given, because, busy, onPair }: CodeScreenProps) {
  const { t } = useWords();
  const [code, setCode] = useState(given);
  const [refused, setRefused] = useState(because);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => setCode(given), [given]);
  useEffect(() => {
    setRefused(because);
    if (because !== undefined) field.current?.focus();
  }, [because]);
  const type = (input: HTMLInputElement) => {
    setRefused(undefined);
    setCode(input.selectionStart === input.value.length ? asWritten(input.value) : input.value);
  };
  const send = () => {
    const written = asWritten(code);
    setCode(written);
    if (isWhole(written)) return onPair(written);
    setRefused({ code: 'code_not_whole' });
    field.current?.focus();
  };
  return (
    <Screen name="ask-code" title={t('pair-title')}>
      <p>{t('pair-code-why')}</p>
      <form
        id="code-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          send();
        }}
      >
        <div class="code-field">
          <label for="code">{t('pair-code')}</label>
          <input
            id="code"
            name="code"
            type="text"
            inputMode="text"
            autoCapitalize="characters"
            autoComplete="off"
            autoCorrect="off"
            spellcheck={false}
            enterKeyHint="go"
            placeholder={t('pair-code-like')}
            aria-describedby="code-hint code-fault"
            aria-invalid={refused === undefined ? undefined : 'true'}
            required
            ref={field}
            value={code}
            onInput={({ currentTarget }) => type(currentTarget)}
          />
          <p class="note" id="code-hint">
            {t('pair-code-hint')}
          </p>
        </div>
      </form>
      <Fault id="code-fault" because={refused} />
      <div class="reach">
        <p class="note">{t('pair-key-stays')}</p>
        <button class="main" id="pair" type="submit" form="code-form" disabled={busy}>
          {t('pair-pair')}
        </button>
      </div>
    </Screen>
  );
}
