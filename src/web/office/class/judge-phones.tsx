import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { InviteDialog, type Wish } from '../phones/invite-dialog.tsx';
import { RevokeDialog } from '../phones/revoke-dialog.tsx';
import { useShowClock } from '../use-show.ts';
import type { Phone } from './class-answers.ts';
import type { JudgeLine } from './judge-lines.ts';

/** The phones of a judge and her scribe: pair another, take one off. */
export function JudgePhones({ showId, line }: { readonly showId: string; readonly line: JudgeLine }) {
  const { t } = useWords();
  const { time } = useShowClock();
  const [wish, setWish] = useState<Wish | undefined>(undefined);
  const [revoking, revoke] = useState<Phone | undefined>(undefined);
  const { seat, judgePhones, scribePhones } = line;
  const phones = [...judgePhones, ...scribePhones];
  const pair = (role: 'judge' | 'scribe') => setWish({ role, personId: seat.personId, name: seat.name });
  return (
    <>
      <ul class="plain">
        {phones.map((phone) => (
          <li key={phone.id} class="buttons">
            {t(`office-phone-of-${phone.role}`, { time: time(phone.pairedAt) })}
            {phone.label !== null && ` (${phone.label})`}
            <button type="button" class="small grave" onClick={() => revoke(phone)}>
              {t('office-phone-revoke')}
              <span class="heard"> {seat.name}</span>
            </button>
          </li>
        ))}
      </ul>
      {seat.withdrawnAt === null && (
        <p class="buttons">
          {(['judge', 'scribe'] as const).map((role) => (
            <button key={role} type="button" class="small" onClick={() => pair(role)}>
              {t(`office-pair-${role}`)}
              <span class="heard"> {seat.name}</span>
            </button>
          ))}
        </p>
      )}
      <InviteDialog {...{ showId, wish, onClose: () => setWish(undefined) }} />
      <RevokeDialog {...{ showId, phone: revoking, onClose: () => revoke(undefined) }} />
    </>
  );
}
