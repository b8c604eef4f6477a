/**
 * What a browser may do with an answer (Content Security Policy Level 3; OWASP Secure Headers). The service gives
 * out records, not pages, so the rule for everything is "nothing"; the few pages say what they need.
 */
import { createHash } from 'node:crypto';
import helmet from '@fastify/helmet';
import type { App } from '../app-parts.ts';

/** For answers that are no page: nothing may be loaded, framed, sent or run. */
const nothing = {
  'default-src': ["'none'"],
  // It follows from the first; ASVS 5.0, 3.4.3 asks for it by name.
  'object-src': ["'none'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
  'frame-ancestors': ["'none'"],
};

/** The same for what is refused before a request has found its way to the hooks below. */
export const headersOfEarlyRefusals: Readonly<Record<string, string>> = {
  'content-security-policy': Object.entries(nothing)
    .map(([directive, values]) => `${directive} ${values.join(' ')}`)
    .join(';'),
  'strict-transport-security': 'max-age=31536000; includeSubDomains',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
};

/** Photos of a paper card are chosen as files and codes are read by the phone's own camera app: pages need none of these. */
const unusedPowers = ['camera', 'display-capture', 'geolocation', 'microphone', 'payment', 'serial', 'usb'];

export async function sendSecurityHeaders(app: App): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: nothing },
    referrerPolicy: { policy: 'no-referrer' },
    xFrameOptions: { action: 'deny' },
  });
  const permissions = unusedPowers.map((power) => `${power}=()`).join(', ');
  app.addHook('onRequest', async (_request, reply) => {
    reply.header('permissions-policy', permissions);
  });
  // An answer may hold names of children: it is kept by nobody, except where a route says otherwise.
  app.addHook('onSend', async (_request, reply) => {
    if (!reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
  });
}

export interface PageNeeds {
  /** The page as it is sent: the scripts that stand in it, and no others, may run. */
  readonly html: string;
  /** Does a script of it write style elements? Style alone runs nothing. */
  readonly writesStyle?: boolean;
}

/** The policy of a page: its own scripts by their hash, files and records of this service, nobody else. */
export function policyOfPage({ html, writesStyle = false }: PageNeeds): string {
  const scripts = ["'self'", ...inlineScripts(html).map(hashSource)];
  const style = writesStyle ? "'self' 'unsafe-inline'" : "'self'";
  return [
    "default-src 'none'",
    "object-src 'none'",
    `script-src ${scripts.join(' ')}`,
    `style-src ${style}`,
    "img-src 'self' data:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

const inlineScripts = (html: string): string[] =>
  [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/gi)].map(([, script = '']) => script);

/** CSP Level 3, 2.3.1: `'sha256-...'` over the text between the tags. */
const hashSource = (script: string): string =>
  `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
