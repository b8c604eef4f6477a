import { useState } from 'preact/hooks';
import type { Answer, Part as PartOfAnswer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { Part } from '../pieces/part.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { say } from '../pieces/said.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { Shown } from '../pieces/shown.tsx';
import { session } from '../session.ts';
import { useAsked } from '../use-asked.ts';
import { MakeAccount } from './make-account.tsx';
import { SetUpCode } from './set-up-code.tsx';

export type Account = PartOfAnswer<'Account'>;
export type Invited = Answer<'/v1/accounts', 'post'>;
type Accounts = Answer<'/v1/accounts'>;
type Shows = Answer<'/v1/shows'>;

type Act = { readonly is: 'reset' | 'close'; readonly account: Account };

/** For a manager: who works in the office, and where. */
export function AccountsScreen() {
  const { t } = useWords();
  const accounts = useAsked<Accounts>('/v1/accounts?limit=200');
  const shows = useAsked<Shows>('/v1/shows?limit=200', { on: () => false });
  const [invited, setInvited] = useState<Invited | undefined>(undefined);
  const [act, setAct] = useState<Act | undefined>(undefined);
  const again = () => void accounts.again();
  if (session.value?.account.duty !== 'manager') {
    return (
      <>
        <ScreenHead title={t('office-accounts')} />
        <p>{t('office-accounts-managers')}</p>
      </>
    );
  }
  return (
    <>
      <ScreenHead title={t('office-accounts')} />
      <Part title={t('office-accounts-who')}>
        <Shown asked={accounts}>
          {({ items }) => (
            <AccountTable {...{ accounts: items, shows: shows.body?.items ?? [], act: setAct }} />
          )}
        </Shown>
      </Part>
      <Part title={t('office-account-make')}>
        <Shown asked={shows}>
          {({ items }) => (
            <MakeAccount
              shows={items}
              onMade={(made) => {
                setInvited(made);
                again();
              }}
            />
          )}
        </Shown>
      </Part>
      <SetUpCode {...{ invited, onClose: () => setInvited(undefined) }} />
      <Modal
        title={act === undefined ? '' : t(`office-account-${act.is}-ask`, { name: act.account.name })}
        open={act !== undefined}
        onClose={() => setAct(undefined)}
      >
        {act !== undefined && (
          <GraveAct
            {...{ act, onClose: () => setAct(undefined) }}
            onDone={(made) => {
              setAct(undefined);
              setInvited(made);
              again();
            }}
          />
        )}
      </Modal>
    </>
  );
}

interface AccountTableParts {
  readonly accounts: readonly Account[];
  readonly shows: Shows['items'];
  readonly act: (act: Act) => void;
}

function AccountTable({ accounts, shows, act }: AccountTableParts) {
  const { t } = useWords();
  const own = session.value?.account.id;
  const where = ({ wholeService, showIds }: Account) =>
    wholeService
      ? t('office-account-everywhere')
      : showIds.map((id) => shows.find((show) => show.id === id)?.name ?? '–').join(', ');
  return (
    <RuledTable caption={t('office-accounts-who')}>
      <thead>
        <tr>
          <th scope="col">{t('office-account-name')}</th>
          <th scope="col">{t('office-account-duty')}</th>
          <th scope="col">{t('office-account-where')}</th>
          <th scope="col">{t('office-state')}</th>
          <th scope="col">{t('office-to-do')}</th>
        </tr>
      </thead>
      <tbody>
        {accounts.map((account) => (
          <tr key={account.id}>
            <th scope="row">
              {account.name} <span class="note">{account.signIn}</span>
            </th>
            <td>{t(`office-duty-${account.duty}`)}</td>
            <td>{where(account)}</td>
            <td>{t(`office-account-state-${account.state}`)}</td>
            <td>
              {account.state !== 'closed' && account.id !== own && (
                <span class="buttons">
                  {(['reset', 'close'] as const).map((is) => (
                    <button key={is} type="button" class="small grave" onClick={() => act({ is, account })}>
                      {t(`office-account-${is}`)}
                      <span class="heard"> {account.name}</span>
                    </button>
                  ))}
                </span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}

interface GraveActParts {
  readonly act: Act;
  readonly onClose: () => void;
  /** A reset gives a new code; a closing none. */
  readonly onDone: (invited: Invited | undefined) => void;
}

function GraveAct({ act, onClose, onDone }: GraveActParts) {
  const { t } = useWords();
  const { id, name } = act.account;
  const what = act.is === 'reset' ? 'resets' : 'closings';
  return (
    <>
      <p>{t(`office-account-${act.is}-why`)}</p>
      <SendingForm<Invited | Account>
        {...{ action: t(`office-account-${act.is}`), grave: true }}
        send={() => ask({ method: 'POST', path: `/v1/accounts/${id}/${what}` })}
        onDone={(body) => {
          say(t(`office-account-${act.is}-done`, { name }));
          onDone('setupCode' in body ? body : undefined);
        }}
        beside={
          <button type="button" onClick={onClose}>
            {t('shared-cancel')}
          </button>
        }
      />
    </>
  );
}
