/** Starts a page in a browser: choices, words, then its first component. */
import { type ComponentType, render } from 'preact';
import { applyChoices, chosen } from './chosen.ts';
import { loadWords } from './load-words.ts';
import { WordsContext } from './words.tsx';

interface PageToStart {
  /** Files of words: `['shared', 'judge']`. */
  readonly topics: readonly string[];
  readonly Page: ComponentType<{ readonly onLanguage: () => void }>;
}

/** Into the element `#page` of its index.html. Called again when the reader changes the language. */
export async function startPage({ topics, Page }: PageToStart): Promise<void> {
  const choices = chosen();
  applyChoices(choices);
  const words = await loadWords(choices.language, topics);
  const root = document.getElementById('page');
  if (root === null) throw new Error('the page has no element #page');
  render(
    <WordsContext.Provider value={words}>
      <Page onLanguage={() => void startPage({ topics, Page })} />
    </WordsContext.Provider>,
    root,
  );
}
