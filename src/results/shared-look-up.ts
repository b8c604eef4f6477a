/** A look-up that many ask for at the same moment is made once for all of them. */

/**
 * Whoever asks shares a look-up that has not begun yet, never one that is under way: so everyone is told what was
 * true when she asked, or later. At most one is under way for each key, and one waits.
 */
export class SharedLookUp<Found> {
  readonly #lookUp: (key: string) => Promise<Found>;
  readonly #underWay = new Map<string, Promise<Found>>();
  readonly #waiting = new Map<string, Promise<Found>>();

  constructor(lookUp: (key: string) => Promise<Found>) {
    this.#lookUp = lookUp;
  }

  /** Rejects with whatever the look-up throws. */
  ask(key: string): Promise<Found> {
    const waiting = this.#waiting.get(key);
    if (waiting !== undefined) return waiting;
    const before = this.#underWay.get(key);
    const next =
      before === undefined
        ? this.#begin(key)
        : before.then(
            () => this.#begin(key),
            () => this.#begin(key),
          );
    if (before !== undefined) this.#waiting.set(key, next);
    return next;
  }

  #begin(key: string): Promise<Found> {
    this.#waiting.delete(key);
    const found = this.#lookUp(key);
    this.#underWay.set(key, found);
    const end = () => {
      if (this.#underWay.get(key) === found) this.#underWay.delete(key);
    };
    found.then(end, end);
    return found;
  }
}
