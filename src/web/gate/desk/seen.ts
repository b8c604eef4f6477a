/** What was seen of the show, kept on this device so that it stays readable with no signal. */
import { type Signal, signal } from '@preact/signals';
import type { KeptStore } from './kept.ts';

/** One store for one sender: another one does not get to see it. */
export class SeenShelf {
  readonly #store: KeptStore;
  readonly #owner: string;
  readonly #signals = new Map<string, Signal<unknown>>();

  constructor(store: KeptStore, owner: string) {
    this.#store = store;
    this.#owner = owner;
  }

  /** Whatever somebody else saw on this device is thrown away, and what she saw herself is at hand. */
  async begin(): Promise<void> {
    const { store: shelf } = this.#store.transaction('seen', 'readwrite');
    for (let at = await shelf.openCursor(); at !== null; at = await at.continue()) {
      if (at.value.owner === this.#owner) this.of(at.key).value = at.value.value;
      else await at.delete();
    }
  }

  /** `undefined`: never seen. */
  of<What>(key: string): Signal<What | undefined> {
    let found = this.#signals.get(key);
    if (found === undefined) {
      found = signal<unknown>(undefined);
      this.#signals.set(key, found);
    }
    return found as Signal<What | undefined>;
  }

  async keep(key: string, value: unknown): Promise<void> {
    await this.#store.put('seen', { owner: this.#owner, value }, key);
    this.of(key).value = value;
  }

  async forgetAll(): Promise<void> {
    await this.#store.clear('seen');
    for (const one of this.#signals.values()) one.value = undefined;
  }
}
