/** Requests that are made before the clock starts, and sent one after another over one connection. */
import { type Agent, request } from 'node:http';
import { type PhoneKey, prove } from '../../src/phone/index.ts';

export interface ReadyRequest {
  readonly method: 'GET' | 'POST';
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  /** JSON; left out: none. */
  readonly body?: string;
}

/** Until the answer is read to its end. Rejects for any status but `status`. */
export function send(
  agent: Agent,
  status: number,
  { method, url, headers, body }: ReadyRequest,
): Promise<void> {
  const more =
    body === undefined
      ? {}
      : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) };
  return new Promise((done, failed) => {
    const asked = request(url, { method, agent, headers: { ...headers, ...more } }, (answer) => {
      answer.resume();
      answer.once('end', () => {
        if (answer.statusCode === status) done();
        else failed(new Error(`${method} ${url} was answered with ${answer.statusCode}`));
      });
    });
    asked.once('error', failed);
    asked.end(body);
  });
}

/** Token and proof (RFC 9449) for one request; both end after some minutes. */
export type ProofMaker = (method: ReadyRequest['method'], url: string) => Promise<ReadyRequest['headers']>;

/** The phone asks for a token and for the nonce of the service; what it makes then goes out without asking again. */
export async function proofMaker(address: string, key: PhoneKey): Promise<ProofMaker> {
  const url = `${address}/v1/phone-tokens`;
  const ask = async (nonce?: string) =>
    fetch(url, { method: 'POST', headers: { dpop: await prove(key, { method: 'POST', url, nonce }) } });
  const nonce = (await ask()).headers.get('dpop-nonce') ?? undefined;
  const answer = await ask(nonce);
  if (!answer.ok) throw new Error(`the phone got no token: ${await answer.text()}`);
  const { accessToken: token } = (await answer.json()) as { accessToken: string };
  return async (method, of) => ({
    authorization: `DPoP ${token}`,
    dpop: await prove(key, { method, url: of, nonce, token }),
  });
}

/** Takes one after another out of `all`. */
export const taking =
  <One>(all: One[]) =>
  (): One => {
    const one = all.pop();
    if (one === undefined) throw new Error('there is nothing left to measure with');
    return one;
  };
