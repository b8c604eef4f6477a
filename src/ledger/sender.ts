/** On whose behalf the work at hand is done. It is set once for a request, so that no line of a ledger can forget it. */
import { AsyncLocalStorage } from 'node:async_hooks';
import type { LineActor } from '../evidence/index.ts';

const sender = new AsyncLocalStorage<LineActor>();

/** `work`, and all that it begins, is done on behalf of `actor`. */
export const onBehalfOf = <T>(actor: LineActor, work: () => T): T => sender.run(actor, work);

/** Outside a request it is the service itself. */
export const senderNow = (): LineActor => sender.getStore() ?? { as: 'service' };
