/** What stands around every page that everyone reads: where one is, the caution, language and light. */
import type { ComponentChildren } from 'preact';
import { ChoicesLinks } from './choices-links.tsx';
import { ConnectionLine } from './connection-line.tsx';
import type { Address } from './public-page.ts';
import { useWords } from './words.tsx';

export interface Step {
  readonly href: string;
  readonly name: string;
}

interface Frame {
  readonly address: Address;
  /** The pages above this one, the topmost first; left out: only the list of shows. */
  readonly trail?: readonly Step[];
  /** Nothing of what is shown counts. */
  readonly practice?: boolean;
  /** IANA name of the clock of the show, where the page tells times. */
  readonly timeZone?: string;
  readonly children: ComponentChildren;
}

export function PublicFrame({ address, trail = [], practice = false, timeZone, children }: Frame) {
  const { t } = useWords();
  return (
    <>
      <a class="skip" href="#content">
        {t('shared-skip')}
      </a>
      <header class="board-head">
        <nav aria-label={t('shared-where-you-are')}>
          <ol>
            {[{ href: '/', name: t('shared-all-shows') }, ...trail].map(({ href, name }) => (
              <li key={href}>
                <a href={href}>{name}</a>
              </li>
            ))}
          </ol>
        </nav>
      </header>
      <main id="content" class="board" tabIndex={-1}>
        {practice && <p class="heed practice">{t('shared-practice')}</p>}
        {children}
      </main>
      <footer class="board-foot">
        {address.showId !== undefined && <ConnectionLine />}
        {timeZone !== undefined && <p>{t('shared-show-time', { zone: zoneName(timeZone) })}</p>}
        <p>{t('shared-caution')}</p>
        <ChoicesLinks address={address} />
      </footer>
    </>
  );
}

/** `America/New_York` as people write it: `New York`. */
const zoneName = (timeZone: string): string => (timeZone.split('/').at(-1) ?? timeZone).replaceAll('_', ' ');
