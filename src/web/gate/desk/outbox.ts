/** Changes on their way: kept before they are shown, sent in the order in which they were made, each once in effect. */
import { signal } from '@preact/signals';
import { v4 } from 'uuid';
import type { Problem } from '../../shared/problem-words.ts';
import type { Asked, Sender } from './ask.ts';
import type { Change, ClassLine, Outgoing } from './gate-types.ts';
import type { KeptStore } from './kept.ts';
import type { Heard } from './reader.ts';
import { inTurns } from './turns.ts';

type Kept = Outgoing & { readonly sequence?: number };

export interface OutboxParts {
  readonly store: KeptStore;
  readonly sender: Sender;
  readonly news: Heard & {
    /** The service has answered to a change of this class. */
    readonly taken: (classId: string) => Promise<void>;
  };
}

export class Outbox {
  readonly items = signal<readonly Kept[]>([]);
  readonly #parts: OutboxParts;
  #inHand: string | undefined;
  showId = '';

  constructor(parts: OutboxParts) {
    this.#parts = parts;
  }

  async load(): Promise<void> {
    this.items.value = await this.#parts.store.getAll('outgoing');
  }

  /** Resolves once it is kept. */
  async add({ id: classId, number }: Pick<ClassLine, 'id' | 'number'>, change: Change): Promise<void> {
    const item: Outgoing = {
      ...{ id: v4(), classId, classNumber: number, change, refused: null },
      madeAt: new Date().toISOString(),
    };
    await this.#parts.store.add('outgoing', item);
    await this.load();
  }

  /** What waits is taken back as if it had never been; what is refused is put away. `false`: it may be there already. */
  async drop(id: string): Promise<boolean> {
    const found = this.items.peek().find((item) => item.id === id);
    if (found?.sequence === undefined || this.#inHand === id) return false;
    await this.#parts.store.delete('outgoing', found.sequence);
    await this.load();
    return true;
  }

  /** One tab at a time, one change after another; the first that nobody answers ends it until the next call. */
  readonly send = inTurns(() =>
    alone(async () => {
      await this.load();
      for (let next = this.#next(); next !== undefined; next = this.#next()) {
        this.#inHand = next.id;
        const isAnswered = await this.#sendOne(next).finally(() => {
          this.#inHand = undefined;
        });
        if (!isAnswered) return;
      }
    }),
  );

  #next(): Kept | undefined {
    return this.items.peek().find(({ refused }) => refused === null);
  }

  /** `false`: later again. */
  async #sendOne(item: Kept): Promise<boolean> {
    const { sender, news } = this.#parts;
    const answer = await sender.ask(requestOf(this.showId, item));
    news.heard(answer.is !== 'no-answer');
    if (answer.is === 'no-answer') return false;
    if (answer.is === 'ended') {
      news.ended(answer.problem);
      return false;
    }
    // What the service says of the class now is read first, so that the sheet does not jump back in between.
    await news.taken(item.classId);
    await this.#settle(item, answer.is === 'refused' ? answer.problem : undefined);
    return true;
  }

  async #settle(item: Kept, refused: Problem | undefined): Promise<void> {
    const { store } = this.#parts;
    if (refused !== undefined) await store.put('outgoing', { ...item, refused });
    else if (item.sequence !== undefined) await store.delete('outgoing', item.sequence);
    await this.load();
  }
}

function requestOf(showId: string, { id, classId, change }: Outgoing): Asked {
  const base = `/v1/shows/${showId}/classes/${classId}`;
  switch (change.kind) {
    case 'call':
      return { method: 'POST', path: `${base}/calls`, idempotencyKey: id };
    case 'status': {
      const { classEntryId, status, reason } = change;
      return {
        ...{ method: 'PUT', path: `${base}/entries/${classEntryId}/status`, idempotencyKey: id },
        body: { status, reason },
      };
    }
    case 'order': {
      const { order, reason } = change;
      return { method: 'PUT', path: `${base}/order-of-go`, body: { order, reason }, idempotencyKey: id };
    }
  }
}

async function alone(work: () => Promise<void>): Promise<void> {
  if (!('locks' in navigator)) return work();
  await navigator.locks.request('ringledger-gate-outbox', work);
}
