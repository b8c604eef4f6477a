/** Asks the service as the phone of the gate, or as the office where it is signed in, and sorts what it says. */
import { PhoneClient } from '../../../phone/index.ts';
import { keptKey } from '../../shared/kept-key.ts';
import { askAsOffice, forgetToken, keptToken } from '../../shared/office-client.ts';
import type { Problem } from '../../shared/problem-words.ts';

export type Answered =
  | { readonly is: 'done'; readonly body: unknown }
  /** Sent again as it is, it would be refused again. */
  | { readonly is: 'refused'; readonly problem: Problem }
  /** Nothing of this phone or session is taken any more. */
  | { readonly is: 'ended'; readonly problem: Problem }
  /** Nobody answered, somebody in between did, or the service is in trouble: later again. */
  | { readonly is: 'no-answer' };

export interface Asked {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'DELETE';
  readonly path: string;
  readonly body?: unknown;
  readonly idempotencyKey?: string;
}

export interface Sender {
  readonly as: 'phone' | 'office';
  /** Whose the kept records are: another one does not get to see them. */
  readonly name: string;
  readonly ask: (asked: Asked) => Promise<Answered>;
}

/** The phone's key goes first; a desk where the office is signed in needs none. `undefined`: neither is there. */
export async function openSender(): Promise<Sender | undefined> {
  const key = await keptKey().catch(() => undefined);
  if (key !== undefined) {
    const client = new PhoneClient(location.origin, key);
    const send = ({ method = 'GET', path, body, idempotencyKey }: Asked) =>
      client.request({ method, path, headers: headersOf(idempotencyKey), ...bodyOf(body) });
    return { as: 'phone', name: `phone ${key.thumbprint}`, ask: sorted(send, endOfPhone) };
  }
  if (keptToken() === undefined) return undefined;
  const send = ({ method = 'GET', path, body, idempotencyKey }: Asked) =>
    askAsOffice({ method, path, headers: headersOf(idempotencyKey), ...bodyOf(body) });
  return { as: 'office', name: 'office', ask: sorted(send, endOfSession) };
}

const headersOf = (key: string | undefined) => ({
  'accept-language': document.documentElement.lang,
  ...(key === undefined ? {} : { 'idempotency-key': key }),
});
const bodyOf = (body: unknown) => (body === undefined ? {} : { body });

const endOfPhone = (_status: number, { code }: Problem) =>
  code === 'phone_revoked' || code === 'phone_unknown';

function endOfSession(status: number): boolean {
  if (status !== 401) return false;
  forgetToken();
  return true;
}

type IsEnd = (status: number, problem: Problem) => boolean;
/** The service is there and cannot now. */
const passing = [408, 425, 429];

function sorted(send: (asked: Asked) => Promise<Response>, isEnd: IsEnd): Sender['ask'] {
  return async (asked) => {
    try {
      const answer = await send(asked);
      const body: unknown = answer.status === 204 ? null : await answer.json().catch(() => undefined);
      // A page to sign in to some network answers with 200 too, but never with JSON.
      if (body === undefined || answer.redirected) return { is: 'no-answer' };
      if (answer.ok) return { is: 'done', body };
      return sortedRefusal(answer.status, body, isEnd);
    } catch {
      return { is: 'no-answer' };
    }
  };
}

function sortedRefusal(status: number, body: unknown, isEnd: IsEnd): Answered {
  if (!isProblem(body)) return { is: 'no-answer' };
  if (isEnd(status, body)) return { is: 'ended', problem: plain(body) };
  // Any other 401 is about one token or one proof, and the next one is better.
  if (status === 401 || status >= 500 || passing.includes(status)) return { is: 'no-answer' };
  return { is: 'refused', problem: plain(body) };
}

const isProblem = (body: unknown): body is Problem =>
  typeof body === 'object' && body !== null && 'code' in body && typeof body.code === 'string';

const plain = ({ code, title, detail, whatToDo }: Problem): Problem => ({
  ...{ code, title, whatToDo },
  ...(detail === undefined ? {} : { detail }),
});
