import { useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { askAtDoor } from '../ask.ts';
import { paths } from '../paths.ts';
import { Field } from '../pieces/field.tsx';
import { QrCode } from '../pieces/qr-code.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { sessionBegan } from '../session.ts';

type Begun = Answer<'/v1/account-setups', 'post'>;
type Done = Answer<'/v1/account-setups/completions', 'post'>;

/** The first time: the code of the manager, then the second factor, then the password. */
export function SetUpScreen() {
  const { t } = useWords();
  const [setupCode, setSetupCode] = useState('');
  const [begun, setBegun] = useState<Begun | undefined>(undefined);
  return (
    <section class="narrow">
      <ScreenHead title={t('office-set-up')} />
      {begun === undefined ? (
        <>
          <p>{t('office-set-up-what')}</p>
          <SendingForm<Begun>
            action={t('office-set-up-go-on')}
            send={() => askAtDoor('/v1/account-setups', { setupCode })}
            onDone={setBegun}
          >
            {(fields) => (
              <Field
                {...{ label: t('office-set-up-code'), hint: t('office-set-up-code-hint'), value: setupCode }}
                {...{ onValue: setSetupCode, name: 'setup-code', autocomplete: 'off', spellcheck: false }}
                {...{ autocapitalize: 'characters', required: true, fault: fields.get('/setupCode') }}
              />
            )}
          </SendingForm>
          <p>
            <Link href={paths.shows}>{t('office-set-up-have')}</Link>
          </p>
        </>
      ) : (
        <Finish {...{ setupCode, begun }} />
      )}
    </section>
  );
}

function Finish({ setupCode, begun }: { readonly setupCode: string; readonly begun: Begun }) {
  const { t } = useWords();
  const [, go] = useLocation();
  const [password, setPassword] = useState('');
  const [totpCode, setTotpCode] = useState('');
  const { name, signIn, totp } = begun;
  return (
    <>
      <p>{t('office-set-up-hello', { name })}</p>
      <h2>{t('office-set-up-factor')}</h2>
      <p>{t('office-set-up-scan')}</p>
      <QrCode svg={totp.qrSvg} words={t('office-set-up-qr')} />
      <p>
        {t('office-set-up-by-hand')} <code class="figures secret">{inFours(totp.secret)}</code>{' '}
        <a href={totp.uri}>{t('office-set-up-open-app')}</a>
      </p>
      <h2>{t('office-set-up-password')}</h2>
      <SendingForm<Done>
        action={t('office-set-up-finish')}
        send={() =>
          askAtDoor('/v1/account-setups/completions', {
            setupCode,
            password,
            totpCode: totpCode.replace(/\s/g, ''),
          })
        }
        onDone={({ token }) => {
          sessionBegan(token);
          go(paths.shows);
        }}
      >
        {(fields) => (
          <>
            <Field
              {...{
                label: t('office-sign-in-name'),
                value: signIn,
                onValue: () => undefined,
                readOnly: true,
              }}
              {...{ name: 'username', autocomplete: 'username' }}
            />
            <Field
              {...{ label: t('office-set-up-new-password'), hint: t('office-set-up-password-hint') }}
              {...{ value: password, onValue: setPassword, type: 'password', name: 'new-password' }}
              {...{ autocomplete: 'new-password', required: true, fault: fields.get('/password') }}
            />
            <Field
              {...{ label: t('office-sign-in-code'), hint: t('office-sign-in-code-hint'), value: totpCode }}
              {...{ onValue: setTotpCode, name: 'one-time-code', autocomplete: 'one-time-code' }}
              {...{ inputMode: 'numeric', required: true, fault: fields.get('/totpCode') }}
            />
          </>
        )}
      </SendingForm>
    </>
  );
}

/** `746H7AHB2QOW` -> "746H 7AHB 2QOW" */
const inFours = (secret: string): string => secret.match(/.{1,4}/g)?.join(' ') ?? secret;
