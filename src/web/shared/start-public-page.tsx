/** In the browser: takes over a page that the service rendered, and makes it anew when something happens at the show. */
import { hydrate } from 'preact';
import { applyChoices, chosen } from './chosen.ts';
import { followShow } from './live.ts';
import { loadWords } from './load-words.ts';
import { askAsAnyone } from './public-client.ts';
import { type Given, gather, type PublicPage } from './public-page.ts';
import { WordsContext } from './words.tsx';

/** What the service wrote into the page. */
interface Rendered {
  readonly page: string;
  readonly address: Readonly<Record<string, string>>;
  readonly given: Given;
}

/** Several events come at once when a class is posted; the page is asked for once. */
const calmMilliseconds = 300;

export async function startPublicPage(pages: readonly PublicPage[]): Promise<void> {
  const choices = chosen();
  applyChoices(choices);
  const rendered = renderedHere();
  const page = pages.find(({ name }) => name === rendered?.page);
  const root = document.getElementById('page');
  if (rendered === undefined || page === undefined || root === null) return;
  const { address } = rendered;
  const words = await loadWords(choices.language, ['shared', ...page.topics]);
  const show = (given: Given) => {
    document.title = page.title(given, words);
    hydrate(
      <WordsContext.Provider value={words}>
        <page.View given={given} address={address} />
      </WordsContext.Provider>,
      root,
    );
  };
  show(rendered.given);
  if (address.showId !== undefined)
    followAndShow(address.showId, async () => {
      const given = await gather(page, address, answerOf);
      if (given !== undefined) show(given);
    });
}

function followAndShow(showId: string, again: () => Promise<void>): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  // What is shown stays when the service does not answer: an old board is better than none.
  const soon = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void again().catch(() => undefined), calmMilliseconds);
  };
  followShow({ showId, ask: askAsAnyone, hear: soon });
}

async function answerOf(path: string): Promise<unknown> {
  const answer = await askAsAnyone(path);
  if (answer.ok) return answer.json();
  if (answer.status < 500 && answer.status !== 429) return undefined;
  throw new Error(`the service answered ${answer.status}`);
}

function renderedHere(): Rendered | undefined {
  const text = document.getElementById('given')?.textContent;
  return text ? (JSON.parse(text) as Rendered) : undefined;
}
