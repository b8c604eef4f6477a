/** No signal, what waits to be sent, and what the service refused. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { problemInWords } from '../../shared/problem-words.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import type { Outgoing } from '../desk/gate-types.ts';
import { useDesk } from '../use-desk.ts';

export function Notices() {
  const desk = useDesk();
  const outgoing = desk.outgoing.value;
  const waiting = outgoing.filter(({ refused }) => refused === null);
  return (
    <div class="notices">
      <SignalLine waiting={waiting} />
      {outgoing.map((item) => item.refused !== null && <RefusedNote key={item.id} item={item} />)}
    </div>
  );
}

/** A change that is out within seconds is not worth a notice. */
const slowAfter = 4_000;

function useIsSlow(first: Outgoing | undefined): boolean {
  const slow = useSignal<string | undefined>(undefined);
  useEffect(() => {
    if (first === undefined) return;
    const left = slowAfter - (Date.now() - Date.parse(first.madeAt));
    const timer = setTimeout(() => (slow.value = first.id), Math.max(0, left));
    return () => clearTimeout(timer);
  }, [first?.id, slow]);
  return first !== undefined && slow.value === first.id;
}

function SignalLine({ waiting }: { readonly waiting: readonly Outgoing[] }) {
  const words = useWords();
  const { t, language } = words;
  const desk = useDesk();
  const { kind, heardAt } = desk.hearing.value;
  const isLost = kind === 'lost';
  const isSlow = useIsSlow(waiting[0]);
  const time = heardAt?.toLocaleTimeString(language, { timeStyle: 'short' });
  const seen = time === undefined ? t('gate-no-signal') : t('gate-no-signal-since', { time });
  return (
    <div role="status">
      {(isLost || isSlow) && (
        <div class="heed">
          {isLost && <p>{seen}</p>}
          {waiting.length > 0 && (
            <>
              <p>
                <strong>{t('gate-unsent', { count: waiting.length })}</strong> {t('gate-unsent-what')}
              </p>
              <ul>
                {waiting.map((item) => (
                  <li key={item.id}>{changeInWords(item, words)}</li>
                ))}
              </ul>
            </>
          )}
          <button type="button" onClick={() => void desk.tryNow()}>
            {t('shared-try-again')}
          </button>
        </div>
      )}
    </div>
  );
}

function RefusedNote({ item }: { readonly item: Outgoing }) {
  const words = useWords();
  const desk = useDesk();
  if (item.refused === null) return null;
  const { what, whatToDo } = problemInWords(item.refused, words);
  return (
    <div class="fault" role="alert">
      <strong>{words.t('gate-refused', { change: changeInWords(item, words) })}</strong>
      <p>
        {what} {whatToDo}
      </p>
      <button type="button" onClick={() => void desk.drop(item.id)}>
        {words.t('gate-put-away')}
      </button>
    </div>
  );
}

/** "Class 4: 107 scratched" */
export function changeInWords({ change, classNumber }: Outgoing, { t }: Words): string {
  switch (change.kind) {
    case 'call':
      return t('gate-change-call', { number: classNumber });
    case 'order':
      return t('gate-change-order', { number: classNumber });
    case 'status': {
      const status = t(`shared-status-${change.status}`);
      return t('gate-change-status', { number: classNumber, backNumber: `${change.backNumber}`, status });
    }
  }
}
