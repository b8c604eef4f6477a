/** What the page asks of the service about this phone, and what follows from the answers. */
import { makePhoneKey, PhoneClient, type PhoneKey } from '../../phone/index.ts';
import { letGoOfPhone } from '../judge/desk/let-go.ts';
import type { Answer } from '../shared/api.ts';
import { keepPages } from '../shared/keep-pages.ts';
import { forgetKey, keepKey, keptKey } from '../shared/kept-key.ts';
import { type Problem, problemIn } from '../shared/problem-words.ts';

export type PairedPhone = Answer<'/v1/phones/current'>;

/** What stands in the way: the service refused (its code), or something here does, by a code of `problems.ftl`. */
export type InTheWay =
  | Problem
  | { readonly code: 'no_answer' | 'key_not_kept' | 'code_not_whole' | 'let_go_not_told' };

export type Found =
  | { readonly is: 'paired'; readonly phone: PairedPhone }
  | { readonly is: 'not-paired'; readonly because: InTheWay | undefined }
  /** It has a key, and the service did not say whether that is paired. */
  | { readonly is: 'unknown'; readonly because: InTheWay };

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
  if (key === undefined) return { is: 'not-paired', because: { code: 'key_not_kept' } };
  const answer = await clientOf(key).pair(code).catch(noAnswer);
  if (answer === undefined) return { is: 'not-paired', because: { code: 'no_answer' } };
  if (answer.ok) return askWho(key);
  const problem = await problemIn(answer);
  if (problem.code === 'key_already_paired') return askWho(key);
  return { is: 'not-paired', because: problem };
}

/** Nothing of the judge stays here, also what is unsent: who asks for this was told of it (`unsentHere`). */
export async function letGo(): Promise<Found> {
  const outcome = await letGoOfPhone({ evenUnsent: true });
  const told = outcome.ok && outcome.told;
  return { is: 'not-paired', because: told ? undefined : { code: 'let_go_not_told' } };
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
  if (answer === undefined) return { is: 'unknown', because: { code: 'no_answer' } };
  if (answer.ok) {
    // While there is signal: the judge's page opens without any from now on.
    void keepPages();
    return { is: 'paired', phone: (await answer.json()) as PairedPhone };
  }
  const problem = await problemIn(answer);
  switch (problem.code) {
    case 'phone_unknown':
      return { is: 'not-paired', because: undefined };
    case 'phone_revoked':
      await forgetKey();
      return { is: 'not-paired', because: problem };
    default:
      return { is: 'unknown', because: problem };
  }
}

/** What `fetch` rejects with says nothing that would help. */
const noAnswer = () => undefined;
