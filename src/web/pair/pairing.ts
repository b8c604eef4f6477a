/** What the page asks of the service about this phone, and what follows from the answers. */
import { makePhoneKey, PhoneClient, type PhoneKey } from '../../phone/index.ts';
import { type FaultWords, keyNotKept, noSignal } from '../shared/fault-words.ts';
import { forgetKey, keepKey, keptKey } from '../shared/kept-key.ts';
import { problemIn, wordsFor } from '../shared/problem-words.ts';
import type { PhoneView } from './who.ts';

export type Found =
  | { readonly is: 'paired'; readonly phone: PhoneView }
  | { readonly is: 'not-paired'; readonly because: FaultWords | undefined }
  /** It has a key, and the service did not say whether that is paired. */
  | { readonly is: 'unknown'; readonly because: FaultWords };

let client: { readonly key: PhoneKey; readonly of: PhoneClient } | undefined;

/** One client for one key, so that its token and nonce are used again. */
function clientOf(key: PhoneKey): PhoneClient {
  if (client?.key.thumbprint !== key.thumbprint) client = { key, of: new PhoneClient(location.origin, key) };
  return client.of;
}

export async function whoIsThis(): Promise<Found> {
  const key = await keptKey();
  return key === undefined ? { is: 'not-paired', because: undefined } : askWho(key);
}

/** The key is kept before the code is sent: an answer that is lost on the way then loses nothing. */
export async function pairWith(code: string): Promise<Found> {
  const key = await keyAtHand();
  if (key === undefined) return { is: 'not-paired', because: keyNotKept };
  const answer = await clientOf(key).pair(code).catch(noAnswer);
  if (answer === undefined) return { is: 'not-paired', because: noSignal };
  if (answer.ok) return askWho(key);
  const problem = await problemIn(answer);
  if (problem.code === 'key_already_paired') return askWho(key);
  return { is: 'not-paired', because: wordsFor(problem) };
}

/** The key is gone for good; the service hears no more of this phone. */
export async function letGo(): Promise<Found> {
  await forgetKey();
  return { is: 'not-paired', because: undefined };
}

async function keyAtHand(): Promise<PhoneKey | undefined> {
  try {
    const kept = await keptKey();
    if (kept !== undefined) return kept;
    const key = await makePhoneKey();
    await keepKey(key);
    return key;
  } catch {
    return undefined;
  }
}

async function askWho(key: PhoneKey): Promise<Found> {
  const asked = { method: 'GET', path: '/v1/phones/current' };
  const answer = await clientOf(key).request(asked).catch(noAnswer);
  if (answer === undefined) return { is: 'unknown', because: noSignal };
  if (answer.ok) return { is: 'paired', phone: (await answer.json()) as PhoneView };
  const problem = await problemIn(answer);
  switch (problem.code) {
    case 'phone_unknown':
      return { is: 'not-paired', because: undefined };
    case 'phone_revoked':
      await forgetKey();
      return { is: 'not-paired', because: wordsFor(problem) };
    default:
      return { is: 'unknown', because: wordsFor(problem) };
  }
}

/** What `fetch` rejects with says nothing that would help. */
const noAnswer = () => undefined;
