import { useEffect, useRef, useState } from 'preact/hooks';
import { Link, useLocation, useSearch } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { paths } from '../paths.ts';
import { Field } from '../pieces/field.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useMayWrite } from '../use-show.ts';
import { changesNames, useAll } from './all-pages.ts';
import './entries.css';
import { type Entry, foundEntries } from './entry-search.ts';
import { freeNumbers } from './free-numbers.ts';

/** Everybody of the show by back number; `?number=214` begins with that one. */
export function EntriesScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  const asked = useAll<Entry>(`/v1/shows/${showId}/entries`, changesNames);
  const search = new URLSearchParams(useSearch()).get('number') ?? '';
  return (
    <div class="entries">
      <ScreenHead title={t('office-entries-title')}>
        {mayWrite && (
          <p class="buttons">
            <Link class="button main" href={paths.newEntry(showId)}>
              {t('office-entries-late')}
            </Link>
          </p>
        )}
      </ScreenHead>
      <Shown asked={asked}>{(entries) => <Found key={search} {...{ showId, entries, search }} />}</Shown>
    </div>
  );
}

interface FoundParts {
  readonly showId: string;
  readonly entries: readonly Entry[];
  readonly search: string;
}

function Found({ showId, entries, search }: FoundParts) {
  const { t } = useWords();
  const [words, setWords] = useState(search);
  const [, goTo] = useLocation();
  const found = foundEntries(entries, words);
  const { next, between } = freeNumbers(entries.map(({ backNumber }) => backNumber));
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.querySelector('input')?.focus(), []);
  const openFirst = () => {
    const [first] = found;
    if (words.trim() !== '' && first !== undefined) goTo(paths.entry(showId, first.id));
  };
  return (
    <>
      <div ref={place}>
        <form
          class="look"
          onSubmit={(event) => {
            event.preventDefault();
            openFirst();
          }}
        >
          <Field
            {...{ label: t('office-entries-find'), hint: t('office-entries-find-hint'), value: words }}
            {...{ onValue: setWords, type: 'search', autocomplete: 'off' }}
          />
        </form>
      </div>
      <p class="note" role="status">
        {t('office-entries-count', { found: found.length, all: entries.length })}{' '}
        {t('office-entries-free', { next, between: between.join(', '), count: between.length })}
      </p>
      {entries.length === 0 ? (
        <p class="note">{t('office-entries-none')}</p>
      ) : found.length === 0 ? (
        <p class="note">{t('office-entries-not-found', { words })}</p>
      ) : (
        <EntryTable {...{ showId, entries: found }} />
      )}
    </>
  );
}

function EntryTable({ showId, entries }: Omit<FoundParts, 'search'>) {
  const { t } = useWords();
  return (
    <RuledTable caption={t('office-entries-title')}>
      <thead>
        <tr>
          <th scope="col">{t('office-entries-number')}</th>
          <th scope="col">{t('office-entries-exhibitor')}</th>
          <th scope="col">{t('office-entries-horse')}</th>
        </tr>
      </thead>
      <tbody>
        {entries.map(({ id, backNumber, exhibitor, horse }) => (
          <tr key={id}>
            <th scope="row" class="figures">
              <Link href={paths.entry(showId, id)}>{backNumber}</Link>
            </th>
            <td>{exhibitor.name}</td>
            <td>{horse.name}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
