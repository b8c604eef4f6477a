/**
 * Keeps a page up to date: asks for it again when something happened that concerns it, when a connection comes back, and
 * when the reader looks at it again. One request each time, answered with 304 where nothing is new.
 */
import type { Connection } from './connection.ts';
import { followShow, type LiveEvent } from './live.ts';
import { askAsAnyone } from './public-client.ts';
import { answersQuery, type Given, type Rendered } from './public-page.ts';

interface PageToFollow {
  readonly showId: string;
  /** Version of what is shown. */
  readonly version: string;
  /** Left out: the page stays with the script that it has. */
  readonly script?: string | undefined;
  readonly concerns: (event: LiveEvent) => boolean;
  readonly show: (given: Given) => void;
  readonly tell: (connection: Connection) => void;
}

/** Several events come at once when a class is posted, and to everybody: the page is asked for once, not all at a time. */
const calmMilliseconds = 300;
const spreadMilliseconds = 700;
const againMilliseconds = 10_000;

/** Until the returned verb is called. */
export function followPage(page: PageToFollow): () => void {
  const following = new Following(page);
  const isEnded = new AbortController();
  const { signal } = isEnded;
  const unfollow = followShow({
    showId: page.showId,
    ask: askAsAnyone,
    hear: (event) => (event.type === undefined || page.concerns(event)) && following.soon(),
    tell: (state) => following.heard(state === 'streaming'),
  });
  // A phone that slept heard nothing.
  document.addEventListener('visibilitychange', () => !document.hidden && following.soon(), { signal });
  addEventListener('online', () => following.soon(), { signal });
  return () => {
    isEnded.abort();
    unfollow();
    following.end();
  };
}

class Following {
  readonly #page: PageToFollow;
  #version: string;
  #streams = false;
  #heardAt = new Date();
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(page: PageToFollow) {
    this.#page = page;
    this.#version = page.version;
  }

  /** Something may have happened before the stream was open. */
  heard(streams: boolean): void {
    this.#streams = streams;
    if (streams) this.soon();
  }

  soon(wait = calmMilliseconds + Math.random() * spreadMilliseconds): void {
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => void this.#read(), wait);
  }

  end(): void {
    clearTimeout(this.#waiting);
  }

  /** What is shown stays when the service does not answer: an old board is better than none. */
  async #read(): Promise<void> {
    const answered = await this.#ask().catch(() => false);
    if (answered) this.#heardAt = new Date();
    else this.soon(againMilliseconds);
    const kind = answered ? (this.#streams ? 'live' : 'looking') : 'lost';
    this.#page.tell({ kind, heardAt: this.#heardAt });
  }

  async #ask(): Promise<boolean> {
    const address = new URL(location.href);
    address.searchParams.set(answersQuery.name, answersQuery.value);
    const answer = await askAsAnyone(address.pathname + address.search, {
      headers: { 'if-none-match': this.#version },
    });
    if (answer.status === 304 || answer.status === 404) return true;
    if (!answer.ok) return false;
    const { given, version, script } = (await answer.json()) as Omit<Rendered, 'page' | 'address'>;
    if (this.#page.script !== undefined && this.#page.script !== script) location.reload();
    this.#version = version;
    this.#page.show(given);
    return true;
  }
}
