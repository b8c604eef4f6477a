/** What a page asks in the name of an account of the office. The token ends with the window: sessionStorage. */
import type { Answer } from './api.ts';

const storedAs = 'ringledger-session';

export type Session = Answer<'/v1/sessions', 'post'>;

export const keptToken = (): string | undefined => sessionStorage.getItem(storedAs) ?? undefined;
export const keepToken = (token: string): void => sessionStorage.setItem(storedAs, token);
export const forgetToken = (): void => sessionStorage.removeItem(storedAs);

export interface OfficeRequest {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** From the root: `/v1/shows/...` */
  readonly path: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  readonly signal?: AbortSignal;
}

/** Resolves with the service's answer, problems among them; rejects as `fetch` does where there is none. */
export function askAsOffice({
  method = 'GET',
  path,
  body,
  headers,
  signal,
}: OfficeRequest): Promise<Response> {
  const token = keptToken();
  const isFile = body instanceof Blob;
  return fetch(path, {
    method,
    headers: {
      'accept-language': document.documentElement.lang,
      ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
      ...(body === undefined || isFile ? {} : { 'content-type': 'application/json' }),
      ...headers,
    },
    ...(body === undefined ? {} : { body: isFile ? body : JSON.stringify(body) }),
    ...(signal === undefined ? {} : { signal }),
  });
}
