import type { Answer } from '../../shared/api.ts';
import type { LiveEvent } from '../../shared/live.ts';
import { useWords } from '../../shared/words.tsx';
import { Part } from '../pieces/part.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { session } from '../session.ts';
import { type AskedFor, useAsked } from '../use-asked.ts';
import { useMayWrite } from '../use-show.ts';
import { changesNames } from './all-pages.ts';
import { Consents } from './consents.tsx';
import './entries.css';
import { ClassesOfEntry } from './classes-of-entry.tsx';
import type { Entry } from './entry-search.ts';
import { EraseName } from './erase-name.tsx';
import { NumberForm } from './number-form.tsx';
import { SpokenNames } from './spoken-names.tsx';

export type Exhibitor = Answer<'/v1/shows/{showId}/exhibitors/{exhibitorId}'>;
export type NumberAnswer = Answer<'/v1/shows/{showId}/numbers/{backNumber}'>;

interface Address {
  readonly showId: string;
  readonly entryId: string;
}

/** Of each entry what the work needs, and of its rider no more than that: her age is opened where it matters. */
export function EntryScreen({ showId, entryId }: Address) {
  const asked = useAsked<Entry>(`/v1/shows/${showId}/entries/${entryId}`, { on: changesNames });
  return (
    <div class="entries">
      <Shown asked={asked}>{(entry) => <Everything {...{ showId, entry, asked }} />}</Shown>
    </div>
  );
}

interface EverythingParts {
  readonly showId: string;
  readonly entry: Entry;
  readonly asked: AskedFor<Entry>;
}

function Everything({ showId, entry, asked }: EverythingParts) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  const { backNumber, exhibitor, horse } = entry;
  const rider = useAsked<Exhibitor>(`/v1/shows/${showId}/exhibitors/${exhibitor.id}`, { on: changesNames });
  const number = useAsked<NumberAnswer>(`/v1/shows/${showId}/numbers/${backNumber}`, { on: changesClasses });
  const isErased = rider.body !== undefined && rider.body.erasedAt !== null;
  return (
    <>
      <ScreenHead title={t('office-entries-entry', { number: backNumber })}>
        <p>
          {isErased ? t('office-entries-erased-name') : exhibitor.name} · {horse.name}
          {entry.owner !== null && ` · ${t('office-entries-owner', { name: entry.owner.name })}`}
        </p>
      </ScreenHead>
      <Part title={t('office-entries-classes')}>
        <Shown asked={number}>
          {({ classes }) => <ClassesOfEntry {...{ showId, entry, classes, again: number.again }} />}
        </Shown>
      </Part>
      {mayWrite && !isErased && (
        <>
          <Part title={t('office-entries-change-number')}>
            <NumberForm {...{ showId, entry, etag: asked.etag, again: asked.again }} />
          </Part>
          <Part title={t('office-entries-spoken')}>
            <Shown asked={rider}>
              {(body) => <SpokenNames {...{ showId, entry, exhibitor: body, rider }} />}
            </Shown>
          </Part>
          <Part title={t('office-entries-consents')}>
            <Consents {...{ showId, exhibitorId: exhibitor.id, again: rider.again }} />
          </Part>
          {session.value?.account.duty === 'manager' && (
            <Part title={t('office-entries-erase')}>
              <EraseName {...{ showId, entry, again: rider.again }} />
            </Part>
          )}
        </>
      )}
    </>
  );
}

const changesClasses = (event: LiveEvent): boolean =>
  changesNames(event) || /^(class-entry|class|order|result)\./.test(event.type ?? '');
