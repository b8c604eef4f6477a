import { useId, useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { type Outcome, outcomes, type Query } from './inbox.ts';

type Answered = Answer<'/v1/queries/{queryId}/answers', 'post'>;

interface AnswerParts {
  readonly query: Query;
  readonly again: () => Promise<void>;
  readonly onDone: () => void;
}

/** What came of it, and the words for the family. It changes no result: a correction is a posting of its own. */
export function AnswerForm({ query, again, onDone }: AnswerParts) {
  const { t } = useWords();
  const [words, setWords] = useState('');
  const [outcome, setOutcome] = useState<Outcome | undefined>(undefined);
  const done = () => {
    setWords('');
    setOutcome(undefined);
    say(t('office-queries-sent', { number: query.class.number }));
    onDone();
    void again();
  };
  return (
    <SendingForm<Answered>
      action={t('office-queries-send')}
      label={t('office-queries-answer-to', { number: query.class.number })}
      disabled={words.trim() === '' || outcome === undefined}
      send={() => ask({ method: 'POST', path: `/v1/queries/${query.id}/answers`, body: { words, outcome } })}
      onDone={done}
      onRefused={({ code }) => code === 'query_closed' && void again()}
    >
      {(fields) => (
        <>
          <OutcomeField outcome={outcome} onOutcome={setOutcome} fault={fields.get('/outcome')} />
          <TextField
            {...{ label: t('office-queries-words'), hint: t('office-queries-words-hint') }}
            {...{ value: words, onValue: setWords, maxLength: 2000, fault: fields.get('/words') }}
          />
        </>
      )}
    </SendingForm>
  );
}

interface OutcomeParts {
  readonly outcome: Outcome | undefined;
  readonly onOutcome: (outcome: Outcome) => void;
  readonly fault: string | undefined;
}

/** Nothing is chosen beforehand: it is said to a family. */
function OutcomeField({ outcome, onOutcome, fault }: OutcomeParts) {
  const { t } = useWords();
  const name = useId();
  return (
    <fieldset class="outcomes">
      <legend>{t('office-queries-outcome')}</legend>
      {outcomes.map((one) => (
        <label key={one}>
          <input type="radio" {...{ name, checked: outcome === one }} onChange={() => onOutcome(one)} />
          <span>
            {t(`office-queries-outcome-${one}`)}
            <span class="note"> {t(`office-queries-outcome-${one}-what`)}</span>
          </span>
        </label>
      ))}
      {fault !== undefined && <p class="field-fault">{fault}</p>}
    </fieldset>
  );
}
