/** An address that leads nowhere (404), in words. */
import type { PublicPage } from '../web/shared/public-page.ts';
import { useWords } from '../web/shared/words.tsx';

export const nothingHere: PublicPage = {
  name: 'nothing-here',
  path: '',
  topics: [],
  asks: () => ({}),
  title: (_given, { t }) => t('shared-nothing-here'),
  View: NothingHere,
};

function NothingHere() {
  const { t } = useWords();
  return (
    <main class="sheet">
      <h1>{t('shared-nothing-here')}</h1>
      <p>{t('shared-nothing-here-why')}</p>
      <p>
        <a href="/">{t('shared-all-shows')}</a>
      </p>
    </main>
  );
}
