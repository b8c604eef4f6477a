/** What every screen of the judge's page works with: the desk, the books, and the words of her language. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Speech } from '../../engine/sentences/speech.ts';
import { useWords, type Words } from '../shared/words.tsx';
import type { Books } from './book/books.ts';
import type { Desk } from './desk/desk-types.ts';
import type { Lexicon } from './shorthand/types.ts';

export interface Parts {
  readonly desk: Desk;
  readonly books: Books;
  /** Sentences of the engine: what is missing, what a ruling does, how a class is placed. */
  readonly speech: Speech;
  readonly lexicon: Lexicon;
}

export const PartsContext = createContext<Parts | undefined>(undefined);

/** Within the page once its desk is open. */
export function useParts(): Parts & { readonly words: Words; readonly t: Words['t'] } {
  const parts = useContext(PartsContext);
  const words = useWords();
  if (parts === undefined) throw new Error('a screen of the judge was shown without its desk');
  return { ...parts, words, t: words.t };
}
