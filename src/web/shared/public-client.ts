/** What a page asks without a pass. */

/** Resolves with the service's answer, problems among them; rejects as `fetch` does where there is none. */
export const askAsAnyone = (path: string, asked: RequestInit = {}): Promise<Response> => {
  const headers = new Headers(asked.headers);
  headers.set('accept-language', document.documentElement.lang);
  return fetch(path, { ...asked, headers });
};
