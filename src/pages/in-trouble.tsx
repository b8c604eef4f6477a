/** A page that cannot be made now, in words: too much was asked (429), or something failed. */

import { PublicFrame } from '../web/shared/public-frame.tsx';
import type { Address, Given, PublicPage } from '../web/shared/public-page.ts';
import { useWords } from '../web/shared/words.tsx';

export const tooMuchAsked: PublicPage = troublePage('too-much');
export const inTrouble: PublicPage = troublePage('in-trouble');

function troublePage(kind: 'too-much' | 'in-trouble'): PublicPage {
  return {
    name: kind,
    path: '',
    topics: [],
    asks: () => ({}),
    title: (_given, { t }) => t(`shared-${kind}`),
    View: ({ address, given }) => <Trouble {...{ kind, address, given }} />,
  };
}

function Trouble({ kind, address }: { kind: string; readonly address: Address; readonly given: Given }) {
  const { t } = useWords();
  return (
    <PublicFrame address={address}>
      <h1>{t(`shared-${kind}`)}</h1>
      <p>{t(`shared-${kind}-why`)}</p>
    </PublicFrame>
  );
}
