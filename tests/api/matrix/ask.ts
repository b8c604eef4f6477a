/** Sends what the walk asks, and keeps every answer, so that all of them can be searched afterwards. */
import type { App } from '../../../src/platform/app-parts.ts';
import { type Example, examples, type Ids } from './examples.ts';
import type { FoundRoute } from './routes-of-app.ts';
import type { Kind } from './verdict.ts';

export interface Sender {
  /** "secretary of another show" */
  readonly name: string;
  readonly kind: Kind;
  /** Headers that say who it is, for one request. */
  readonly headers: (method: string, address: string) => Promise<Readonly<Record<string, string>>>;
}

export interface Answered {
  readonly sender: Sender;
  readonly route: string;
  readonly address: string;
  readonly status: number;
  readonly code: string | undefined;
  /** Body and headers, as one text. */
  readonly text: string;
}

export const nameOf = ({ method, url }: FoundRoute): string => `${method} ${url}`;

/** Throws where the ids lack one that the address needs: the walk would ask for nothing. */
export function addressOf({ url }: FoundRoute, ids: Ids): string {
  return url.replace(/:(\w+)/g, (_, name: string) => {
    const id = ids[name];
    if (id === undefined) throw new Error(`the prepared show has no ${name}; add it to prepared-show.ts`);
    return id;
  });
}

/** `form` is right: refused is who sends. `broken`: let in is who sends, and nothing is done. */
type Body = 'right' | 'broken';

interface Ask {
  readonly route: FoundRoute;
  readonly sender: Sender;
  /** Those in the address. */
  readonly ids: Ids;
  /** Those in the body and the query, where they are others. */
  readonly bodyIds?: Ids;
  readonly body?: Body;
}

const writes = (method: string): boolean => !['GET', 'HEAD'].includes(method);

export async function ask(
  app: App,
  { route, sender, ids, bodyIds = ids, body = 'right' }: Ask,
): Promise<Answered> {
  const example: Example = examples[nameOf(route)]?.(bodyIds) ?? {};
  const address = addressOf(route, ids);
  const payload = payloadOf(route.method, body, example);
  const answer = await app.inject({
    method: route.method as 'GET',
    url: example.query === undefined ? address : `${address}?${example.query}`,
    headers: {
      ...(payload === undefined ? {} : { 'content-type': 'application/json' }),
      ...example.headers,
      ...(await sender.headers(route.method, address)),
    },
    ...(payload === undefined ? {} : { payload }),
  });
  const text = `${JSON.stringify(answer.headers)}\n${answer.payload}`;
  return {
    sender,
    route: nameOf(route),
    address,
    status: answer.statusCode,
    code: codeIn(answer.payload),
    text,
  };
}

function payloadOf(method: string, body: Body, example: Example): string | undefined {
  if (!writes(method)) return undefined;
  if (body === 'broken') return '{';
  return example.body === undefined ? undefined : JSON.stringify(example.body);
}

function codeIn(payload: string): string | undefined {
  const found: unknown = /"code":"([a-z_]+)"/.exec(payload)?.[1];
  return typeof found === 'string' ? found : undefined;
}

/** Refused for who sends it; a record of another show may be told to be none. */
export const isRefused = ({ status }: Answered): boolean =>
  status === 401 || status === 403 || status === 404;
/** A right id was asked for, so it must be there too. */
export const isAnswered = ({ status }: Answered): boolean =>
  ![401, 403, 404].includes(status) && status < 500;
