/** Letting the phone go, or leaving the show at the office's desk: nothing of the gate stays behind. */
import { useSignal } from '@preact/signals';
import { letGoOfPhone } from '../../judge/desk/let-go.ts';
import { useWords } from '../../shared/words.tsx';
import { forgetGate } from '../desk/kept.ts';
import { useDesk } from '../use-desk.ts';
import { Modal } from './modal.tsx';

export function ThisDevice() {
  const { t } = useWords();
  const desk = useDesk();
  const asks = useSignal(false);
  const unsent = desk.outgoing.value.length;
  const judgeUnsent = useSignal(false);
  const letGo = async () => {
    // A phone may have been a judge's before: what she has not sent is not thrown away here.
    if (desk.as === 'phone' && !(await letGoOfPhone()).ok) {
      judgeUnsent.value = true;
      return;
    }
    await forgetGate();
    location.assign(desk.as === 'phone' ? '/pair' : '/office');
  };
  const kind = desk.as;
  return (
    <details class="this-device">
      <summary>{t(`gate-this-${kind}`)}</summary>
      <p>{t(`gate-let-go-${kind}-what`)}</p>
      <button type="button" class="grave" onClick={() => (asks.value = true)}>
        {t(`gate-let-go-${kind}`)}
      </button>
      <Modal title={t(`gate-let-go-${kind}`)} open={asks.value} onClose={() => (asks.value = false)}>
        <p>{t(`gate-let-go-${kind}-sure`)}</p>
        {unsent > 0 && <p class="fault">{t('gate-let-go-unsent', { count: unsent })}</p>}
        {judgeUnsent.value && (
          <p class="fault" role="alert">
            {t('gate-let-go-judge-unsent')} <a href="/judge">{t('gate-to-judge')}</a>
          </p>
        )}
        <div class="reach">
          <button type="button" class="grave" onClick={() => void letGo()}>
            {t(`gate-let-go-${kind}`)}
          </button>
          <button type="button" onClick={() => (asks.value = false)}>
            {t('shared-cancel')}
          </button>
        </div>
      </Modal>
    </details>
  );
}
