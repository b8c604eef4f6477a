/** What a reader asks for: an address that is checked before anything of it is asked further, and the reader's choices. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Choices, choiceCookie, choicesFrom, isTheme } from '../web/shared/choices.ts';
import { type Address, answersQuery, isNameOfPart } from '../web/shared/public-page.ts';
import { isLanguage } from '../web/shared/words.tsx';

const id = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;
/** Class numbers and back numbers. */
const number = /^[1-9]\d{0,4}$/;

/** They choose for the visits to come, or say what is to be sent: no part of what a page is about. */
const notOfThePage = new Set(['language', 'theme', answersQuery.name]);

/**
 * Parts of the path and what follows the `?`. `undefined`: a part of the path is no id and no number, so the address
 * leads nowhere. Whatever stands behind the `?` cannot pass for a part of the path.
 */
export function addressOf(request: FastifyRequest): Address | undefined {
  const parts = Object.entries(stringsOf(request.params));
  const fits = ([name, value]: [string, string]) => (name.endsWith('Id') ? id : number).test(value);
  if (!parts.every(fits)) return undefined;
  const asked = Object.entries(stringsOf(request.query)).filter(
    ([name]) => !notOfThePage.has(name) && !isNameOfPart(name),
  );
  return Object.fromEntries([...asked, ...parts]);
}

export const wantsAnswersAlone = (request: FastifyRequest): boolean =>
  stringsOf(request.query)[answersQuery.name] === answersQuery.value;

/** `?language=de` and `?theme=dark` choose for the visits to come, without a script. */
export function choicesOf(request: FastifyRequest, reply: FastifyReply): Choices {
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

const stringsOf = (values: unknown): Record<string, string> =>
  Object.fromEntries(
    Object.entries(values ?? {}).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
