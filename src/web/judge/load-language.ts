/** What a language has beside the messages of the page: the engine's sentences, and the words of shorthand. */
import { makeSpeech, type Speech } from '../../engine/sentences/speech.ts';
import type { Language } from '../shared/words.tsx';
import type { Lexicon } from './shorthand/types.ts';

const sentences = import.meta.glob<string>(
  '../../engine/sentences/words/*/{numbers,faults,scores,rules}.ftl',
  { query: '?raw', import: 'default' },
);
const lexicons = import.meta.glob<Lexicon>('./shorthand/words/*.json', { import: 'default' });

export interface LanguageParts {
  readonly speech: Speech;
  readonly lexicon: Lexicon;
}

/** Rejects where a file cannot be fetched; the service worker keeps them all. */
export async function loadLanguage(language: Language): Promise<LanguageParts> {
  const texts = Object.entries(sentences)
    .filter(([path]) => path.includes(`/${language}/`))
    .map(([, load]) => load());
  const lexicon = lexicons[`./shorthand/words/${language}.json`];
  if (lexicon === undefined) throw new Error(`there are no words of shorthand for ${language}`);
  return { speech: makeSpeech(language, await Promise.all(texts)), lexicon: await lexicon() };
}
