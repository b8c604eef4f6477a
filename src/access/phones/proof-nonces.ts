/**
 * The server's nonce (RFC 9449, sections 8 and 9) says when a proof was made, by the clock of the service: a phone whose
 * clock is wrong by hours is as good as any other. It changes every five minutes; this one and the one before are
 * taken, so a proof is good for five to ten minutes and a phone in the middle of a request is not turned away.
 */
import { createHmac } from 'node:crypto';
import type { AppParts } from '../../platform/app-parts.ts';
import { keyFor } from '../derived-key.ts';

const windowMilliseconds = 5 * 60_000;

/** For so long a used proof must be remembered: no nonce that it could name is taken any more. */
export const proofMilliseconds = 2 * windowMilliseconds;

export class ProofNonces {
  readonly #clock: AppParts['clock'];
  readonly #key: Uint8Array;
  readonly #known = new Map<number, string>();

  constructor({ clock, tokenKey }: Pick<AppParts, 'clock' | 'tokenKey'>) {
    this.#clock = clock;
    this.#key = keyFor(tokenKey, 'proof nonce');
  }

  /** The one to be sent out now. The same in every process that has the same secret. */
  now(): string {
    return this.#of(this.#window());
  }

  isGood(nonce: string): boolean {
    const window = this.#window();
    return nonce === this.#of(window) || nonce === this.#of(window - 1);
  }

  #window(): number {
    return Math.floor(this.#clock.now().getTime() / windowMilliseconds);
  }

  #of(window: number): string {
    const known = this.#known.get(window);
    if (known !== undefined) return known;
    const nonce = createHmac('sha256', this.#key).update(String(window)).digest('base64url').slice(0, 22);
    if (this.#known.size > 8) this.#known.clear();
    this.#known.set(window, nonce);
    return nonce;
  }
}
