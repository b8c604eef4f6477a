import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { Shown } from '../pieces/shown.tsx';
import type { AskedFor } from '../use-asked.ts';
import { changesNames, useAll } from './all-pages.ts';
import type { Exhibitor } from './entry-screen.tsx';
import type { Entry } from './entry-search.ts';

type Horse = Answer<'/v1/shows/{showId}/horses', 'post'>;

interface SpokenParts {
  readonly showId: string;
  readonly entry: Entry;
  readonly exhibitor: Exhibitor;
  readonly rider: AskedFor<Exhibitor>;
}

/** For the announcer: how the names are said. */
export function SpokenNames({ showId, entry, exhibitor, rider }: SpokenParts) {
  const { t } = useWords();
  const horses = useAll<Horse>(`/v1/shows/${showId}/horses`, changesNames);
  const path = `/v1/shows/${showId}`;
  return (
    <>
      <SpokenForm<Exhibitor>
        key={`exhibitor ${exhibitor.spokenAs}`}
        {...{
          label: t('office-entries-spoken-exhibitor', { name: exhibitor.name }),
          before: exhibitor.spokenAs,
        }}
        hint={t('office-entries-spoken-hint')}
        send={(spokenAs) =>
          ask({
            ...{ method: 'PATCH', path: `${path}/exhibitors/${exhibitor.id}`, body: { spokenAs } },
            ifMatch: `"${exhibitor.version}"`,
          })
        }
        again={rider.again}
      />
      <Shown asked={horses}>
        {(all) => {
          const spokenAs = all.find(({ id }) => id === entry.horse.id)?.spokenAs ?? null;
          return (
            <SpokenForm<Horse>
              key={`horse ${spokenAs}`}
              {...{ label: t('office-entries-spoken-horse', { name: entry.horse.name }), before: spokenAs }}
              hint={undefined}
              send={(words) =>
                ask({ method: 'PATCH', path: `${path}/horses/${entry.horse.id}`, body: { spokenAs: words } })
              }
              again={horses.again}
            />
          );
        }}
      </Shown>
    </>
  );
}

interface SpokenFormParts<Body> {
  readonly label: string;
  readonly hint: string | undefined;
  readonly before: string | null;
  readonly send: (spokenAs: string | null) => ReturnType<typeof ask<Body>>;
  readonly again: () => Promise<void>;
}

function SpokenForm<Body>({ label, hint, before, send, again }: SpokenFormParts<Body>) {
  const { t } = useWords();
  const [words, setWords] = useState(before ?? '');
  const spoken = words.trim() === '' ? null : words.trim();
  return (
    <SendingForm<Body>
      action={t('office-entries-keep')}
      {...{ label, disabled: spoken === before }}
      send={() => send(spoken)}
      onDone={() => {
        say(t('office-entries-spoken-kept'));
        void again();
      }}
      onRefused={({ code }) => code === 'stale_version' && void again()}
    >
      {(fields) => (
        <Field
          {...{ label, hint, value: words, onValue: setWords, maxLength: 200, autocomplete: 'off' }}
          fault={fields.get('/spokenAs')}
        />
      )}
    </SendingForm>
  );
}
