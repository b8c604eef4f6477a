import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { changesNames, useAll } from './all-pages.ts';
import type { Entry } from './entry-search.ts';
import { freeNumbers } from './free-numbers.ts';
import { numberIn } from './typed-number.ts';

interface NumberParts {
  readonly showId: string;
  readonly entry: Entry;
  readonly etag: string | undefined;
  readonly again: () => Promise<void>;
}

/** Another back number; who wears it already is said before it is sent. It can be changed back in the same way. */
export function NumberForm({ showId, entry, etag, again }: NumberParts) {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const entries = useAll<Entry>(`/v1/shows/${showId}/entries`, changesNames).body ?? [];
  const number = numberIn(typed);
  const wearer = entries.find(({ backNumber, id }) => backNumber === number && id !== entry.id);
  const { next } = freeNumbers(entries.map(({ backNumber }) => backNumber));
  const done = (body: Entry) => {
    setTyped('');
    say(t('office-entries-number-changed', { before: entry.backNumber, number: body.backNumber }));
    void again();
  };
  return (
    <SendingForm<Entry>
      action={t('office-entries-change')}
      disabled={number === undefined || number === entry.backNumber || wearer !== undefined}
      send={() =>
        ask({
          ...{ method: 'PATCH', path: `/v1/shows/${showId}/entries/${entry.id}` },
          ...{ body: { backNumber: number }, ifMatch: etag },
        })
      }
      onDone={done}
      onRefused={({ code }) => code === 'stale_version' && void again()}
    >
      {(fields) => (
        <Field
          {...{ label: t('office-entries-new-number'), value: typed, onValue: setTyped }}
          {...{ inputMode: 'numeric', autocomplete: 'off', maxLength: 5 }}
          hint={t('office-entries-next-free', { number: next })}
          fault={
            wearer === undefined
              ? fields.get('/backNumber')
              : t('office-entries-taken', {
                  ...{
                    number: wearer.backNumber,
                    exhibitor: wearer.exhibitor.name,
                    horse: wearer.horse.name,
                  },
                })
          }
        />
      )}
    </SendingForm>
  );
}
