import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { dayOf } from '../pieces/moments.ts';
import { useOnce } from '../pieces/sending-form.tsx';
import { ConsentForm } from './consent-form.tsx';
import type { Exhibitor } from './entry-screen.tsx';

type Recorded = Answer<'/v1/shows/{showId}/exhibitors/{exhibitorId}/consents'>;

export interface ConsentParts {
  readonly showId: string;
  readonly exhibitorId: string;
  /** Asks for the exhibitor again. */
  readonly again: () => Promise<void>;
}

interface Opened {
  readonly recorded: Recorded['items'];
  readonly exhibitor: Exhibitor;
}

/** Closed until somebody opens it: who looks at it leaves a line in the ledger, and it is asked for once. */
export function Consents({ showId, exhibitorId, again }: ConsentParts) {
  const { t } = useWords();
  const [opened, setOpened] = useState<Opened | undefined>(undefined);
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const { busy, once } = useOnce();
  const path = `/v1/shows/${showId}/exhibitors/${exhibitorId}`;
  const open = () =>
    once(async () => {
      setRefused(undefined);
      const exhibitor = await ask<Exhibitor>({ path });
      if (!exhibitor.ok) return setRefused(exhibitor);
      const recorded = await ask<Recorded>({ path: `${path}/consents` });
      if (!recorded.ok) return setRefused(recorded);
      setOpened({ recorded: recorded.body.items, exhibitor: exhibitor.body });
    });
  if (opened === undefined) {
    return (
      <>
        <p class="heed">{t('office-entries-consents-line')}</p>
        <FaultNote words={refused?.words} />
        <p class="buttons">
          <button type="button" aria-disabled={busy} onClick={() => void open()}>
            {t('office-entries-consents-open')}
          </button>
        </p>
      </>
    );
  }
  const added = (consent: Recorded['items'][number]) => {
    setOpened({ ...opened, recorded: [...opened.recorded, consent] });
    void again();
  };
  return (
    <>
      <OpenedConsents {...opened} />
      <ConsentForm {...{ showId, exhibitorId, onRecorded: added }} />
      <p class="buttons">
        <button type="button" onClick={() => setOpened(undefined)}>
          {t('office-entries-consents-close')}
        </button>
      </p>
    </>
  );
}

/** The last one holds. */
function OpenedConsents({ recorded, exhibitor }: Opened) {
  const { t, language } = useWords();
  return (
    <>
      <p>
        {exhibitor.bornOn === null
          ? t('office-entries-born-unknown')
          : t('office-entries-born', { day: dayOf(exhibitor.bornOn, language) })}
      </p>
      {recorded.length === 0 ? (
        <p class="note">{t('office-entries-no-consent')}</p>
      ) : (
        <ol class="lines">
          {recorded.map((consent, index) => (
            <li key={consent.id}>
              {index === recorded.length - 1 && <strong>{t('office-entries-consent-holds')} </strong>}
              {t(`office-entries-name-${consent.publicName}`)}
              <span class="note">
                {' '}
                {t('office-entries-consent-by', {
                  who: t(`office-entries-giver-${consent.givenBy}`),
                  day: dayOf(consent.givenOn, language),
                  how: t(`office-entries-how-${consent.how}`),
                })}
              </span>
            </li>
          ))}
        </ol>
      )}
    </>
  );
}
