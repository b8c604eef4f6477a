/** Where a request came to, as the sender knows it: what a proof names, and what a link on paper leads to. */
import type { Config } from '../../config.ts';

/** The part of a request that says where it came to. */
interface Addressed {
  readonly protocol: string;
  readonly host: string;
  readonly url: string;
}

/** Scheme, host and port: the setting, or without it what the request says of itself. */
export const originOf = ({ publicAddress }: Config, { protocol, host }: Addressed): string =>
  publicAddress ?? `${protocol}://${host}`;

/**
 * Does `htu` name the address of this request, without query and fragment (RFC 9449, section 4.3, point 9)? Both are
 * compared as the URL standard spells them. Without PUBLIC_ADDRESS the scheme is not compared: behind a proxy that
 * ends TLS the service hears http where the phone said https.
 */
export function namesAddressOf(htu: string, config: Config, request: Addressed): boolean {
  const named = parsed(htu);
  const here = parsed(originOf(config, request) + (request.url.split('?')[0] ?? ''));
  if (named === undefined || here === undefined) return false;
  if (named.search !== '' || named.hash !== '' || named.username !== '' || named.password !== '')
    return false;
  if (config.publicAddress !== undefined && named.protocol !== here.protocol) return false;
  return /^https?:$/.test(named.protocol) && named.host === here.host && named.pathname === here.pathname;
}

const parsed = (address: string): URL | undefined => (URL.canParse(address) ? new URL(address) : undefined);
