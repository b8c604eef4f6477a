import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import type { Phone } from '../class/class-answers.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';

interface RevokeParts {
  readonly showId: string;
  /** `undefined`: closed. */
  readonly phone: Phone | undefined;
  readonly onClose: () => void;
}

/** Takes a phone off the show: it cannot be undone, so it is asked once more, with the reason. */
export function RevokeDialog({ showId, phone, onClose }: RevokeParts) {
  const { t } = useWords();
  return (
    <Modal title={t('office-revoke-title')} open={phone !== undefined} onClose={onClose}>
      {phone !== undefined && <Revoke {...{ showId, phone, onClose }} />}
    </Modal>
  );
}

function Revoke({ showId, phone, onClose }: RevokeParts & { readonly phone: Phone }) {
  const { t } = useWords();
  const [why, setWhy] = useState('');
  const send = () =>
    ask<undefined>({
      method: 'DELETE',
      path: `/v1/shows/${showId}/phones/${phone.id}?${new URLSearchParams({ why: why.trim() })}`,
    });
  return (
    <>
      <p>{t('office-revoke-what', { name: phone.personName ?? t('office-gate') })}</p>
      <SendingForm<undefined>
        {...{ action: t('office-revoke-do'), grave: true, send }}
        onDone={() => {
          say(t('office-revoke-done'));
          onClose();
        }}
        beside={
          <button type="button" onClick={onClose}>
            {t('office-revoke-keep')}
          </button>
        }
      >
        {(fields) => (
          <Field
            {...{ label: t('office-revoke-why'), value: why, onValue: setWhy, required: true }}
            {...{ maxLength: 200, autocomplete: 'off', fault: fields.get('query/why') ?? fields.get('/why') }}
          />
        )}
      </SendingForm>
    </>
  );
}
