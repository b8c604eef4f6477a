/** The keys of the keyboard, shown by "?". */
import type { Signal } from '@preact/signals';
import { Dialog } from '../dialog.tsx';
import { useParts } from '../parts.tsx';
import { shownKeys } from './go-keys.ts';

export function KeysDialog({ open }: { readonly open: Signal<boolean> }) {
  const { t } = useParts();
  return (
    <Dialog open={open} title={t('judge-keys')}>
      <table class="keys">
        <thead class="heard">
          <tr>
            <th scope="col">{t('judge-keys-key')}</th>
            <th scope="col">{t('judge-keys-does')}</th>
          </tr>
        </thead>
        <tbody>
          {shownKeys.map(({ keys, does }) => (
            <tr key={does}>
              <th scope="row">
                {keys.map((key) => (
                  <kbd key={key}>{key}</kbd>
                ))}
              </th>
              <td>{t(`judge-keys-${does}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Dialog>
  );
}
