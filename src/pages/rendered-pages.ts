/**
 * The pages that everyone reads, rendered by the service: they work without JavaScript, on a bad connection, and can
 * be printed and passed on. Each asks the service's own public API, so it can show nothing that is not public.
 */
import { createHash } from 'node:crypto';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { assetsOf, type PageAssets } from '../platform/http/built-pages.ts';
import { renderedPagePolicy } from '../platform/http/serve-pages.ts';
import { boardPages } from '../web/board/pages.tsx';
import { type Choices, choiceCookie, choicesFrom, isTheme } from '../web/shared/choices.ts';
import { type Address, gather, type PublicPage } from '../web/shared/public-page.ts';
import { isLanguage } from '../web/shared/words.tsx';
import { htmlDocument } from './html-document.tsx';
import { nothingHere } from './nothing-here.tsx';
import { PageWords } from './page-words.ts';

/** The script of the room that a page belongs to. */
const rooms: readonly { readonly entry: string; readonly pages: readonly PublicPage[] }[] = [
  { entry: 'board/main.tsx', pages: boardPages },
];

export async function renderedPages(app: FastifyInstance): Promise<void> {
  const words = new PageWords();
  for (const { entry, pages } of rooms) {
    const assets = assetsOf(entry);
    for (const page of pages) {
      app.get(page.path, { schema: { hide: true } }, async (request, reply) => {
        await sendPage({ app, page, assets, words }, request, reply);
        return reply;
      });
    }
  }
}

interface PageToSend {
  readonly app: FastifyInstance;
  readonly page: PublicPage;
  readonly assets: PageAssets;
  readonly words: PageWords;
}

async function sendPage(
  { app, page, assets, words }: PageToSend,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  const choices = choicesOf(request, reply);
  const address = { ...stringsOf(request.query), ...stringsOf(request.params) };
  const ask = (url: string) => askOwnApi(app, url, { choices, from: request.ip });
  const given = await gather(page, address, ask);
  if (given === undefined) {
    reply.code(404);
    return sendPage({ app, page: nothingHere, assets, words }, request, reply);
  }
  const spoken = words.of(choices.language, ['shared', ...page.topics]);
  send(request, reply, htmlDocument({ page, given, address, words: spoken, choices, assets }));
}

/** A reader who has it already is told so; everyone else's copy is asked about each time. */
function send(request: FastifyRequest, reply: FastifyReply, html: string): void {
  const etag = `"${createHash('sha256').update(html).digest('base64url')}"`;
  reply.headers({
    'content-security-policy': renderedPagePolicy,
    'cache-control': 'no-cache',
    vary: 'Accept-Language, Cookie',
    etag,
  });
  if (request.headers['if-none-match'] === etag) reply.code(304).send();
  else reply.type('text/html; charset=utf-8').send(html);
}

/** `?language=de` and `?theme=dark` choose for the visits to come, without a script. */
function choicesOf(request: FastifyRequest, reply: FastifyReply): Choices {
  const { language, theme } = stringsOf(request.query);
  const secure = request.protocol === 'https';
  const choices = choicesFrom({
    cookies: request.headers.cookie ?? '',
    preferred: (request.headers['accept-language'] ?? '').split(',').map((tag) => tag.trim()),
  });
  if (isLanguage(language)) reply.header('set-cookie', choiceCookie('language', language, { secure }));
  if (isTheme(theme)) reply.header('set-cookie', choiceCookie('theme', theme, { secure }));
  return {
    language: isLanguage(language) ? language : choices.language,
    theme: isTheme(theme) ? theme : choices.theme,
  };
}

interface Asking {
  readonly choices: Choices;
  /** Limits count the reader, not the service. */
  readonly from: string;
}

/** As anybody would ask it. What is refused is `undefined`; what fails, fails the page. */
async function askOwnApi(app: FastifyInstance, url: string, { choices, from }: Asking): Promise<unknown> {
  const answer = await app.inject({
    url,
    remoteAddress: from,
    headers: { 'accept-language': choices.language },
  });
  if (answer.statusCode === 200) return answer.json();
  if (answer.statusCode < 500) return undefined;
  throw new Error(`a page asked ${url} and was answered ${answer.statusCode}`);
}

const stringsOf = (values: unknown): Address =>
  Object.fromEntries(
    Object.entries(values ?? {}).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
