/**
 * How much one place and one sender may ask. Three counts, each in a minute: of a network address, before anything
 * else is done for it; of an address at a door (a request that needs no pass and changes something: signing in,
 * pairing), which is where guessing happens; and of a known sender, an account or a phone, wherever it is.
 */
import rateLimit from '@fastify/rate-limit';
import type { FastifyRequest } from 'fastify';
import type { App } from '../app-parts.ts';
import { problem } from '../problems/index.ts';

const minuteMilliseconds = 60_000;

/** The counts of the addresses. Many phones of a show ground may come from one. 0: no limit. */
export async function limitAddresses(app: App, requestsPerMinute: number): Promise<void> {
  await app.register(rateLimit, { global: false, timeWindow: minuteMilliseconds });
  if (requestsPerMinute === 0) return;
  const count = app.createRateLimit({ max: requestsPerMinute });
  app.addHook('onRequest', async (request) => mustBeWithin(await count(request)));
}

export interface SenderLimits {
  readonly perSender: number;
  /** Of one address at a door. */
  readonly atDoors: number;
  /** `account 0198...`; `undefined`: nobody that is known. */
  readonly senderOf: (request: FastifyRequest) => string | undefined;
  /** Needs no pass and changes something. */
  readonly isDoor: (request: FastifyRequest) => boolean;
}

/** The counts that need to know who asks; to be called after the guard that finds out. 0: no limit. */
export function limitSenders(app: App, { perSender, atDoors, senderOf, isDoor }: SenderLimits): void {
  const countSender = app.createRateLimit({
    max: perSender,
    keyGenerator: (request) => senderOf(request) ?? '',
  });
  const countDoor = app.createRateLimit({ max: atDoors });
  app.addHook('onRequest', async (request) => {
    if (perSender > 0 && senderOf(request) !== undefined) mustBeWithin(await countSender(request));
    if (atDoors > 0 && isDoor(request)) mustBeWithin(await countDoor(request));
  });
}

type Count = Awaited<ReturnType<ReturnType<App['createRateLimit']>>>;

/** Throws too_many_requests, with the seconds to wait. */
function mustBeWithin(count: Count): void {
  if (count.isAllowed || !count.isExceeded) return;
  throw problem('too_many_requests', { headers: { 'retry-after': String(count.ttlInSeconds) } });
}
