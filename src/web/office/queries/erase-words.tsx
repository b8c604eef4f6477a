import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { Query } from './inbox.ts';

interface ErasureParts {
  readonly query: Query;
  readonly again: () => Promise<void>;
}

/** Where words must not stay: they are gone for good, so it is asked first. */
export function EraseWords({ query, again }: ErasureParts) {
  const { t } = useWords();
  const [open, setOpen] = useState(false);
  const done = () => {
    setOpen(false);
    say(t('office-queries-erased'));
    void again();
  };
  return (
    <>
      <button type="button" class="grave" onClick={() => setOpen(true)}>
        {t('office-queries-erase')}
      </button>
      <Modal title={t('office-queries-erase-title')} open={open} onClose={() => setOpen(false)}>
        <p>{t('office-queries-erase-what')}</p>
        <SendingForm<Answer<'/v1/queries/{queryId}/erasures', 'post'>>
          action={t('office-queries-erase-yes')}
          grave={true}
          send={() => ask({ method: 'POST', path: `/v1/queries/${query.id}/erasures` })}
          onDone={done}
          beside={
            <button type="button" onClick={() => setOpen(false)}>
              {t('shared-cancel')}
            </button>
          }
        />
      </Modal>
    </>
  );
}
