/** An address that leads nowhere (404), in words. */
import { PublicFrame } from '../web/shared/public-frame.tsx';
import type { PublicPage, Seen } from '../web/shared/public-page.ts';
import { useWords } from '../web/shared/words.tsx';

export const nothingHere: PublicPage = {
  name: 'nothing-here',
  path: '',
  topics: [],
  asks: () => ({}),
  title: (_given, { t }) => t('shared-nothing-here'),
  View: NothingHere,
};

function NothingHere({ address }: Seen) {
  const { t } = useWords();
  return (
    <PublicFrame address={address}>
      <h1>{t('shared-nothing-here')}</h1>
      <p>{t('shared-nothing-here-why')}</p>
      <p>
        <a href="/">{t('shared-all-shows')}</a>
      </p>
    </PublicFrame>
  );
}
