import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { ChoiceField, Field } from '../pieces/field.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { session } from '../session.ts';
import type { Account, Invited } from './accounts-screen.tsx';

interface MakeAccountParts {
  readonly shows: Answer<'/v1/shows'>['items'];
  readonly onMade: (made: Invited) => void;
}

const duties = ['secretary', 'points-secretary', 'manager'] as const;
const everywhere = '';

/** A new colleague: name, sign-in name, what she does and where. A manager of some shows makes none beyond them. */
export function MakeAccount({ shows, onMade }: MakeAccountParts) {
  const { t } = useWords();
  const own = session.value?.account;
  const mine = shows.filter(({ id }) => own?.wholeService === true || own?.showIds.includes(id) === true);
  const [name, setName] = useState('');
  const [signIn, setSignIn] = useState('');
  const [duty, setDuty] = useState<Account['duty']>('secretary');
  const [where, setWhere] = useState(own?.wholeService === true ? everywhere : (mine[0]?.id ?? ''));
  const reach = where === everywhere ? { wholeService: true } : { wholeService: false, showIds: [where] };
  const body = { name: name.trim(), signIn: signIn.trim(), duty, ...reach };
  return (
    <SendingForm<Invited>
      action={t('office-account-make')}
      send={() => ask({ method: 'POST', path: '/v1/accounts', body })}
      onDone={(made) => {
        setName('');
        setSignIn('');
        onMade(made);
      }}
    >
      {(fields) => (
        <>
          <Field
            {...{ label: t('office-account-name'), value: name, onValue: setName, autocomplete: 'off' }}
            fault={fields.get('/name')}
          />
          <Field
            {...{ label: t('office-sign-in-name'), value: signIn, onValue: setSignIn, autocomplete: 'off' }}
            {...{ autocapitalize: 'none', spellcheck: false, fault: fields.get('/signIn') }}
          />
          <ChoiceField<Account['duty']>
            {...{ label: t('office-account-duty'), value: duty, onValue: setDuty }}
            choices={duties.map((value) => ({ value, label: t(`office-duty-${value}`) }))}
          />
          <ChoiceField<string>
            {...{ label: t('office-account-where'), value: where, onValue: setWhere }}
            choices={[
              ...(own?.wholeService === true
                ? [{ value: everywhere, label: t('office-account-everywhere') }]
                : []),
              ...mine.map((show) => ({ value: show.id, label: show.name })),
            ]}
            fault={fields.get('/showIds')}
          />
        </>
      )}
    </SendingForm>
  );
}
