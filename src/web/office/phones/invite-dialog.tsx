import { useEffect, useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { lineBody, useLive } from '../office-state.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { CopyText } from '../pieces/copy-text.tsx';
import { Field } from '../pieces/field.tsx';
import { QrCode } from '../pieces/qr-code.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { useShowClock } from '../use-show.ts';

type Invitation = Answer<'/v1/shows/{showId}/invitations', 'post'>;

export interface Wish {
  readonly role: 'judge' | 'scribe' | 'gate';
  readonly personId?: string;
  /** Whose phone it is to be; the gate is nobody's. */
  readonly name?: string;
}

interface InviteDialogParts {
  readonly showId: string;
  /** `undefined`: closed. */
  readonly wish: Wish | undefined;
  readonly onClose: () => void;
}

/** Makes an invitation and shows its code, large, until a phone has taken it up. */
export function InviteDialog({ showId, wish, onClose }: InviteDialogParts) {
  const { t } = useWords();
  return (
    <Modal
      title={wish === undefined ? '' : t(`office-invite-${wish.role}`, { name: wish.name ?? '' })}
      open={wish !== undefined}
      onClose={onClose}
    >
      {wish !== undefined && <Invite {...{ showId, wish, onClose }} />}
    </Modal>
  );
}

function Invite({ showId, wish, onClose }: InviteDialogParts & { readonly wish: Wish }) {
  const { t } = useWords();
  const [label, setLabel] = useState('');
  const [made, setMade] = useState<Invitation | undefined>(undefined);
  if (made !== undefined) return <Made {...{ made, onClose }} />;
  const { role, personId } = wish;
  const body = {
    role,
    ...(personId === undefined ? {} : { personId }),
    ...(label.trim() === '' ? {} : { label: label.trim() }),
  };
  return (
    <SendingForm<Invitation>
      action={t('office-invite-make')}
      send={() => ask({ method: 'POST', path: `/v1/shows/${showId}/invitations`, body })}
      onDone={setMade}
      beside={
        <button type="button" onClick={onClose}>
          {t('shared-cancel')}
        </button>
      }
    >
      {(fields) => (
        <Field
          {...{ label: t('office-invite-label'), hint: t('office-invite-label-hint') }}
          {...{ value: label, onValue: setLabel, maxLength: 60, fault: fields.get('/label') }}
          autocomplete="off"
        />
      )}
    </SendingForm>
  );
}

function Made({ made, onClose }: { readonly made: Invitation; readonly onClose: () => void }) {
  const { t } = useWords();
  const { time } = useShowClock();
  const taken = useTaken(made.id);
  return (
    <>
      <div role="status">
        {taken ? <p class="good">{t('office-invite-taken')}</p> : <p>{t('office-invite-show')}</p>}
      </div>
      {!taken && (
        <>
          <QrCode svg={made.qrSvg} words={t('office-invite-qr')} />
          <p class="code figures">{made.code}</p>
          <p>{t('office-invite-ends', { time: time(made.endsAt) })}</p>
          <CopyText label={t('office-invite-link')} text={made.link} />
        </>
      )}
      <p class="buttons">
        <button type="button" class="main" onClick={onClose}>
          {t('office-done')}
        </button>
      </p>
    </>
  );
}

/** Did a phone take the invitation up while its code is on the screen? */
function useTaken(invitationId: string): boolean {
  const [taken, setTaken] = useState(false);
  useLive((event) => {
    if (event.type === 'phone.paired' && lineBody(event).invitationId === invitationId) setTaken(true);
  });
  useEffect(() => setTaken(false), [invitationId]);
  return taken;
}
