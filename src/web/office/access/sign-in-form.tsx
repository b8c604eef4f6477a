import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { askAtDoor, type Refused } from '../ask.ts';
import { Field } from '../pieces/field.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { sessionBegan } from '../session.ts';

type Begun = Answer<'/v1/sessions', 'post'>;

interface SignInForm {
  /** Whose session ended: nobody else goes on with what she typed. */
  readonly as?: string | undefined;
}

/** Name, password, one-time code; named so that a password manager fills all three. */
export function SignInForm({ as }: SignInForm) {
  const { t } = useWords();
  const [signIn, setSignIn] = useState(as ?? '');
  const [password, setPassword] = useState('');
  const [totpCode, setTotpCode] = useState('');
  const wordsOf = ({ code, words, waitSeconds }: Refused) =>
    code === 'sign_in_slowed' && waitSeconds !== undefined
      ? { what: words.what, whatToDo: t('office-sign-in-wait', { seconds: waitSeconds }) }
      : words;
  return (
    <SendingForm<Begun>
      action={t('office-sign-in')}
      send={() => askAtDoor('/v1/sessions', { signIn, password, totpCode: totpCode.replace(/\s/g, '') })}
      onDone={({ token }) => sessionBegan(token)}
      onRefused={() => setTotpCode('')}
      wordsOf={wordsOf}
    >
      {(fields) => (
        <>
          <Field
            {...{ label: t('office-sign-in-name'), value: signIn, onValue: setSignIn }}
            {...{ name: 'username', autocomplete: 'username', autocapitalize: 'none', spellcheck: false }}
            {...{ required: true, readOnly: as !== undefined, fault: fields.get('/signIn') }}
          />
          <Field
            {...{ label: t('office-sign-in-password'), value: password, onValue: setPassword }}
            {...{ name: 'password', type: 'password', autocomplete: 'current-password', required: true }}
            fault={fields.get('/password')}
          />
          <Field
            {...{ label: t('office-sign-in-code'), hint: t('office-sign-in-code-hint') }}
            {...{
              value: totpCode,
              onValue: setTotpCode,
              name: 'one-time-code',
              autocomplete: 'one-time-code',
            }}
            {...{ inputMode: 'numeric', required: true, fault: fields.get('/totpCode') }}
          />
        </>
      )}
    </SendingForm>
  );
}
