import { useState } from 'preact/hooks';
import type { Part } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { PaperCard } from './paper-card.ts';

interface WithdrawParts {
  readonly paper: PaperCard;
  readonly again: () => Promise<void>;
}

/** Given up with a reason: it can be taken up again, and then both type it anew. */
export function WithdrawPaper({ paper, again }: WithdrawParts) {
  const { t } = useWords();
  const [open, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const done = () => {
    setOpen(false);
    say(t('office-paper-withdrawn'));
    void again();
  };
  return (
    <p class="buttons">
      <button type="button" class="grave" onClick={() => setOpen(true)}>
        {t('office-paper-withdraw')}
      </button>
      <Modal title={t('office-paper-withdraw-title')} open={open} onClose={() => setOpen(false)}>
        <p>{t('office-paper-withdraw-what')}</p>
        <SendingForm<Part<'PaperCard'>>
          action={t('office-paper-withdraw-yes')}
          grave={true}
          disabled={reason.trim() === ''}
          send={() =>
            ask({ method: 'POST', path: `/v1/paper-cards/${paper.id}/withdrawals`, body: { reason } })
          }
          onDone={done}
          beside={
            <button type="button" onClick={() => setOpen(false)}>
              {t('shared-cancel')}
            </button>
          }
        >
          {(fields) => (
            <TextField
              {...{ label: t('office-paper-withdraw-why'), value: reason, onValue: setReason }}
              fault={fields.get('/reason')}
            />
          )}
        </SendingForm>
      </Modal>
    </p>
  );
}
