import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { paths } from '../paths.ts';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { changesNames, useAll } from './all-pages.ts';
import './entries.css';
import type { Exhibitor } from './entry-screen.tsx';
import type { Entry } from './entry-search.ts';
import { LateEntryForm } from './late-entry-form.tsx';

type Horse = Answer<'/v1/shows/{showId}/horses', 'post'>;
type Board = Answer<'/v1/shows/{showId}/board'>;

/** What was entered last, so that it can be looked at again. */
export interface JustEntered {
  readonly entryId: string;
  readonly backNumber: number;
  readonly classes: string;
}

/** A late entry at the desk: all of it in one form, and the next one right after. */
export function LateEntryScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const path = `/v1/shows/${showId}`;
  const entries = useAll<Entry>(`${path}/entries`, changesNames);
  const exhibitors = useAll<Exhibitor>(`${path}/exhibitors`, changesNames);
  const horses = useAll<Horse>(`${path}/horses`, changesNames);
  const board = useAsked<Board>(`${path}/board`);
  const [entered, setEntered] = useState<readonly JustEntered[]>([]);
  return (
    <div class="entries">
      <ScreenHead title={t('office-entries-late')}>
        <p class="note">{t('office-entries-late-what')}</p>
      </ScreenHead>
      {entered.length > 0 && (
        <ul class="lines just" aria-label={t('office-entries-just')}>
          {entered.map(({ entryId, backNumber, classes }) => (
            <li key={entryId}>
              <Link href={paths.entry(showId, entryId)} class="figures">
                {backNumber}
              </Link>{' '}
              {classes === '' ? t('office-entries-in-no-class') : t('office-entries-in-classes', { classes })}
            </li>
          ))}
        </ul>
      )}
      <Shown asked={entries}>
        {(known) => (
          <Shown asked={board}>
            {({ classes }) => (
              <LateEntryForm
                key={entered.length}
                {...{ showId, classes, entries: known }}
                exhibitors={exhibitors.body ?? []}
                horses={horses.body ?? []}
                onEntered={(one) => setEntered([one, ...entered])}
              />
            )}
          </Shown>
        )}
      </Shown>
    </div>
  );
}
