import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import type { Answer, Part } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Outcome } from '../ask.ts';
import { paths } from '../paths.ts';
import { TextField } from '../pieces/field.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';

type Revisions = Answer<'/v1/cards/{cardId}/revisions'>;

interface TakeUpParts {
  readonly showId: string;
  readonly classId: string;
  readonly seat: { readonly id: string; readonly name: string };
  readonly progress: Part<'CardProgress'> | undefined;
  readonly onClose: () => void;
}

/** Takes up the paper of one judge; of a signed card it says why it changes, and names what it amends. */
export function TakeUp({ showId, classId, seat, progress, onClose }: TakeUpParts) {
  const { t } = useWords();
  const [reason, setReason] = useState('');
  const [, goTo] = useLocation();
  const isSigned = progress?.signed != null;
  const send = async (): Promise<Outcome<Part<'PaperCard'>>> => {
    const last = isSigned ? await lastHash(progress.cardId ?? '') : undefined;
    if (last !== undefined && !last.ok) return last;
    const body = {
      seatId: seat.id,
      ...(reason.trim() === '' ? {} : { reason }),
      ...(last === undefined ? {} : { previousHash: last.body }),
    };
    return ask({ method: 'POST', path: `/v1/classes/${classId}/paper-cards`, body });
  };
  return (
    <section class="take-up" aria-label={t('office-paper-take-up-of', { name: seat.name })}>
      <h2>{t(isSigned ? 'office-paper-amend' : 'office-paper-take-up-of', { name: seat.name })}</h2>
      {isSigned && <p class="heed">{t('office-paper-amend-what')}</p>}
      <SendingForm<Part<'PaperCard'>>
        action={t('office-paper-begin')}
        disabled={isSigned && reason.trim() === ''}
        send={send}
        onDone={({ id }) => goTo(paths.paper(showId, id))}
        beside={
          <button type="button" onClick={onClose}>
            {t('shared-cancel')}
          </button>
        }
      >
        {(fields) => (
          <TextField
            {...{
              label: t('office-paper-why'),
              value: reason,
              onValue: setReason,
              fault: fields.get('/reason'),
            }}
            hint={t(isSigned ? 'office-paper-why-amend' : 'office-paper-why-first')}
          />
        )}
      </SendingForm>
    </section>
  );
}

/** Fingerprint of the revision that the paper amends: the last one. */
async function lastHash(cardId: string): Promise<Outcome<string>> {
  const outcome = await ask<Revisions>({ path: `/v1/cards/${cardId}/revisions` });
  if (!outcome.ok) return outcome;
  return { ok: true, body: outcome.body.items.at(-1)?.contentHash ?? '', etag: undefined };
}
