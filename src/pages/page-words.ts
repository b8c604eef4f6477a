/** The message files of the pages that the service renders, read once at the start. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Language, languages, makeWords, type Words } from '../web/shared/words.tsx';

const folderOf = (language: Language) => fileURLToPath(new URL(`../web/words/${language}`, import.meta.url));

export class PageWords {
  readonly #texts = new Map<string, string>();

  constructor() {
    for (const language of languages) {
      const folder = folderOf(language);
      for (const file of readdirSync(folder)) {
        this.#texts.set(`${language}/${file}`, readFileSync(`${folder}/${file}`, 'utf8'));
      }
    }
  }

  of(language: Language, topics: readonly string[]): Words {
    return makeWords(
      language,
      topics.map((topic) => this.#texts.get(`${language}/${topic}.ftl`) ?? missing(topic)),
    );
  }
}

function missing(topic: string): never {
  throw new Error(`there is no file of words ${topic}.ftl`);
}
