import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { isOfPhones, type Phone } from '../class/class-answers.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { ChoiceField } from '../pieces/field.tsx';
import { Part } from '../pieces/part.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { say } from '../pieces/said.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { type AskedFor, useAsked } from '../use-asked.ts';
import { useShowClock } from '../use-show.ts';
import { InviteDialog, type Wish } from './invite-dialog.tsx';
import { RevokeDialog } from './revoke-dialog.tsx';

type Invitations = Answer<'/v1/shows/{showId}/invitations'>;
type People = Answer<'/v1/shows/{showId}/people'>;

/** The phones of the show: whose they are, codes that wait for one, and inviting another. */
export function PhonesScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const ofShow = `/v1/shows/${showId}`;
  const phones = useAsked<{ items: Phone[] }>(`${ofShow}/phones`, { on: isOfPhones });
  const invitations = useAsked<Invitations>(`${ofShow}/invitations`, { on: isOfPhones });
  const people = useAsked<People>(`${ofShow}/people?limit=200`, {
    on: ({ type }) => type === undefined || type === 'person.created',
  });
  const [revoking, revoke] = useState<Phone | undefined>(undefined);
  return (
    <>
      <ScreenHead title={t('office-phones')} />
      <Part title={t('office-invite')}>
        <Shown asked={people}>{({ items }) => <Invite {...{ showId, people: items }} />}</Shown>
      </Part>
      <Part title={t('office-invitations')}>
        <OpenInvitations {...{ showId, invitations }} />
      </Part>
      <Part title={t('office-phones-paired')}>
        <Shown asked={phones}>
          {({ items }) => (
            <PhoneTable phones={items.filter(({ revokedAt }) => revokedAt === null)} revoke={revoke} />
          )}
        </Shown>
      </Part>
      <Part title={t('office-phones-gone')}>
        <Shown asked={phones}>
          {({ items }) => <PhonesGone phones={items.filter(({ revokedAt }) => revokedAt !== null)} />}
        </Shown>
      </Part>
      <RevokeDialog {...{ showId, phone: revoking, onClose: () => revoke(undefined) }} />
    </>
  );
}

function Invite({ showId, people }: { readonly showId: string; readonly people: People['items'] }) {
  const { t } = useWords();
  const [personId, setPersonId] = useState(people[0]?.id ?? '');
  const [wish, setWish] = useState<Wish | undefined>(undefined);
  const name = people.find(({ id }) => id === personId)?.name ?? '';
  return (
    <>
      {people.length === 0 ? (
        <p>{t('office-people-none')}</p>
      ) : (
        <ChoiceField<string>
          {...{ label: t('office-judge'), value: personId, onValue: setPersonId }}
          choices={people.map(({ id, name: label }) => ({ value: id, label }))}
        />
      )}
      <p class="buttons">
        {people.length > 0 &&
          (['judge', 'scribe'] as const).map((role) => (
            <button key={role} type="button" onClick={() => setWish({ role, personId, name })}>
              {t(`office-pair-${role}`)}
            </button>
          ))}
        <button type="button" onClick={() => setWish({ role: 'gate' })}>
          {t('office-pair-gate')}
        </button>
      </p>
      <InviteDialog {...{ showId, wish, onClose: () => setWish(undefined) }} />
    </>
  );
}

interface OpenInvitationsParts {
  readonly showId: string;
  readonly invitations: AskedFor<Invitations>;
}

function OpenInvitations({ showId, invitations }: OpenInvitationsParts) {
  const { t } = useWords();
  const { time } = useShowClock();
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const takeBack = async (id: string) => {
    const outcome = await ask<undefined>({ method: 'DELETE', path: `/v1/shows/${showId}/invitations/${id}` });
    setRefused(outcome.ok ? undefined : outcome);
    if (outcome.ok) say(t('office-invitation-taken-back'));
    await invitations.again();
  };
  return (
    <Shown asked={invitations}>
      {({ items }) => {
        const open = items.filter(({ state }) => state === 'open');
        return (
          <>
            {open.length === 0 && <p class="note">{t('office-invitations-none')}</p>}
            <ul class="lines">
              {open.map(({ id, role, personName, label, endsAt }) => (
                <li key={id}>
                  {t(`office-invite-${role}`, { name: personName ?? '' })}
                  {label !== null && ` (${label})`}. {t('office-invite-ends', { time: time(endsAt) })}{' '}
                  <button type="button" class="small" onClick={() => void takeBack(id)}>
                    {t('office-invitation-take-back')}
                    <span class="heard"> {personName}</span>
                  </button>
                </li>
              ))}
            </ul>
            <FaultNote words={refused?.words} />
          </>
        );
      }}
    </Shown>
  );
}

interface PhoneTableParts {
  readonly phones: readonly Phone[];
  readonly revoke: (phone: Phone) => void;
}

function PhoneTable({ phones, revoke }: PhoneTableParts) {
  const { t } = useWords();
  const { moment } = useShowClock();
  if (phones.length === 0) return <p class="note">{t('office-phones-none')}</p>;
  return (
    <RuledTable caption={t('office-phones-paired')}>
      <thead>
        <tr>
          <th scope="col">{t('office-phone-whose')}</th>
          <th scope="col">{t('office-phone-role')}</th>
          <th scope="col">{t('office-phone-since')}</th>
          <th scope="col">{t('office-to-do')}</th>
        </tr>
      </thead>
      <tbody>
        {phones.map((phone) => (
          <tr key={phone.id}>
            <th scope="row">
              {phone.personName ?? t('office-gate')}
              {phone.label !== null && <span class="note"> {phone.label}</span>}
            </th>
            <td>{t(`office-role-${phone.role}`)}</td>
            <td>{moment(phone.pairedAt)}</td>
            <td>
              <button type="button" class="small grave" onClick={() => revoke(phone)}>
                {t('office-phone-revoke')}
                <span class="heard"> {phone.personName ?? t('office-gate')}</span>
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}

function PhonesGone({ phones }: { readonly phones: readonly Phone[] }) {
  const { t } = useWords();
  const { moment } = useShowClock();
  if (phones.length === 0) return <p class="note">{t('office-phones-gone-none')}</p>;
  return (
    <ul class="lines">
      {phones.map(({ id, role, personName, revokedAt, revokedWhy }) => (
        <li key={id}>
          {personName ?? t('office-gate')}, {t(`office-role-${role}`)}:{' '}
          {t('office-phone-gone', { time: revokedAt === null ? '' : moment(revokedAt) })}
          {revokedWhy !== null && ` “${revokedWhy}”`}
        </li>
      ))}
    </ul>
  );
}
