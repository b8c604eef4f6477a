/**
 * The words of a page, by id, out of the message files of `src/web/words/<language>/` (Fluent, https://projectfluent.org).
 * Pure: whoever starts a page brings the text of the files, from the disk or from the build.
 */
import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

/** A further language is a folder under `src/web/words/` and its code here. */
export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

export const isLanguage = (text: string | undefined): text is Language =>
  languages.some((language) => language === text);

export type WordArguments = Readonly<Record<string, FluentVariable>>;

export interface Words {
  readonly language: Language;
  /** The message of that id. An id that no file has is a fault of ours and shows as itself. */
  readonly t: (id: string, args?: WordArguments) => string;
  /** The same, and `undefined` where no file has it: for codes that come from elsewhere. */
  readonly find: (id: string, args?: WordArguments) => string | undefined;
}

/** `texts`: what stands in the files that the page needs. Throws where one cannot be read: the build is broken. */
export function makeWords(language: Language, texts: readonly string[]): Words {
  // Without marks of direction around what is put in: both languages run left to right, and people copy the words.
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const text of texts) {
    const [error] = bundle.addResource(new FluentResource(text));
    if (error !== undefined) throw error;
  }
  const find = (id: string, args?: WordArguments) => {
    const pattern = bundle.getMessage(id)?.value;
    return pattern === undefined || pattern === null ? undefined : bundle.formatPattern(pattern, args);
  };
  return { language, find, t: (id, args) => find(id, args) ?? id };
}

export const WordsContext = createContext<Words | undefined>(undefined);

/** Within a page that was started with its words. */
export function useWords(): Words {
  const words = useContext(WordsContext);
  if (words === undefined) throw new Error('a page was started without its words');
  return words;
}
