import { Link, useLocation } from 'wouter-preact';
import { useWords } from '../shared/words.tsx';
import { FindField } from './find/find-field.tsx';
import { useKey } from './keys/short-keys.tsx';
import { liveState, showInHand } from './office-state.ts';
import { paths } from './paths.ts';
import { session } from './session.ts';
import { useMayWrite } from './use-show.ts';

/** Which show is in hand, the ways through it, and finding anything in it. `showId`: of the address. */
export function Masthead({ showId }: { readonly showId: string | undefined }) {
  const { t } = useWords();
  const account = session.value?.account;
  const show = showInHand.value;
  return (
    <header class="masthead office-head">
      <div class="head-line">
        <Link href={paths.shows}>{t('shared-name')}</Link>
        {showId !== undefined && show !== undefined && <strong class="show-name">{show.name}</strong>}
        {account !== undefined && (
          <nav class="own" aria-label={t('office-nav-own')}>
            {account.duty === 'manager' && <Link href={paths.accounts}>{t('office-accounts')}</Link>}
            <Link href={paths.account}>{account.name}</Link>
          </nav>
        )}
      </div>
      {showId !== undefined && show?.practice === true && <p class="practice">{t('shared-practice')}</p>}
      {showId !== undefined && <ShowLine showId={showId} />}
      {showId !== undefined && liveState.value === 'no-answer' && (
        <p class="heed" role="status">
          {t('office-live-no-answer')}
        </p>
      )}
    </header>
  );
}

function ShowLine({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  const [address] = useLocation();
  const ways = [
    { key: 'd', to: paths.day(showId), words: t('office-day') },
    { key: 'e', to: paths.entries(showId), words: t('office-entries') },
    ...(mayWrite ? [{ key: 'q', to: paths.queries(showId), words: t('office-queries-way') }] : []),
    ...(mayWrite ? [{ key: 'p', to: paths.phones(showId), words: t('office-phones') }] : []),
    { key: 'l', to: paths.ledger(showId), words: t('office-ledger') },
  ];
  return (
    <div class="head-line">
      <nav class="ways" aria-label={t('office-nav-show')}>
        {ways.map(({ key, to, words }) => (
          <Way key={key} {...{ short: key, to, words, here: address === to }} />
        ))}
      </nav>
      <FindField showId={showId} />
    </div>
  );
}

interface WayParts {
  readonly short: string;
  readonly to: string;
  readonly words: string;
  readonly here: boolean;
}

function Way({ short, to, words, here }: WayParts) {
  const [, go] = useLocation();
  useKey(short, words, () => go(to));
  return (
    <Link href={to} aria-current={here ? 'page' : undefined}>
      {words}
    </Link>
  );
}
