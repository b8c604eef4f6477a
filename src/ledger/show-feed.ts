/**
 * The ledger of one show, told to everyone who listens in this process: each new line is read once and written to
 * all of them. Whoever joins with an older number is first brought up from the ledger, so nobody misses a line.
 */
import type { Sql } from '../platform/sql.ts';
import { isPublicLine } from './event-catalogue.ts';
import { type LedgerLine, lastLineOf, readLines } from './read-lines.ts';

export interface Listener {
  /** Does it hear what is not public? */
  readonly hearsAll: boolean;
  /** Number of the last line that it was told, or that was passed over because it is not public. */
  position: number;
  readonly write: (frame: string) => void;
}

const page = 500;

export class ShowFeed {
  readonly #sql: Sql;
  readonly #showId: string;
  readonly #listeners = new Set<Listener>();
  #sequence = 0;
  #reading: Promise<void> | undefined;
  #heardAgain = false;

  constructor(sql: Sql, showId: string) {
    this.#sql = sql;
    this.#showId = showId;
  }

  /** Call it before the first listener joins. */
  async begin(): Promise<void> {
    this.#sequence = await lastLineOf(this.#sql, this.#showId);
  }

  /** Tells what the listener has missed, then lets it hear what comes. */
  async join(listener: Listener): Promise<void> {
    do {
      await this.#bringUp(listener);
    } while (listener.position < this.#sequence);
    this.#listeners.add(listener);
  }

  leave(listener: Listener): void {
    this.#listeners.delete(listener);
  }

  /** The ledger has grown. Several calls while it is being read make one more reading. */
  readonly hear = (): void => {
    if (this.#reading !== undefined) {
      this.#heardAgain = true;
      return;
    }
    this.#reading = this.#tellNew()
      .catch(() => undefined)
      .finally(() => {
        this.#reading = undefined;
        if (!this.#heardAgain) return;
        this.#heardAgain = false;
        this.hear();
      });
  };

  async #bringUp(listener: Listener): Promise<void> {
    for (;;) {
      const lines = await readLines(this.#sql, {
        showId: this.#showId,
        after: listener.position,
        limit: page,
      });
      for (const line of lines) tell(listener, line, frameOf(line));
      if (lines.length < page) return;
    }
  }

  async #tellNew(): Promise<void> {
    for (;;) {
      const lines = await readLines(this.#sql, { showId: this.#showId, after: this.#sequence, limit: page });
      for (const line of lines) this.#tellAll(line);
      if (lines.length < page) return;
    }
  }

  #tellAll(line: LedgerLine): void {
    const frame = frameOf(line);
    this.#sequence = line.sequence;
    for (const listener of this.#listeners) tell(listener, line, frame);
  }
}

function tell(listener: Listener, line: LedgerLine, frame: string): void {
  if (line.sequence <= listener.position) return;
  listener.position = line.sequence;
  if (listener.hearsAll || isPublicLine(line.type)) listener.write(frame);
}

/** As the HTML standard, "Server-sent events", asks for it: one event, its id the line's number. */
function frameOf({ sequence, type, body, at }: LedgerLine): string {
  const data = JSON.stringify({ sequence, type, at: at.toISOString(), body });
  return `id: ${sequence}\nevent: ${type}\ndata: ${data}\n\n`;
}
