/** How the stops of the tour are written: addresses to open, and lines to paste into a shell. */

export interface TourStop {
  readonly what: string;
  /** Addresses that everyone may open, and commands where somebody must be known. */
  readonly commands: readonly string[];
}

/** The office, by the token of its session in a shell variable: `SECRETARY`, `MANAGER`. */
export const by = (variable: string, address: string, more = ''): string =>
  `curl -s -H "authorization: Bearer $${variable}" ${more}'${address}'`;

export const sending = (method: string, body: unknown): string =>
  `-X ${method} -H 'content-type: application/json' -d '${JSON.stringify(body)}' `;

/** A phone proves each request with its key, which curl cannot. */
export function ask(phone: string, method: string, address: string, body?: unknown): string {
  const { pathname, search } = new URL(address);
  const sent = body === undefined ? '' : ` '${JSON.stringify(body)}'`;
  return `npm run --silent ask -- ${phone} ${method} '${pathname}${search}'${sent}`;
}
