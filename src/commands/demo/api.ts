/** The demo is a client like any other: everything goes through the service's own API, with passes. */

export interface Asked {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH';
  /** Under `/v1`. */
  readonly path: string;
  /** A bearer token; without one the request comes from the public. */
  readonly pass?: string;
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
  /** `Body` is what the route answers with. Throws Refused. */
  readonly ask: <Body>(asked: Asked) => Promise<Answered<Body>>;
}

/** `address`: where the service listens, e.g. `http://127.0.0.1:4070`. */
export function apiAt(address: string): Api {
  return {
    ask: async <Body>(asked: Asked) => {
      const { method, path, body } = asked;
      const response = await fetch(`${address}/v1${path}`, {
        method,
        headers: headersOf(asked),
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      const text = await response.text();
      const read: unknown = text === '' ? null : JSON.parse(text);
      if (!response.ok) throw new Refused(asked, read as Problem);
      return { body: read as Body, etag: response.headers.get('etag') ?? '' };
    },
  };
}

function headersOf({ pass, body, ifMatch, idempotencyKey }: Asked): Record<string, string> {
  return {
    ...(pass === undefined ? {} : { authorization: `Bearer ${pass}` }),
    ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    ...(ifMatch === undefined ? {} : { 'if-match': ifMatch }),
    ...(idempotencyKey === undefined ? {} : { 'idempotency-key': idempotencyKey }),
  };
}
