/** In the browser: takes over a page that the service rendered, and makes it anew when something happens at the show. */
import { hydrate } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type Connection, ConnectionContext } from './connection.ts';
import { followPage } from './follow-page.ts';
import { loadWords } from './load-words.ts';
import type { Given, PublicPage, Rendered } from './public-page.ts';
import { isLanguage, languages, type Words, WordsContext } from './words.tsx';

export async function startPublicPage(pages: readonly PublicPage[]): Promise<void> {
  const rendered = renderedHere();
  const page = pages.find(({ name }) => name === rendered?.page);
  const root = document.getElementById('page');
  if (rendered === undefined || page === undefined || root === null) return;
  const { lang } = document.documentElement;
  const language = isLanguage(lang) ? lang : languages[0];
  const words = await loadWords(language, ['shared', ...page.topics]);
  forgetChoicesInAddress();
  hydrate(<LivePage {...{ page, rendered, words }} />, root);
}

interface PageToKeep {
  readonly page: PublicPage;
  readonly rendered: Rendered;
  readonly words: Words;
}

function LivePage({ page, rendered, words }: PageToKeep) {
  const { address, version, script } = rendered;
  const [given, setGiven] = useState<Given>(rendered.given);
  const [connection, setConnection] = useState<Connection>();
  useEffect(() => {
    const { showId } = address;
    if (showId === undefined) return undefined;
    return followPage({
      ...{ showId, version, ...(page.renewsItself ? { script } : {}) },
      concerns: (event) => page.concerns?.(event, rendered.given) ?? true,
      show: (fresh) => {
        setGiven(fresh);
        document.title = page.title(fresh, words);
      },
      tell: setConnection,
    });
  }, [page, rendered, words, address, version, script]);
  return (
    <WordsContext.Provider value={words}>
      <ConnectionContext.Provider value={connection}>
        <page.View given={given} address={address} />
      </ConnectionContext.Provider>
    </WordsContext.Provider>
  );
}

/** They are kept in cookies by now; left in the address they would choose for whoever it is passed on to. */
function forgetChoicesInAddress(): void {
  const address = new URL(location.href);
  address.searchParams.delete('language');
  address.searchParams.delete('theme');
  if (address.href !== location.href) history.replaceState(history.state, '', address);
}

function renderedHere(): Rendered | undefined {
  const text = document.getElementById('given')?.textContent;
  return text ? (JSON.parse(text) as Rendered) : undefined;
}
