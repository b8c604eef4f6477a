/**
 * Beside the slowing of each account: one network address that fails thirty times within a minute waits for the rest of
 * it. So nobody tries one password on a thousand names, fills the ledger with failures, or keeps the server busy with
 * argon2. What goes well does not count: a whole show ground may share one address. Kept in the process.
 */
import { normalizeIP } from '@fastify/rate-limit';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { Problem } from '../../platform/problems/index.ts';
import { slowed } from './guarded-account.ts';

const failuresAllowed = 30;
const windowSeconds = 60;
const failing: readonly string[] = ['sign_in_refused', 'setup_code_invalid'];

export class FailuresOfAddress {
  readonly #tries: RateLimiterMemory | undefined;

  /** Where requests are not limited at all, failures are not either. */
  constructor({ limited }: { readonly limited: boolean }) {
    const points = failuresAllowed;
    this.#tries = limited ? new RateLimiterMemory({ points, duration: windowSeconds }) : undefined;
  }

  /** Runs `attempt`. Throws what it throws, and sign_in_slowed. */
  async count<T>(ip: string, attempt: () => Promise<T>): Promise<T> {
    if (this.#tries === undefined) return attempt();
    const tries = this.#tries;
    const address = normalizeIP(ip);
    // Counted before it is looked at, so that tries at the same moment cannot slip past each other.
    await tries.consume(address).catch(refuse);
    let failed = false;
    try {
      return await attempt();
    } catch (error) {
      failed = error instanceof Problem && failing.includes(error.code);
      throw error;
    } finally {
      if (!failed) await tries.reward(address);
    }
  }
}

function refuse(reason: unknown): never {
  if (!(reason instanceof RateLimiterRes)) throw reason;
  throw slowed(Math.max(1, Math.ceil(reason.msBeforeNext / 1_000)));
}
