import { useWords } from '../../shared/words.tsx';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { momentOf } from '../pieces/moments.ts';
import type { Invited } from './accounts-screen.tsx';

interface SetUpCodeParts {
  /** `undefined`: closed. */
  readonly invited: Invited | undefined;
  readonly onClose: () => void;
}

/** The code by which an account is set up: the service gives it once, so it is shown until it is put away. */
export function SetUpCode({ invited, onClose }: SetUpCodeParts) {
  const { t, language } = useWords();
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return (
    <Modal title={t('office-account-code')} open={invited !== undefined} onClose={onClose}>
      {invited !== undefined && (
        <>
          <p>
            {t('office-account-code-what', {
              name: invited.account.name,
              address: `${location.host}/office/set-up`,
            })}
          </p>
          <p class="code figures">{invited.setupCode}</p>
          <p>{t('office-account-code-ends', { time: momentOf(invited.setupEndsAt, here, language) })}</p>
          <p class="buttons">
            <button type="button" class="main" onClick={onClose}>
              {t('office-account-code-given')}
            </button>
          </p>
        </>
      )}
    </Modal>
  );
}
