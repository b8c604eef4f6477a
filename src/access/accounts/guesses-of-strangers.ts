/**
 * Names that have no account are slowed just as accounts are, or the waiting would tell who has one. Kept in the process
 * and bounded; under a fingerprint, since people type their password into the wrong field.
 */
import { createHash } from 'node:crypto';
import { LRUCache } from 'lru-cache';
import { afterFailure, type Guesses } from './slowed-guessing.ts';

const namesKept = 10_000;
const unknown: Guesses = { failures: 0, slowedUntil: null };

export class GuessesOfStrangers {
  readonly #guesses = new LRUCache<string, Guesses>({ max: namesKept });

  of(signIn: string): Guesses {
    return this.#guesses.get(keyOf(signIn)) ?? unknown;
  }

  fail(signIn: string, at: Date): void {
    this.#guesses.set(keyOf(signIn), afterFailure(this.of(signIn), at));
  }
}

const keyOf = (signIn: string): string => createHash('sha256').update(signIn).digest('base64');
