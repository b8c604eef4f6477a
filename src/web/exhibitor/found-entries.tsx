/** Who answers to the words, each with its classes and what is posted. */
import { Who } from '../board/class/who.tsx';
import { useWords } from '../shared/words.tsx';
import type { Found } from './look-up-address.ts';
import { PlaceWords } from './place-words.tsx';

interface ToShow {
  readonly show: { readonly id: string };
  readonly words: string;
  readonly found: Found | undefined;
}

export function FoundEntries({ show, words, found }: ToShow) {
  const { t } = useWords();
  const entries = found?.entries ?? [];
  if (entries.length === 0) {
    return (
      <div class="none-found">
        <p>{t('exhibitor-found-none', { words })}</p>
        <p class="note">{t('exhibitor-found-none-what')}</p>
      </div>
    );
  }
  return (
    <>
      <p class="note">{t('exhibitor-found', { count: entries.length, words })}</p>
      {found?.more && <p class="heed">{t('exhibitor-found-more', { count: entries.length })}</p>}
      <ul class="lines found">
        {entries.map((entry) => (
          <FoundEntry key={entry.backNumber} showId={show.id} entry={entry} />
        ))}
      </ul>
    </>
  );
}

interface EntryToShow {
  readonly showId: string;
  readonly entry: Found['entries'][number];
}

function FoundEntry({ showId, entry: { backNumber, name, horse, classes } }: EntryToShow) {
  const { t } = useWords();
  return (
    <li>
      <a class="found-entry" href={`/shows/${showId}/numbers/${backNumber}`}>
        <span class="worn figures">
          <span class="heard">{t('exhibitor-back-number')} </span>
          {backNumber}
        </span>
        <span>
          <Who {...{ name, horse }} />
        </span>
      </a>
      {classes.length === 0 && <p class="note">{t('exhibitor-no-classes')}</p>}
      <ul class="its-classes">
        {classes.map((line) => (
          <li key={line.classEntryId}>
            <span class="figures">{line.number}</span> {line.name}: <PlaceWords line={line} />
          </li>
        ))}
      </ul>
    </li>
  );
}
