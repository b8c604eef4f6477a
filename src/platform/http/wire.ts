/** Limits below HTTP: how long a request may take to come in, how large its head may be, and what is said to a broken one. */
import { STATUS_CODES } from 'node:http';
import type { Socket } from 'node:net';
import type { FastifyBaseLogger, FastifyServerOptions } from 'fastify';
import type { AppParts } from '../app-parts.ts';
import { type ProblemCode, problemCatalogue } from '../problems/index.ts';
import { problemMediaType } from './problem-answers.ts';
import { headersOfEarlyRefusals } from './security-headers.ts';

/** A card of 300 goes with twenty marks each is some 400 KB. */
const largestBody = 1_048_576;
/** A phone's token and its proof are some 2 KB together. */
const largestHeadBytes = 16_384;
/** A connection on which nothing has moved for so long is let go; live events say something every 15 s. */
const longestSilenceMilliseconds = 120_000;

export function wireLimits({ config, ids }: AppParts) {
  const requestTimeout = config.requestSeconds * 1_000;
  return {
    bodyLimit: largestBody,
    requestTimeout,
    connectionTimeout: longestSilenceMilliseconds,
    trustProxy: config.trustedProxies.length === 0 ? false : [...config.trustedProxies],
    http: {
      maxHeaderSize: largestHeadBytes,
      headersTimeout: Math.min(requestTimeout, 15_000),
      // Node.js looks for late requests this often: the limit holds to within a second, not within half a minute.
      connectionsCheckingInterval: 1_000,
    },
    clientErrorHandler(this: { readonly log: FastifyBaseLogger }, error: Error, socket: Socket) {
      refuseBroken({ error, socket, requestId: ids.next(), log: this.log });
    },
  } satisfies FastifyServerOptions & { readonly http: object };
}

const codeOf = (error: Error): string => ('code' in error ? String(error.code) : '');

function problemOfWire(code: string): ProblemCode {
  if (code === 'ERR_HTTP_REQUEST_TIMEOUT') return 'request_too_slow';
  return code === 'HPE_HEADER_OVERFLOW' ? 'head_too_large' : 'malformed_http';
}

interface Broken {
  readonly error: Error;
  readonly socket: Socket;
  readonly requestId: string;
  readonly log: FastifyBaseLogger;
}

/** Node.js gives the raw bytes along with the error; they may hold a token, so only the code is logged. */
function refuseBroken({ error, socket, requestId, log }: Broken): void {
  const reason = codeOf(error);
  if (reason === 'ECONNRESET' || socket.destroyed) return;
  const code = problemOfWire(reason);
  const { status, title, whatToDo } = problemCatalogue[code];
  log.info({ status, code: reason }, 'a request did not come in whole');
  const body = JSON.stringify({
    ...{ type: `/docs/errors#${code}`, title, status, code, whatToDo, requestId },
  });
  const head = [
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}`,
    `content-type: ${problemMediaType}; charset=utf-8`,
    `content-length: ${Buffer.byteLength(body)}`,
    ...Object.entries(headersOfEarlyRefusals).map(([name, value]) => `${name}: ${value}`),
    'connection: close',
  ];
  if (socket.writable) socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
  else socket.destroy();
}
