/**
 * The pages that everyone reads, rendered by the service: they work without JavaScript, on a bad connection, and can
 * be printed and passed on. Each asks the service's own public API, so it can show nothing that is not public.
 */
import { constants } from 'node:zlib';
import compress from '@fastify/compress';
import type { FastifyInstance } from 'fastify';
import { assetsOf } from '../platform/http/built-pages.ts';
import { describeFailure } from '../platform/http/quiet-log.ts';
import { boardPages } from '../web/board/pages.tsx';
import { exhibitorPages } from '../web/exhibitor/pages.tsx';
import type { PublicPage } from '../web/shared/public-page.ts';
import { inTrouble, tooMuchAsked } from './in-trouble.tsx';
import { nothingHere } from './nothing-here.tsx';
import { NotAnswered } from './own-api.ts';
import { choicesOf } from './page-request.ts';
import { PageWords } from './page-words.ts';
import { type Room, sendPage, sendWords } from './send-page.ts';

/** The script of the room that a page belongs to. */
const rooms: readonly { readonly entry: string; readonly pages: readonly PublicPage[] }[] = [
  { entry: 'board/main.tsx', pages: boardPages },
  { entry: 'exhibitor/main.tsx', pages: exhibitorPages },
];

export async function renderedPages(app: FastifyInstance): Promise<void> {
  // The pages hold no secret, so what a reader puts into an address and its length tell nothing (BREACH).
  await app.register(compress, { brotliOptions: { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } } });
  const words = new PageWords();
  for (const { entry, pages } of rooms) {
    const room: Room = { app, words, assets: assetsOf(entry) };
    for (const page of pages) {
      app.get(page.path, { schema: { hide: true } }, (request, reply) =>
        sendPage(room, page, { request, reply }),
      );
    }
  }
  const plain: Room = { app, words, assets: assetsOf('board/main.tsx') };
  app.get('/shows/*', { schema: { hide: true } }, (request, reply) =>
    sendWords(plain, nothingHere, { reply: reply.code(404), choices: choicesOf(request, reply) }),
  );
  failInWords(app, plain);
}

/** Whoever reads a page gets no problem details: the limits and what failed, said in words. */
function failInWords(app: FastifyInstance, room: Room): void {
  app.setErrorHandler((error, request, reply) => {
    const status = statusOf(error);
    if (status >= 500) request.log.error(describeFailure(error), 'failed');
    const wait = error instanceof NotAnswered ? error.retryAfter : retryAfterOf(error);
    if (wait !== undefined) reply.header('retry-after', wait);
    const page = status === 429 ? tooMuchAsked : inTrouble;
    return sendWords(room, page, { reply: reply.code(status), choices: choicesOf(request, reply) });
  });
}

function statusOf(error: unknown): number {
  const status = typeof error === 'object' && error !== null && 'status' in error ? error.status : undefined;
  return typeof status === 'number' && status >= 400 ? status : 500;
}

/** The limit of addresses refuses a page before the page is asked for (`platform/http/rate-limits.ts`). */
function retryAfterOf(error: unknown): string | undefined {
  const { details } = error as { readonly details?: { readonly headers?: Record<string, string> } };
  return details?.headers?.['retry-after'];
}
