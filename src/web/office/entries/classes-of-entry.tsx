import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { paths } from '../paths.ts';
import { ChoiceField, TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { useAsked } from '../use-asked.ts';
import { useMayWrite } from '../use-show.ts';
import type { NumberAnswer } from './entry-screen.tsx';
import type { Entry } from './entry-search.ts';
import { takesEntries } from './open-classes.ts';

type Board = Answer<'/v1/shows/{showId}/board'>;

interface ClassesParts {
  readonly showId: string;
  readonly entry: Entry;
  readonly classes: NumberAnswer['classes'];
  readonly again: () => Promise<void>;
}

export function ClassesOfEntry({ showId, entry, classes, again }: ClassesParts) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  return (
    <>
      {classes.length === 0 ? (
        <p class="note">{t('office-entries-no-class')}</p>
      ) : (
        <ul class="lines">
          {classes.map(({ classId, number, name, state, status, goPosition, results }) => (
            <li key={classId}>
              <Link href={paths.classEntries(showId, classId)}>
                {t('office-entries-class', { number, name })}
              </Link>{' '}
              <span class="note">
                {t(`shared-status-${status}`)} · {t(`shared-state-${state}`)}
                {goPosition !== null && ` · ${t('office-entries-go', { position: goPosition })}`}
                {results.flatMap(({ place }) =>
                  place === null ? [] : [` · ${t('office-entries-place', { place })}`],
                )}
              </span>
            </li>
          ))}
        </ul>
      )}
      {mayWrite && <EnterClass {...{ showId, entry, classes, again }} />}
    </>
  );
}

function EnterClass({ showId, entry, classes, again }: ClassesParts) {
  const { t } = useWords();
  const board = useAsked<Board>(`/v1/shows/${showId}/board`);
  const [classId, setClassId] = useState('');
  const [reason, setReason] = useState('');
  const entered = new Set(classes.map((one) => one.classId));
  const open = (board.body?.classes ?? []).filter((one) => takesEntries(one) && !entered.has(one.id));
  const chosen = open.find(({ id }) => id === classId);
  if (open.length === 0) return null;
  const done = () => {
    say(t('office-entries-entered', { number: entry.backNumber, count: 1, classes: chosen?.number ?? '' }));
    setClassId('');
    setReason('');
    void again();
  };
  const choices = open
    .toSorted((a, b) => a.number - b.number)
    .map(({ id, number, name }) => ({ value: id, label: t('office-entries-class', { number, name }) }));
  return (
    <SendingForm
      action={t('office-entries-enter')}
      label={t('office-entries-enter-another')}
      disabled={chosen === undefined}
      send={() =>
        ask({
          ...{ method: 'POST', path: `/v1/shows/${showId}/classes/${classId}/entries` },
          body: { entryId: entry.id, reason: reason.trim() === '' ? null : reason },
        })
      }
      onDone={done}
    >
      {(fields) => (
        <>
          <ChoiceField
            {...{ label: t('office-entries-enter-another'), value: classId, onValue: setClassId }}
            {...{ choices: [{ value: '', label: t('office-entries-choose') }, ...choices] }}
            fault={fields.get('/entryId')}
          />
          {chosen !== undefined && chosen.state !== 'setting-up' && (
            <TextField
              {...{ label: t('office-entries-why-late'), hint: t('office-entries-why-late-hint') }}
              {...{ value: reason, onValue: setReason, fault: fields.get('/reason') }}
            />
          )}
        </>
      )}
    </SendingForm>
  );
}
