/** The form by which a family asks the office. What is typed stays until it is sent. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { type Draft, forgetDraft, keepDraft, keptDraft, newDraft } from './draft.ts';
import { type Subject, sendQuery } from './send.ts';
import { SendFault } from './send-fault.tsx';
import { useAskingHere } from './use-asking.ts';

const abouts = ['place', 'marks', 'who-rode', 'something-else'] as const;
/** As much as the service takes. */
const mostCharacters = 1000;
/** From then on it says how many are left. */
const fewLeft = 100;

interface Form {
  readonly subject: Subject;
  readonly close: () => void;
}

export function AskForm({ subject, close }: Form) {
  const { t } = useWords();
  const place = `${subject.classId}-${subject.backNumber}`;
  const [draft, setDraft] = useState<Draft>(() => keptDraft(place) ?? newDraft());
  const [fault, setFault] = useState<string>();
  const [sending, setSending] = useState(false);
  const { follow } = useAskingHere();
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => first.current?.focus(), []);
  const change = (changed: Partial<Draft>) => {
    const next = { ...draft, ...changed, key: crypto.randomUUID() };
    setDraft(next);
    keepDraft(place, next);
  };
  const send = async () => {
    if (draft.about === '') return setFault('choose');
    if (draft.words.trim() === '') return setFault('say');
    setSending(true);
    setFault(undefined);
    const sent = await sendQuery(subject, draft);
    setSending(false);
    if (sent.kind === 'refused') return setFault(sent.code);
    forgetDraft(place);
    follow(sent.followCode, subject.classId);
    return close();
  };
  return (
    <form
      class="ask"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!sending) void send();
      }}
    >
      <fieldset>
        <legend>{t('exhibitor-wrong-about')}</legend>
        {abouts.map((about, at) => (
          <label key={about} class="choice">
            <input
              type="radio"
              name="about"
              value={about}
              ref={at === 0 ? first : null}
              checked={draft.about === about}
              onChange={() => change({ about })}
            />
            {t(`exhibitor-about-${about}`)}
          </label>
        ))}
      </fieldset>
      <Words words={draft.words} change={(words) => change({ words })} />
      <Reached reachedBy={draft.reachedBy} change={(reachedBy) => change({ reachedBy })} />
      <SendFault code={fault} />
      <div class="acts">
        <button type="submit" class="main" aria-disabled={sending}>
          {t(sending ? 'exhibitor-wrong-sending' : 'exhibitor-wrong-send')}
        </button>
        <button
          type="button"
          onClick={() => {
            forgetDraft(place);
            close();
          }}
        >
          {t('shared-cancel')}
        </button>
      </div>
    </form>
  );
}

function Words({ words, change }: { readonly words: string; readonly change: (words: string) => void }) {
  const { t } = useWords();
  const id = useId();
  const left = mostCharacters - [...words].length;
  return (
    <div class="field">
      <label for={id}>{t('exhibitor-wrong-words')}</label>
      <p id={`${id}-hint`} class="note">
        {t('exhibitor-wrong-words-hint')}
      </p>
      <textarea
        {...{ id, rows: 5, maxLength: mostCharacters, value: words }}
        aria-describedby={`${id}-hint`}
        onInput={(event) => change(event.currentTarget.value)}
      />
      <p role="status" class="note">
        {left <= fewLeft && t('exhibitor-wrong-left', { count: left })}
      </p>
    </div>
  );
}

interface ToReach {
  readonly reachedBy: string;
  readonly change: (reachedBy: string) => void;
}

function Reached({ reachedBy, change }: ToReach) {
  const { t } = useWords();
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{t('exhibitor-wrong-reached')}</label>
      <input
        {...{ id, maxLength: 200, value: reachedBy, autocomplete: 'off' }}
        aria-describedby={`${id}-hint`}
        onInput={(event) => change(event.currentTarget.value)}
      />
      <p id={`${id}-hint`} class="note">
        {t('exhibitor-wrong-reached-hint')}
      </p>
    </div>
  );
}
