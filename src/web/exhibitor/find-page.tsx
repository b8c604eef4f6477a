/** `/shows/:showId/find`: an entry by its back number, or by what is public of a name. */
import type { Answer } from '../shared/api.ts';
import { PublicFrame } from '../shared/public-frame.tsx';
import type { PublicPage, Seen } from '../shared/public-page.ts';
import { useWords } from '../shared/words.tsx';
import { FindForm } from './find-form.tsx';
import { FoundEntries } from './found-entries.tsx';
import { type Found, lookUpAddress } from './look-up-address.ts';
import { useFinding } from './use-finding.ts';

type Show = Answer<'/v1/shows/{showId}'>;

export const findPage: PublicPage = {
  name: 'find',
  path: '/shows/:showId/find',
  topics: ['exhibitor'],
  asks: ({ showId = '', words = '' }, given) => {
    if ('show' in given && given.show === undefined) return null;
    const show = { show: `/v1/shows/${showId}` };
    return words.trim() === '' ? show : { ...show, found: lookUpAddress(showId, words.trim()) };
  },
  keeps: {
    show: (answer) => {
      const { id, name, practice, timeZone } = answer as Show;
      return { id, name, practice, timeZone };
    },
  },
  title: ({ show }, { t }) => t('exhibitor-find-title', { show: (show as Show).name }),
  // What was found is not looked for again by itself: it would leave the words in what is sent.
  concerns: () => false,
  View: FindView,
};

function FindView({ given, address }: Seen) {
  const { t } = useWords();
  const show = given.show as Pick<Show, 'id' | 'name' | 'practice' | 'timeZone'>;
  const first = { words: address.words?.trim() ?? '', found: given.found as Found | undefined };
  const { words, found, state, find } = useFinding(show.id, first);
  return (
    <PublicFrame
      // Nothing is followed here, and no name goes into another address.
      address={{}}
      trail={[{ href: `/shows/${show.id}`, name: show.name }]}
      practice={show.practice}
    >
      <h1>{t('exhibitor-find')}</h1>
      <FindForm {...{ showId: show.id, words, find }} />
      <div role="status">
        {state === 'looking' && <p class="note">{t('exhibitor-looking')}</p>}
        {state === 'failed' && <p class="fault">{t('exhibitor-find-failed')}</p>}
        {state === 'found' && words !== '' && <FoundEntries {...{ show, words, found }} />}
      </div>
    </PublicFrame>
  );
}
