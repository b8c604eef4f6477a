import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { paths } from '../paths.ts';
import { Field, TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { changesNames, useAll } from './all-pages.ts';
import type { ClassInHand } from './class-entries-screen.tsx';
import type { Entry } from './entry-search.ts';
import type { ClassEntry } from './statuses.ts';
import { numberIn } from './typed-number.ts';

/** By back number: who it is stands beside it before it is sent. */
export function AddToClass({ showId, classId, ofClass, entries, draws, again }: ClassInHand) {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const [reason, setReason] = useState('');
  const all = useAll<Entry>(`/v1/shows/${showId}/entries`, changesNames).body ?? [];
  const number = numberIn(typed);
  const entry = all.find(({ backNumber }) => backNumber === number);
  const there = entries.find(({ backNumber }) => backNumber === number);
  const isLate = draws.length > 0;
  const done = ({ backNumber }: ClassEntry) => {
    say(t('office-entries-entered', { number: backNumber, count: 1, classes: ofClass.number }));
    setTyped('');
    setReason('');
    void again();
  };
  return (
    <SendingForm<ClassEntry>
      action={t('office-entries-enter')}
      label={t('office-entries-add')}
      disabled={entry === undefined || there !== undefined || (isLate && reason.trim() === '')}
      send={() =>
        ask({
          ...{ method: 'POST', path: `/v1/shows/${showId}/classes/${classId}/entries` },
          body: { entryId: entry?.id, reason: reason.trim() === '' ? null : reason },
        })
      }
      onDone={done}
      onRefused={({ code }) => code === 'already_entered' && void again()}
      beside={<Link href={paths.newEntry(showId)}>{t('office-entries-late')}</Link>}
    >
      {(fields) => (
        <>
          <Field
            {...{ label: t('office-entries-number'), value: typed, onValue: setTyped }}
            {...{ inputMode: 'numeric', autocomplete: 'off', maxLength: 5 }}
            hint={
              entry === undefined
                ? t(number === undefined ? 'office-entries-add-hint' : 'office-entries-nobody', {
                    number: typed,
                  })
                : t('office-entries-is', { exhibitor: entry.exhibitor.name, horse: entry.horse.name })
            }
            fault={
              there === undefined
                ? fields.get('/entryId')
                : t('office-entries-there', { status: t(`shared-status-${there.status}`) })
            }
          />
          {isLate && (
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
