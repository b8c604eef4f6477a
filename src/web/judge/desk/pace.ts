/** When to try again, and how often to look. */

const first = 1_000;
const longest = 60_000;

/** Twice as long after each failure, and never all phones of a show at the same moment. */
export const waitAfter = (failures: number, chance = Math.random()): number =>
  Math.min(longest, first * 2 ** Math.min(failures, 10)) * (0.5 + chance / 2);

/** A class that is being marked, where another phone writes too; where none does, only the office changes anything. */
export const classEvery = (otherPhones: number): number => (otherPhones > 0 ? 5_000 : 15_000);

export const dayEvery = 60_000;

/** Resolves with the next `ring`, or after that time. */
export class Bell {
  #ringing = false;
  #ring: (() => void) | undefined;

  ring(): void {
    this.#ringing = true;
    this.#ring?.();
  }

  async wait(milliseconds: number): Promise<void> {
    if (!this.#ringing) {
      let timer: ReturnType<typeof setTimeout> | undefined;
      await new Promise<void>((resolve) => {
        this.#ring = resolve;
        timer = setTimeout(resolve, milliseconds);
      });
      clearTimeout(timer);
      this.#ring = undefined;
    }
    this.#ringing = false;
  }
}
