/** What else there is about this phone: all that it holds as a file, and letting it go. */
import { useSignal } from '@preact/signals';
import type { LetGoOutcome } from '../desk/desk-types.ts';
import { Dialog } from '../dialog.tsx';
import { forgetRemarks } from '../go/waiting-remarks.ts';
import { useParts } from '../parts.tsx';

export function ThisPhone() {
  const { t } = useParts();
  const asks = useSignal(false);
  return (
    <details class="this-phone">
      <summary>{t('judge-this-phone')}</summary>
      <p>{t('judge-export-what')}</p>
      <Export />
      <p>{t('judge-let-go-what')}</p>
      <button type="button" class="grave" onClick={() => (asks.value = true)}>
        {t('judge-let-go')}
      </button>
      <Dialog open={asks} title={t('judge-let-go-title')} close={t('judge-let-go-keep')}>
        <LetGo />
      </Dialog>
    </details>
  );
}

function Export() {
  const { t, desk } = useParts();
  const save = async () => saveAs(await desk.exportText());
  return (
    <button type="button" onClick={() => void save()}>
      {t('judge-export')}
    </button>
  );
}

/** It cannot be undone, so it is asked once; with something unsent it is asked again, and said what would be lost. */
function LetGo() {
  const { t, desk } = useParts();
  const refused = useSignal<Exclude<LetGoOutcome, { ok: true }> | null>(null);
  const letGo = async () => {
    const outcome = await desk.letGo({ evenUnsent: refused.value !== null });
    if (!outcome.ok) {
      refused.value = outcome;
      return;
    }
    forgetRemarks();
  };
  return (
    <>
      <p>{t('judge-let-go-sure')}</p>
      {refused.value === null ? null : (
        <div class="fault" role="alert">
          <strong>{t('judge-let-go-unsent', { unsent: refused.value.unsent })}</strong>
          <p>{t('judge-let-go-unsent-what')}</p>
          <Export />
        </div>
      )}
      <button type="button" class="grave" onClick={() => void letGo()}>
        {t(refused.value === null ? 'judge-let-go' : 'judge-let-go-anyway')}
      </button>
    </>
  );
}

/** What another judge had not sent when this phone was paired for somebody else: it is handed over or thrown away. */
export function LeftBehindPart() {
  const { t, desk } = useParts();
  return (
    <>
      {desk.leftBehind.value.map((left) => (
        <section key={left.id} class="heed">
          <p>{t('judge-left-behind', { judge: left.judge, show: left.show })}</p>
          <div class="pair">
            <button type="button" onClick={() => saveAs(left.text)}>
              {t('judge-export')}
            </button>
            <button type="button" class="grave" onClick={() => void desk.throwAway(left)}>
              {t('judge-left-behind-away')}
            </button>
          </div>
        </section>
      ))}
    </>
  );
}

function saveAs(text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = 'ringledger-cards.json';
  link.click();
  // Safari reads the file after the click.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
