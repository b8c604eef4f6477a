/** Where the card is, in words, on every screen of its class; and what the service refused. */
import { problemInWords } from '../../shared/problem-words.ts';
import type { DayClass } from '../desk/day-types.ts';
import type { ServiceProblem } from '../desk/desk-types.ts';
import { useParts } from '../parts.tsx';
import { useTimeZone } from '../show.ts';
import { cardStateWords, signalWords } from '../state-words.ts';

export function CardStateLine({ dayClass }: { readonly dayClass: DayClass }) {
  const { desk, words, t } = useParts();
  const timeZone = useTimeZone();
  const { classId } = dayClass;
  const state = desk.stateOf(classId).value;
  const told = { words, timeZone };
  return (
    <section class="card-state" data-is={state.is} aria-label={t('judge-card')}>
      <p role="status">{cardStateWords(state, told)}</p>
      {/* That there is no signal, the notice at the head of the screen says. */}
      {desk.signal.value.is === 'no-answer' ? null : (
        <p class="note">{signalWords(desk.signal.value, told)}</p>
      )}
      {state.is === 'refused' ? <Problem problem={state.problem} /> : null}
      {state.is === 'signature-refused' ? (
        <Problem problem={state.problem} dismiss={() => desk.dismissSignature(classId)} />
      ) : null}
    </section>
  );
}

interface ProblemProps {
  readonly problem: ServiceProblem;
  readonly dismiss?: () => Promise<unknown>;
}

export function Problem({ problem, dismiss }: ProblemProps) {
  const { desk, t, words } = useParts();
  const { what, whatToDo } = problemInWords(problem, words);
  return (
    <div class="fault">
      <strong>{what}</strong>
      <p>{whatToDo}</p>
      <ul>
        {problem.errors?.map(({ field, message }) => (
          <li key={field}>{message}</li>
        ))}
      </ul>
      <div class="pair">
        <button type="button" onClick={() => desk.tryNow()}>
          {t('shared-try-again')}
        </button>
        {dismiss === undefined ? null : (
          <button type="button" onClick={() => void dismiss()}>
            {t('judge-refusal-read')}
          </button>
        )}
      </div>
    </div>
  );
}
