/** What a phone says to the service: pairing, its tokens, and every request with a proof of its key. */
import type { PhoneKey } from './phone-key.ts';
import { prove } from './prove.ts';

export interface PhoneRequest {
  readonly method: string;
  /** From the root: `/v1/cards/...` */
  readonly path: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

interface Token {
  readonly accessToken: string;
  readonly endsInSeconds: number;
  /** By the phone's own clock, which may be wrong but goes on at the same pace. */
  readonly heardAt: number;
}

/** A phone at the edge of its signal may wait for ever: then it is as if nobody had answered. */
const answerWithinMilliseconds = 30_000;

/** A token is renewed so long before it ends that a slow request still finds it good. */
const renewBeforeSeconds = 60;

export class PhoneClient {
  readonly #address: string;
  readonly #key: PhoneKey;
  #nonce: string | undefined;
  #token: Token | undefined;
  #asking: Promise<Token> | undefined;

  /** `address`: where the service is, e.g. `https://ringledger.example`. */
  constructor(address: string, key: PhoneKey) {
    this.#address = address;
    this.#key = key;
  }

  /** With the code of an invitation. The answer is that of the service, a problem (RFC 9457) among them. */
  pair(code: string): Promise<Response> {
    const body = { code, publicKey: this.#key.publicKey };
    return this.#prove({ method: 'POST', path: '/v1/pairings', body });
  }

  /**
   * Sends a request with a token and a proof. A fault of the network rejects, as `fetch` does, and so does an answer that
   * has not come in whole after half a minute; what the service refuses is an answer like any other.
   */
  async request(asked: PhoneRequest): Promise<Response> {
    const token = await this.#goodToken();
    if (token instanceof Response) return token;
    const answer = await this.#prove(asked, token.accessToken);
    if (answer.status !== 401 || !says(answer, 'invalid_token')) return answer;
    // A phone that slept did not count the time: the token ended without its knowing.
    if (this.#token === token) this.#token = undefined;
    const next = await this.#goodToken();
    return next instanceof Response ? next : this.#prove(asked, next.accessToken);
  }

  /** The token at hand, or the next; the service's answer where it gives none. */
  async #goodToken(): Promise<Token | Response> {
    const known = this.#token;
    if (known !== undefined && secondsSince(known.heardAt) < known.endsInSeconds - renewBeforeSeconds)
      return known;
    this.#asking ??= this.#askForToken().finally(() => {
      this.#asking = undefined;
    });
    try {
      return await this.#asking;
    } catch (refused) {
      if (refused instanceof NoToken) return refused.answer.clone();
      throw refused;
    }
  }

  async #askForToken(): Promise<Token> {
    const answer = await this.#prove({ method: 'POST', path: '/v1/phone-tokens' });
    if (!answer.ok) throw new NoToken(answer);
    const { accessToken, endsInSeconds } = (await answer.json()) as Omit<Token, 'heardAt'>;
    this.#token = { accessToken, endsInSeconds, heardAt: performance.now() };
    return this.#token;
  }

  /** Once more with the nonce of the service, where it asks for one (RFC 9449, section 9). */
  async #prove(asked: PhoneRequest, token?: string): Promise<Response> {
    const answer = await this.#send(asked, token);
    if (answer.status !== 401 || !says(answer, 'use_dpop_nonce')) return answer;
    return this.#send(asked, token);
  }

  async #send({ method, path, body, headers }: PhoneRequest, token?: string): Promise<Response> {
    const url = this.#address + path;
    const proof = await prove(this.#key, { method, url, nonce: this.#nonce, token });
    const answer = await fetch(url, {
      method,
      headers: {
        ...headers,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(token === undefined ? {} : { authorization: `DPoP ${token}` }),
        dpop: proof,
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      signal: AbortSignal.timeout(answerWithinMilliseconds),
    });
    this.#nonce = answer.headers.get('dpop-nonce') ?? this.#nonce;
    return answer;
  }
}

class NoToken extends Error {
  readonly answer: Response;

  constructor(answer: Response) {
    super('the service gave no token');
    this.answer = answer;
  }
}

const secondsSince = (then: number) => (performance.now() - then) / 1_000;

/** The word of `WWW-Authenticate` (RFC 9449, sections 7.1 and 9). */
const says = ({ headers }: Response, error: 'use_dpop_nonce' | 'invalid_token') =>
  (headers.get('www-authenticate') ?? '').includes(`error="${error}"`);
