import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { paths } from '../paths.ts';
import { RuledTable } from '../pieces/ruled-table.tsx';
import type { ClassInHand } from './class-entries-screen.tsx';
import { EntryActions } from './entry-actions.tsx';
import type { ClassEntry } from './statuses.ts';

interface EntriesParts extends ClassInHand {
  readonly mayWrite: boolean;
}

/** In the order of go; who does not go stands below. One line at a time opens for what can be done with it. */
export function EntriesOfClass(parts: EntriesParts) {
  const { t } = useWords();
  const [open, setOpen] = useState<string | undefined>(undefined);
  const { entries, mayWrite } = parts;
  if (entries.length === 0) return <p class="note">{t('office-entries-class-empty')}</p>;
  return (
    <RuledTable caption={t('office-entries-order')}>
      <thead>
        <tr>
          <th scope="col">{t('office-entries-go-head')}</th>
          <th scope="col">{t('office-entries-number')}</th>
          <th scope="col">{t('office-entries-who')}</th>
          {mayWrite && <th scope="col">{t('office-entries-change')}</th>}
        </tr>
      </thead>
      <tbody>
        {entries.map((entry) => (
          <EntryLine
            key={entry.id}
            {...parts}
            entry={entry}
            isOpen={open === entry.id}
            onOpen={() => setOpen(open === entry.id ? undefined : entry.id)}
          />
        ))}
      </tbody>
    </RuledTable>
  );
}

interface LineParts extends EntriesParts {
  readonly entry: ClassEntry;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

function EntryLine({ entry, isOpen, onOpen, ...parts }: LineParts) {
  const { t } = useWords();
  const { id, backNumber, goPosition, status, statusReason, addedLate } = entry;
  const does = status !== 'moved';
  return (
    <>
      <tr class={status === 'entered' || status === 'checked-in' ? '' : 'away'}>
        <td class="figures">{goPosition ?? '–'}</td>
        <th scope="row" class="figures">
          <Link href={paths.entry(parts.showId, entry.entryId)}>{backNumber}</Link>
        </th>
        <td>
          {entry.exhibitor} · {entry.horse}
          <p class="note">
            {[
              t(`shared-status-${status}`),
              ...(addedLate ? [t('office-entries-added-late')] : []),
              ...(statusReason === null ? [] : [statusReason]),
              ...(entry.videoUrl === null ? [] : [t('office-entries-has-video')]),
            ].join(' · ')}
          </p>
        </td>
        {parts.mayWrite && (
          <td>
            {does && (
              <button
                type="button"
                class="small"
                aria-expanded={isOpen}
                aria-controls={`actions-${id}`}
                aria-label={t('office-entries-change-entry', { number: backNumber })}
                onClick={onOpen}
              >
                {t('office-entries-change')}
              </button>
            )}
          </td>
        )}
      </tr>
      {parts.mayWrite && isOpen && does && (
        <tr id={`actions-${id}`}>
          <td colSpan={4}>
            <EntryActions {...parts} entry={entry} onDone={onOpen} />
          </td>
        </tr>
      )}
    </>
  );
}
