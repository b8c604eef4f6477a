/** The phone is nobody's any more: the service is told, and nothing of the judge stays on it. */
import { PhoneClient } from '../../../phone/index.ts';
import { forgetGate } from '../../gate/desk/kept.ts';
import { forgetKey, keptKey } from '../../shared/kept-key.ts';
import { forgetRemarks } from '../go/waiting-remarks.ts';
import type { LetGoOutcome } from './desk-types.ts';
import { Service } from './service.ts';
import { change, countUnsent, openStore, wipe } from './store.ts';

/**
 * Also for the page that pairs. Refuses while something is unsent, unless `evenUnsent`. What others left behind stays:
 * it is theirs, and is thrown away where it is read.
 */
export async function letGoOfPhone({ evenUnsent = false } = {}): Promise<LetGoOutcome> {
  const store = await openStore();
  try {
    const unsent = await countUnsent(store);
    if (unsent > 0 && !evenUnsent) return { ok: false, why: 'unsent', unsent };
    const told = await tellService();
    await change(store, wipe);
    forgetRemarks();
    await forgetKey();
    // What it saw as the gate's, where it was that.
    await forgetGate();
    // The tabs of the judge's page hold what they read: they let go of it too.
    const tabs = new BroadcastChannel('ringledger-desk');
    tabs.postMessage({ kind: 'let-go' });
    tabs.close();
    return { ok: true, told };
  } finally {
    store.close();
  }
}

/** Changes and signatures that the service does not have, and that would be lost with the phone. */
export async function unsentHere(): Promise<number> {
  const store = await openStore();
  try {
    return await countUnsent(store);
  } finally {
    store.close();
  }
}

/** Somebody who gives the phone back does not want to wait for a signal that does not come. */
const patienceMilliseconds = 8_000;

async function tellService(): Promise<boolean> {
  const key = await keptKey();
  if (key === undefined) return true;
  const service = new Service(new PhoneClient(location.origin, key), () => undefined);
  const patience = new Promise<undefined>((resolve) => setTimeout(resolve, patienceMilliseconds));
  const asked = service.ask({ method: 'DELETE', path: '/v1/phones/current' });
  const answer = await Promise.race([asked, patience]);
  // Taken off the show before, or never known: there is nothing to tell.
  return answer?.is === 'done' || answer?.is === 'ended';
}
