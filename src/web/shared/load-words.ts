/** The message files that a page in a browser needs, each a file of the build that is fetched when it is asked for. */
import { type Language, makeWords, type Words } from './words.tsx';

const files = import.meta.glob<string>('../words/*/*.ftl', { query: '?raw', import: 'default' });

/** `topics`: names of files, e.g. `['shared', 'judge']`. Rejects where one cannot be fetched. */
export async function loadWords(language: Language, topics: readonly string[]): Promise<Words> {
  const texts = topics.map((topic) => {
    const load = files[`../words/${language}/${topic}.ftl`];
    if (load === undefined) throw new Error(`there is no file of words ${language}/${topic}.ftl`);
    return load();
  });
  return makeWords(language, await Promise.all(texts));
}
