import { useEffect, useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { useAsked } from '../use-asked.ts';
import type { ClassInHand } from './class-entries-screen.tsx';
import { combinePreview } from './class-moves.ts';
import { ClassTicks } from './class-ticks.tsx';
import { takesEntries } from './open-classes.ts';
import type { ClassEntry } from './statuses.ts';

type Relations = Answer<'/v1/shows/{showId}/classes/{classId}/combinations', 'post'>;
type Board = Answer<'/v1/shows/{showId}/board'>;

/** Other classes join this one. They cannot be taken apart again, so what happens stands there before. */
export function CombineClasses({ showId, classId, ofClass, entries, again }: ClassInHand) {
  const { t } = useWords();
  const board = useAsked<Board>(`/v1/shows/${showId}/board`);
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [reason, setReason] = useState('');
  const { joining, refused } = useEntriesOf(showId, chosen);
  const { join, inBoth } = combinePreview(entries, joining);
  const others = (board.body?.classes ?? [])
    .filter((one) => one.id !== classId && takesEntries(one))
    .toSorted((a, b) => a.number - b.number);
  const known = joining.length === chosen.length;
  const done = () => {
    say(t('office-entries-combine-done', { count: join.length, number: ofClass.number }));
    setChosen([]);
    setReason('');
    void again();
  };
  return (
    <details>
      <summary>{t('office-entries-combine')}</summary>
      <p class="note">{t('office-entries-combine-what', { number: ofClass.number })}</p>
      <SendingForm<Relations>
        action={t('office-entries-combine-do')}
        label={t('office-entries-combine')}
        grave={true}
        disabled={chosen.length === 0 || !known || reason.trim() === ''}
        send={() =>
          ask({
            ...{ method: 'POST', path: `/v1/shows/${showId}/classes/${classId}/combinations` },
            body: { classIds: chosen, reason },
          })
        }
        onDone={done}
      >
        {(fields) => (
          <>
            <ClassTicks {...{ classes: others, chosen, onChosen: setChosen }} />
            <FaultNote words={refused?.words} />
            <TextField
              {...{ label: t('office-entries-why'), hint: t('office-entries-why-hint'), value: reason }}
              {...{ onValue: setReason, fault: fields.get('/reason') }}
            />
            {chosen.length > 0 && known && (
              <p class="preview" role="status">
                {t('office-entries-combine-preview', {
                  ...{ joining: join.length, number: ofClass.number, both: inBoth.length },
                  who: join.map(({ backNumber }) => backNumber).join(', '),
                  twice: inBoth.map(({ backNumber }) => backNumber).join(', '),
                })}
              </p>
            )}
          </>
        )}
      </SendingForm>
    </details>
  );
}

interface Joining {
  readonly joining: readonly (readonly ClassEntry[])[];
  readonly refused: Refused | undefined;
}

const nobody: Joining = { joining: [], refused: undefined };

/** The entries of the classes that are to join, for the preview. */
function useEntriesOf(showId: string, classIds: readonly string[]): Joining {
  const [found, setFound] = useState<Joining>(nobody);
  useEffect(() => {
    let left = false;
    setFound(nobody);
    const paths = classIds.map((id) => `/v1/shows/${showId}/classes/${id}/entries`);
    void Promise.all(paths.map((path) => ask<{ items: ClassEntry[] }>({ path }))).then((answers) => {
      if (left) return;
      const joining = answers.flatMap((answer) => (answer.ok ? [answer.body.items] : []));
      const refused = answers.find((answer) => !answer.ok);
      setFound({ joining, refused: refused?.ok === false ? refused : undefined });
    });
    return () => {
      left = true;
    };
  }, [showId, classIds.join()]);
  return found;
}
