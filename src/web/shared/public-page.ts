/**
 * A page that everyone may read, made alike by the service (first, and without JavaScript) and by the browser (again,
 * when something happened). It knows what the public API answers, and nothing else.
 */
import type { VNode } from 'preact';
import type { LiveEvent } from './live.ts';
import type { Words } from './words.tsx';

/** What stands in the address: `{ showId, number }` and what follows the `?`. */
export type Address = Readonly<Record<string, string>>;

/** Answers by the name under which they were asked; one that was refused is `undefined`. */
export type Given = Readonly<Record<string, unknown>>;

export interface PublicPage {
  readonly name: string;
  /**
   * Address as the router of the service spells it: `/shows/:showId/classes/:number`. A part named `...Id` is a UUID, any
   * other a number: what is not, leads nowhere, and nothing of it reaches the API.
   */
  readonly path: string;
  /** Files of words beside `shared`. */
  readonly topics: readonly string[];
  /**
   * The next addresses of the API to ask, by name, of what was answered so far; `{}`: that is all. `null`: there is no
   * such page (404). What stands in them out of the address behind `?` must be encoded.
   */
  readonly asks: (address: Address, given: Given) => Readonly<Record<string, string>> | null;
  /** What the page needs of an answer, by its name: the rest does not travel to the reader a second time. */
  readonly keeps?: Readonly<Record<string, (answer: unknown, address: Address) => unknown>>;
  /** Needs to know what day it is: then `given.now` is an instant, to the quarter of an hour. */
  readonly readsClock?: true;
  /** Nobody types on it, and nobody looks after it: it loads itself anew when the service brings another script. */
  readonly renewsItself?: true;
  readonly title: (given: Given, words: Words) => string;
  /** A sentence for whoever is sent the address. It names nobody. */
  readonly description?: (given: Given, words: Words) => string;
  /** Is the page another after this? Left out: after everything that happens at its show. */
  readonly concerns?: (event: LiveEvent, given: Given) => boolean;
  readonly View: (seen: Seen) => VNode;
}

export interface Seen {
  readonly given: Given;
  readonly address: Address;
}

/** Names that stand for a part of the path, wherever they are used. */
export const isNameOfPart = (name: string): boolean =>
  name.endsWith('Id') || name === 'number' || name === 'backNumber';

/** A page asks in so many rounds at most, and so many questions in all: a view of it has a known price. */
const mostQuestions = 12;

/** Asks until the page has all that it needs. `undefined`: there is no such page. */
export async function gather(
  page: Pick<PublicPage, 'asks' | 'keeps'>,
  address: Address,
  ask: (path: string) => Promise<unknown>,
): Promise<Given | undefined> {
  let given: Given = {};
  for (;;) {
    const asks = page.asks(address, given);
    if (asks === null) return undefined;
    const next = Object.entries(asks).filter(([name]) => !(name in given));
    if (next.length === 0) return given;
    if (Object.keys(given).length + next.length > mostQuestions) throw new Error('a page asks without end');
    const answers = await Promise.all(
      next.map(async ([name, path]) => {
        const answer = await ask(path);
        const keep = answer === undefined ? undefined : page.keeps?.[name];
        return [name, keep === undefined ? answer : keep(answer, address)] as const;
      }),
    );
    given = { ...given, ...Object.fromEntries(answers) };
  }
}

/** What the service writes into a page, for the script that takes it over. */
export interface Rendered {
  readonly page: string;
  readonly address: Address;
  readonly given: Given;
  /** ETag of what is given, for asking whether it is still so. */
  readonly version: string;
  /** Address of the script that the page was made for; `undefined`: the pages are not built. */
  readonly script?: string | undefined;
}

/** `?as=answers`: what is given alone, without the page around it. */
export const answersQuery = { name: 'as', value: 'answers' } as const;
