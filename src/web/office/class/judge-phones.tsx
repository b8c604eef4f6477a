import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { InviteDialog } from '../phones/invite-dialog.tsx';
import { RevokeDialog } from '../phones/revoke-dialog.tsx';
import { useShowClock } from '../use-show.ts';
import type { Phone } from './class-answers.ts';
import type { JudgeLine } from './judge-lines.ts';

/** The phones of a judge and her scribe: pair another, take one off. */
export function JudgePhones({ showId, line }: { readonly showId: string; readonly line: JudgeLine }) {
  const { t } = useWords();
  const { time } = useShowClock();
  const [inviting, invite] = useState<'judge' | 'scribe' | undefined>(undefined);
  const [revoking, revoke] = useState<Phone | undefined>(undefined);
  const { seat, judgePhones, scribePhones } = line;
  const phones = [...judgePhones, ...scribePhones];
  return (
    <>
      {phones.length === 0 && <span class="note">{t('office-phone-none')}</span>}
      <ul class="plain">
        {phones.map((phone) => (
          <li key={phone.id}>
            {t(`office-phone-of-${phone.role}`, { time: time(phone.pairedAt) })}{' '}
            <button type="button" class="small grave" onClick={() => revoke(phone)}>
              {t('office-phone-revoke')}
              <span class="heard"> {seat.name}</span>
            </button>
          </li>
        ))}
      </ul>
      {seat.withdrawnAt === null && (
        <span class="buttons">
          {(['judge', 'scribe'] as const).map((role) => (
            <button key={role} type="button" class="small" onClick={() => invite(role)}>
              {t(`office-pair-${role}`)}
              <span class="heard"> {seat.name}</span>
            </button>
          ))}
        </span>
      )}
      <InviteDialog
        {...{ showId, onClose: () => invite(undefined) }}
        wish={
          inviting === undefined ? undefined : { role: inviting, personId: seat.personId, name: seat.name }
        }
      />
      <RevokeDialog {...{ showId, phone: revoking, onClose: () => revoke(undefined) }} />
    </>
  );
}
