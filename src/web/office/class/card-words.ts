import type { Words } from '../../shared/words.tsx';
import type { CardStand } from './judge-lines.ts';

/** Where a card is, in words. `time`: an instant by the show's clock. */
export function cardWords(
  stand: CardStand,
  { t, time }: { readonly t: Words['t']; readonly time: (instant: string) => string },
): string {
  switch (stand.is) {
    case 'waiting':
      return t('office-card-waiting');
    case 'under-way':
      return t('office-card-under-way', { written: stand.written, expected: stand.expected });
    case 'signed': {
      const args = { time: time(stand.at), revision: stand.revision };
      const first = t(stand.onPaper ? 'office-card-signed-paper' : 'office-card-signed', args);
      return stand.revision > 1 ? `${first} ${t('office-card-revision', args)}` : first;
    }
    case 'to-be-amended':
      return t('office-card-to-be-amended', { count: stand.entriesToAdd });
    case 'on-paper':
      return t('office-card-on-paper', { count: stand.enteredBy });
    case 'withdrawn':
      return t('office-card-withdrawn');
  }
}
