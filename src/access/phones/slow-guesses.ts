/**
 * Guessing codes is slowed per network address: ten that nobody made within a minute, then that address waits for the
 * rest of the minute. Other codes do not count, whether they are taken or have ended: whoever has one did not guess
 * it, and a whole panel can pair over the one address of the show grounds. A wait of at most a minute means that a stranger
 * on the same network can vex the office but not lock it out. Kept in the process: several processes allow as many
 * tries each, which the length of the code can bear.
 */
import { normalizeIP } from '@fastify/rate-limit';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { Problem, problem } from '../../platform/problems/index.ts';

const wrongCodesAllowed = 10;
const windowSeconds = 60;

export class SlowGuesses {
  readonly #tries = new RateLimiterMemory({ points: wrongCodesAllowed, duration: windowSeconds });

  /** Runs `attempt`; where it throws pairing_code_unknown, the try counts against the address. Throws pairing_slowed. */
  async count<T>(ip: string, attempt: () => Promise<T>): Promise<T> {
    const address = normalizeIP(ip);
    // Counted before the code is looked up, so that tries at the same moment cannot slip past each other.
    await this.#tries.consume(address).catch(refuse);
    let guessed = false;
    try {
      return await attempt();
    } catch (error) {
      guessed = error instanceof Problem && error.code === 'pairing_code_unknown';
      throw error;
    } finally {
      if (!guessed) await this.#tries.reward(address);
    }
  }
}

function refuse(reason: unknown): never {
  if (!(reason instanceof RateLimiterRes)) throw reason;
  const seconds = Math.max(1, Math.ceil(reason.msBeforeNext / 1_000));
  throw problem('pairing_slowed', {
    detail: `Wait ${seconds} seconds.`,
    headers: { 'retry-after': String(seconds) },
  });
}
