import { useWords } from '../../shared/words.tsx';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { forgetSession, session, signInLeft, signInNeeded } from '../session.ts';
import { SignInForm } from './sign-in-form.tsx';

/** Over whatever was being done: nothing of it is lost, and only she goes on with it. */
export function SignInAgain() {
  const { t } = useWords();
  return (
    <Modal title={t('office-session-ended')} open={signInNeeded.value} onClose={signInLeft}>
      <p>{t('office-session-ended-why')}</p>
      <SignInForm as={session.value?.account.signIn} />
      <p>
        <button type="button" class="small" onClick={forgetSession}>
          {t('office-session-somebody-else')}
        </button>
      </p>
    </Modal>
  );
}
