/** A reason in one tap, or in words of one's own. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';

interface ReasonParts {
  readonly label: string;
  /** Ends of the ids of their words: `gate-reason-...`. */
  readonly reasons: readonly string[];
  readonly onReason: (reason: string) => void;
}

const longest = 2_000;

export function ReasonPart({ label, reasons, onReason }: ReasonParts) {
  const { t } = useWords();
  const id = useId();
  const own = useSignal('');
  const words = own.value.trim();
  return (
    <form
      class="reason"
      onSubmit={(event) => {
        event.preventDefault();
        if (words !== '') onReason(words);
      }}
    >
      <p>{label}</p>
      <div class="choices-down">
        {reasons.map((reason) => (
          <button key={reason} type="button" onClick={() => onReason(t(`gate-reason-${reason}`))}>
            {t(`gate-reason-${reason}`)}
          </button>
        ))}
      </div>
      <label for={id}>{t('gate-own-reason')}</label>
      <textarea
        id={id}
        rows={2}
        maxLength={longest}
        value={own.value}
        onInput={({ currentTarget }) => {
          own.value = currentTarget.value;
        }}
      />
      <button type="submit" disabled={words === ''}>
        {t('gate-write-reason')}
      </button>
    </form>
  );
}
