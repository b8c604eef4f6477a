/** Says, across processes, that a show's ledger has a new line: one LISTEN connection for the whole process. */
import pg from 'pg';

export interface LiveLines {
  /**
   * `heard` is called after every commit that appended to the show's ledger, and once more whenever the connection
   * was lost in between, because a line may have been missed. Returns how to stop.
   */
  readonly subscribe: (showId: string, heard: () => void) => () => void;
  readonly close: () => Promise<void>;
}

/** Where `appendLine` notifies; the payload is the show's id and the line's number. */
export const ledgerChannel = 'ledger_line';

type Heard = () => void;

const longestPauseMilliseconds = 5_000;

class PostgresLines implements LiveLines {
  readonly #url: string;
  readonly #subscribers = new Map<string, Set<Heard>>();
  #client: pg.Client | undefined;
  #again: NodeJS.Timeout | undefined;
  #tries = 0;
  #closed = false;

  constructor(url: string) {
    this.#url = url;
  }

  readonly subscribe = (showId: string, heard: Heard): (() => void) => {
    const known = this.#subscribers.get(showId) ?? new Set<Heard>();
    this.#subscribers.set(showId, known.add(heard));
    return () => {
      known.delete(heard);
      if (known.size === 0 && this.#subscribers.get(showId) === known) this.#subscribers.delete(showId);
    };
  };

  readonly close = async (): Promise<void> => {
    this.#closed = true;
    clearTimeout(this.#again);
    await this.#client?.end().catch(() => undefined);
  };

  async listen(): Promise<void> {
    const client = new pg.Client({
      connectionString: this.#url,
      application_name: 'ringledger live',
      keepAlive: true,
    });
    client.on('notification', ({ payload }) => this.#tell(payload?.split(' ')[0] ?? ''));
    client.on('error', () => undefined);
    client.once('end', () => this.#lost());
    await client.connect();
    await client.query(`LISTEN ${ledgerChannel}`);
    this.#client = client;
    this.#tries = 0;
  }

  #tell(showId: string): void {
    for (const heard of this.#subscribers.get(showId) ?? []) heard();
  }

  #lost(): void {
    this.#client = undefined;
    if (this.#closed) return;
    this.#tries += 1;
    const pause = Math.min(longestPauseMilliseconds, 100 * 2 ** this.#tries);
    clearTimeout(this.#again);
    this.#again = setTimeout(() => void this.#listenAgain(), pause);
  }

  async #listenAgain(): Promise<void> {
    try {
      await this.listen();
      for (const showId of this.#subscribers.keys()) this.#tell(showId);
    } catch {
      this.#lost();
    }
  }
}

/** Listens from now on; comes back by itself after a lost connection. */
export async function listenToLedger(url: string): Promise<LiveLines> {
  const lines = new PostgresLines(url);
  await lines.listen();
  return lines;
}
