/**
 * Guessing codes is slowed per network address: ten wrong ones within a minute, then that address waits for the rest of
 * the minute. A right code does not count, so that a whole panel can pair over the one address of the show grounds; and a
 * wait of at most a minute means that a stranger on the same network can vex the office but not lock it out. Kept in
 * the process: several processes allow as many tries each, which the length of the code can bear.
 */
import { normalizeIP } from '@fastify/rate-limit';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { problem } from '../../platform/problems/index.ts';

const wrongCodesAllowed = 10;
const windowSeconds = 60;

export class SlowGuesses {
  readonly #tries = new RateLimiterMemory({ points: wrongCodesAllowed, duration: windowSeconds });

  /** Runs `attempt`; where it throws, the try counts against the address. Throws pairing_slowed. */
  async count<T>(ip: string, attempt: () => Promise<T>): Promise<T> {
    const address = normalizeIP(ip);
    // Counted before the code is looked up, so that tries at the same moment cannot slip past each other.
    await this.#tries.consume(address).catch(refuse);
    const result = await attempt();
    await this.#tries.reward(address);
    return result;
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
