/**
 * A page that everyone may read, made alike by the service (first, and without JavaScript) and by the browser (again,
 * when something happened). It knows what the public API answers, and nothing else.
 */
import type { VNode } from 'preact';
import type { Words } from './words.tsx';

/** What stands in the address: `{ showId, number }` and what follows the `?`. */
export type Address = Readonly<Record<string, string>>;

/** Answers by the name under which they were asked; one that was refused is `undefined`. */
export type Given = Readonly<Record<string, unknown>>;

export interface PublicPage {
  readonly name: string;
  /** Address as the router of the service spells it: `/shows/:showId/classes/:number`. */
  readonly path: string;
  /** Files of words beside `shared`. */
  readonly topics: readonly string[];
  /**
   * The next addresses of the API to ask, by name, of what was answered so far; `{}`: that is all. `null`: there is no
   * such page (404).
   */
  readonly asks: (address: Address, given: Given) => Readonly<Record<string, string>> | null;
  readonly title: (given: Given, words: Words) => string;
  readonly View: (seen: Seen) => VNode;
}

export interface Seen {
  readonly given: Given;
  readonly address: Address;
}

/** Asks until the page has all that it needs. `undefined`: there is no such page. */
export async function gather(
  page: Pick<PublicPage, 'asks'>,
  address: Address,
  ask: (path: string) => Promise<unknown>,
): Promise<Given | undefined> {
  let given: Given = {};
  for (;;) {
    const asks = page.asks(address, given);
    if (asks === null) return undefined;
    const next = Object.entries(asks).filter(([name]) => !(name in given));
    if (next.length === 0) return given;
    const answers = await Promise.all(next.map(async ([name, path]) => [name, await ask(path)] as const));
    given = { ...given, ...Object.fromEntries(answers) };
  }
}
