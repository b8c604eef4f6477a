/** One page to one reader: asked of the API, written in the reader's language, or "you have it already" (304). */
import { createHash } from 'node:crypto';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { PageAssets } from '../platform/http/built-pages.ts';
import { renderedPagePolicy } from '../platform/http/serve-pages.ts';
import type { Choices } from '../web/shared/choices.ts';
import { type Address, type Given, gather, type PublicPage } from '../web/shared/public-page.ts';
import { htmlDocument } from './html-document.tsx';
import { nothingHere } from './nothing-here.tsx';
import { askOwnApi } from './own-api.ts';
import { addressOf, choicesOf, wantsAnswersAlone } from './page-request.ts';
import type { PageWords } from './page-words.ts';

export interface Room {
  readonly app: FastifyInstance;
  readonly assets: PageAssets;
  readonly words: PageWords;
}

/** Throws NotAnswered. */
export async function sendPage(
  room: Room,
  page: PublicPage,
  { request, reply }: { readonly request: FastifyRequest; readonly reply: FastifyReply },
): Promise<FastifyReply> {
  const choices = choicesOf(request, reply);
  const address = addressOf(request);
  const ask = askOwnApi(room.app, { language: choices.language, from: request.ip });
  const gathered = address === undefined ? undefined : await gather(page, address, ask);
  if (address === undefined || gathered === undefined) {
    reply.code(404);
    return sendWords(room, nothingHere, { reply, choices });
  }
  const given = page.readsClock ? { ...gathered, now: quarterHour() } : gathered;
  const version = etagOf(room.assets.script, given);
  reply.headers({ 'cache-control': 'no-cache', vary: 'Accept-Language, Cookie' });
  if (wantsAnswersAlone(request)) {
    if (isKnown(request, version)) return reply.header('etag', version).code(304).send();
    return reply.header('etag', version).send({ given, version, script: room.assets.script });
  }
  const html = write(room, { page, address, given, choices, version });
  reply.headers({ 'content-security-policy': renderedPagePolicy, etag: etagOf(html) });
  if (isKnown(request, etagOf(html))) return reply.code(304).send();
  return reply.type('text/html; charset=utf-8').send(html);
}

/** A page that says one thing, whoever asks: it leads nowhere, it failed. The status is the caller's. */
export function sendWords(
  room: Room,
  page: PublicPage,
  { reply, choices }: { readonly reply: FastifyReply; readonly choices: Choices },
): FastifyReply {
  const html = write(room, { page, address: {}, given: {}, choices, version: '' });
  return reply
    .headers({ 'content-security-policy': renderedPagePolicy, 'cache-control': 'no-store' })
    .type('text/html; charset=utf-8')
    .send(html);
}

interface ToWrite {
  readonly page: PublicPage;
  readonly address: Address;
  readonly given: Given;
  readonly choices: Choices;
  readonly version: string;
}

function write({ words, assets }: Room, { page, choices, address, given, version }: ToWrite): string {
  const spoken = words.of(choices.language, ['shared', ...page.topics]);
  const rendered = { page: page.name, address, given, version, script: assets.script };
  return htmlDocument({ page, rendered, words: spoken, choices, assets });
}

/** Weak: compressed or not, it says the same (RFC 9110, 8.8.1). */
const etagOf = (...parts: readonly unknown[]): string =>
  `W/"${createHash('sha256').update(JSON.stringify(parts)).digest('base64url').slice(0, 27)}"`;

const isKnown = (request: FastifyRequest, etag: string): boolean =>
  (request.headers['if-none-match'] ?? '').split(',').some((known) => known.trim() === etag);

function quarterHour(): string {
  const quarter = 15 * 60_000;
  return new Date(Math.floor(Date.now() / quarter) * quarter).toISOString();
}
