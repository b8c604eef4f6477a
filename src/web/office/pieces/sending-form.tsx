import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { useWords, type Words } from '../../shared/words.tsx';
import type { Outcome, Refused } from '../ask.ts';
import { FaultNote } from './fault-note.tsx';

interface SendingForm<Body> {
  /** On the button that sends. */
  readonly action: string;
  readonly send: () => Promise<Outcome<Body>>;
  readonly onDone: (body: Body) => void;
  /** The fields; they get what the service said of each, by its place in what was sent: `/why`. */
  readonly children?: (fields: ReadonlyMap<string, string>) => ComponentChildren;
  /** Stands beside the button: a second way out. */
  readonly beside?: ComponentChildren;
  readonly grave?: boolean;
  readonly disabled?: boolean;
  /** Called for a refusal, after its words are shown: a screen may look again what changed. */
  readonly onRefused?: (refused: Refused) => void;
  /** Words for a refusal that say it better where the form stands. */
  readonly wordsOf?: (refused: Refused) => Refused['words'];
  readonly label?: string;
}

const noFields: ReadonlyMap<string, string> = new Map();

/** Sends what is typed, once for each press; a refusal stands over the button and leaves what was typed as it is. */
export function SendingForm<Body>(form: SendingForm<Body>) {
  const { action, send, onDone, children, beside, grave = false, disabled = false, wordsOf } = form;
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const words = useWords();
  const { t } = words;
  const { busy, once } = useOnce();
  const worded = (found: Refused) =>
    wordsOf?.(found) ??
    (found.code === 'invalid_request'
      ? { what: found.words.what, whatToDo: t('office-look-at-fields') }
      : found.words);
  const submit = () =>
    once(async () => {
      setRefused(undefined);
      const outcome = await send();
      if (outcome.ok) return onDone(outcome.body);
      setRefused(outcome);
      form.onRefused?.(outcome);
    });
  const refusedWords = refused === undefined ? undefined : worded(refused);
  return (
    <form
      class="sending"
      noValidate
      aria-label={form.label}
      onSubmit={(event) => {
        event.preventDefault();
        if (!disabled) void submit();
      }}
    >
      {children?.(refused === undefined ? noFields : fieldsInWords(refused, words))}
      <FaultNote words={refusedWords} points={refused === undefined ? [] : pointsOf(refused)} />
      <div class="buttons">
        <button type="submit" class={grave ? 'grave' : 'main'} aria-disabled={busy || disabled}>
          {action}
        </button>
        {beside}
      </div>
    </form>
  );
}

/**
 * What is wrong with a field. The service words the form of a field in English alone ("it must be ..."); elsewhere, and
 * where it is a checker's jargon, the hint under the field says what is asked for.
 */
function fieldsInWords({ code, fields }: Refused, { t, language }: Words): ReadonlyMap<string, string> {
  if (code !== 'invalid_request') return fields;
  const worded = (message: string) =>
    language === 'en' && message.startsWith('it must')
      ? t('office-field-as', { message })
      : t('office-field-fault');
  return new Map([...fields].map(([field, message]) => [field, worded(message)]));
}

/** Faults of fields stand at the fields. */
const pointsOf = ({ code, fields }: Refused): string[] =>
  code === 'invalid_request' ? [] : [...fields.values()];

/** Work that a second press does not begin again. The button keeps the focus: it is never disabled for good. */
export function useOnce() {
  const [busy, setBusy] = useState(false);
  const running = useRef(false);
  const once = async (work: () => Promise<void>) => {
    if (running.current) return;
    running.current = true;
    setBusy(true);
    try {
      await work();
    } finally {
      running.current = false;
      setBusy(false);
    }
  };
  return { busy, once };
}
