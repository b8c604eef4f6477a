import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { ChoiceField, Field } from '../pieces/field.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { Entry } from './entry-search.ts';
import { numberIn } from './typed-number.ts';

type Erasure = Answer<'/v1/shows/{showId}/exhibitors/{exhibitorId}/erasures', 'post'>;

interface EraseParts {
  readonly showId: string;
  readonly entry: Entry;
  readonly again: () => Promise<void>;
}

/** For good: so the dialog says what goes, what stays, and asks for the back number once more. */
export function EraseName({ showId, entry, again }: EraseParts) {
  const { t } = useWords();
  const [open, setOpen] = useState(false);
  const [erased, setErased] = useState<Erasure | undefined>(undefined);
  if (erased !== undefined) return <Erased erasure={erased} />;
  const done = (erasure: Erasure) => {
    setOpen(false);
    setErased(erasure);
    void again();
  };
  return (
    <>
      <p>{t('office-entries-erase-what')}</p>
      <p class="buttons">
        <button type="button" class="grave" onClick={() => setOpen(true)}>
          {t('office-entries-erase-begin')}
        </button>
      </p>
      <Modal title={t('office-entries-erase-title')} open={open} onClose={() => setOpen(false)}>
        <EraseForm {...{ showId, entry, onErased: done, onClose: () => setOpen(false) }} />
      </Modal>
    </>
  );
}

const reasons = ['asked-by-family', 'asked-by-exhibitor', 'authority', 'entered-in-error'] as const;

interface FormParts extends Omit<EraseParts, 'again'> {
  readonly onErased: (erasure: Erasure) => void;
  readonly onClose: () => void;
}

function EraseForm({ showId, entry, onErased, onClose }: FormParts) {
  const { t } = useWords();
  const [reason, setReason] = useState<(typeof reasons)[number]>('asked-by-family');
  const [typed, setTyped] = useState('');
  const [withOwner, setWithOwner] = useState(false);
  const { exhibitor, owner, backNumber } = entry;
  return (
    <SendingForm<Erasure>
      action={t('office-entries-erase-yes')}
      grave={true}
      disabled={numberIn(typed) !== backNumber}
      send={() =>
        ask({
          ...{ method: 'POST', path: `/v1/shows/${showId}/exhibitors/${exhibitor.id}/erasures` },
          body: {
            reason,
            backNumber: numberIn(typed),
            ownerIds: withOwner && owner !== null ? [owner.id] : [],
          },
        })
      }
      onDone={onErased}
      beside={
        <button type="button" onClick={onClose}>
          {t('shared-cancel')}
        </button>
      }
    >
      {(fields) => (
        <>
          <ul class="plain-list">
            <li>{t('office-entries-erase-goes')}</li>
            <li>{t('office-entries-erase-stays')}</li>
            <li>{t('office-entries-erase-never')}</li>
          </ul>
          <ChoiceField
            {...{ label: t('office-entries-erase-why'), value: reason, onValue: setReason }}
            choices={reasons.map((value) => ({ value, label: t(`office-entries-erase-${value}`) }))}
          />
          {owner !== null && (
            <label class="tick">
              <input
                type="checkbox"
                checked={withOwner}
                onChange={({ currentTarget }) => setWithOwner(currentTarget.checked)}
              />
              {t('office-entries-erase-owner', { name: owner.name })}
            </label>
          )}
          <Field
            {...{ label: t('office-entries-erase-repeat', { number: backNumber }), value: typed }}
            {...{
              onValue: setTyped,
              inputMode: 'numeric',
              autocomplete: 'off',
              fault: fields.get('/backNumber'),
            }}
          />
        </>
      )}
    </SendingForm>
  );
}

/** Words that people wrote themselves are left as they are: somebody has to look at them. */
function Erased({ erasure }: { readonly erasure: Erasure }) {
  const { t } = useWords();
  return (
    <div role="status">
      <p>
        {t('office-entries-erase-done', {
          consents: erasure.consentsRemoved,
          queries: erasure.queriesErased,
        })}
      </p>
      {erasure.stillWritten.length > 0 && (
        <p class="heed">{t('office-entries-erase-still', { count: erasure.stillWritten.length })}</p>
      )}
    </div>
  );
}
