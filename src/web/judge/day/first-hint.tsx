/** Said once on this phone, until it is put away. */
import { useSignal } from '@preact/signals';
import { useParts } from '../parts.tsx';

const storedAs = 'ringledger-judge-hint';

export function FirstHint() {
  const { t } = useParts();
  const read = useSignal(localStorage.getItem(storedAs) !== null);
  if (read.value) return null;
  const put = () => {
    localStorage.setItem(storedAs, 'read');
    read.value = true;
  };
  return (
    <section class="hint" aria-labelledby="hint">
      <h2 id="hint">{t('judge-hint')}</h2>
      <ul>
        <li>{t('judge-hint-signal')}</li>
        <li>{t('judge-hint-marks')}</li>
        <li>{t('judge-hint-undo')}</li>
        <li>{t('judge-hint-sign')}</li>
      </ul>
      <button type="button" onClick={put}>
        {t('judge-hint-read')}
      </button>
    </section>
  );
}
