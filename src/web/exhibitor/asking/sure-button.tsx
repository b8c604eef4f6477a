/** For what cannot be undone: the first press says what it does, the second does it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';

interface Sure {
  readonly what: string;
  /** What cannot be undone about it. */
  readonly sure: string;
  readonly yes: string;
  readonly act: () => void;
}

export function SureButton({ what, sure, yes, act }: Sure) {
  const { t } = useWords();
  const [asks, setAsks] = useState(false);
  const way = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (asks) way.current?.focus();
  }, [asks]);
  if (!asks) {
    return (
      <button type="button" onClick={() => setAsks(true)}>
        {what}
      </button>
    );
  }
  return (
    <fieldset class="sure">
      <legend class="heard">{what}</legend>
      <p>{sure}</p>
      <div class="acts">
        <button type="button" class="grave" onClick={act}>
          {yes}
        </button>
        <button type="button" ref={way} onClick={() => setAsks(false)}>
          {t('shared-cancel')}
        </button>
      </div>
    </fieldset>
  );
}
