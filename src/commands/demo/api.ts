/** The demo is a client like any other: everything goes through the service's own API. */
import type { PhoneRequest } from '../../phone/index.ts';

/** How somebody's requests reach the service: with the session of an account, with the proofs of a phone, or bare. */
export type Sends = (request: PhoneRequest) => Promise<Response>;

export interface Asked {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Under `/v1`. */
  readonly path: string;
  /** Left out: the request comes from anybody. */
  readonly as?: Sends;
  readonly body?: unknown;
  /** ETag that was read before. */
  readonly ifMatch?: string;
  readonly idempotencyKey?: string;
}

export interface Answered<Body> {
  readonly body: Body;
  readonly etag: string;
}

interface Problem {
  readonly code: string;
  readonly detail?: string;
  readonly [more: string]: unknown;
}

/** What the service refused, with its problem details. */
export class Refused extends Error {
  readonly problem: Problem;

  constructor({ method, path }: Asked, problem: Problem) {
    super(`${method} /v1${path} was refused: ${JSON.stringify(problem)}`);
    this.problem = problem;
  }
}

export interface Api {
  /** Where the service listens, e.g. `http://127.0.0.1:4070`. */
  readonly address: string;
  /** `Body` is what the route answers with. Throws Refused. */
  readonly ask: <Body>(asked: Asked) => Promise<Answered<Body>>;
}

export function apiAt(address: string): Api {
  const anybody = bare(address);
  return {
    address,
    ask: async <Body>(asked: Asked) => {
      const { method, path, body, as = anybody } = asked;
      const response = await as({ method, path: `/v1${path}`, body, headers: headersOf(asked) });
      const text = await response.text();
      const read: unknown = text === '' ? null : JSON.parse(text);
      if (!response.ok) throw new Refused(asked, read as Problem);
      return { body: read as Body, etag: response.headers.get('etag') ?? '' };
    },
  };
}

/** `session`: the token of a session; left out, nobody signs in. */
export function bare(address: string, session?: string): Sends {
  return ({ method, path, body, headers }) =>
    fetch(address + path, {
      method,
      headers: {
        ...headers,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(session === undefined ? {} : { authorization: `Bearer ${session}` }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
}

function headersOf({ ifMatch, idempotencyKey }: Asked): Record<string, string> {
  return {
    ...(ifMatch === undefined ? {} : { 'if-match': ifMatch }),
    ...(idempotencyKey === undefined ? {} : { 'idempotency-key': idempotencyKey }),
  };
}
