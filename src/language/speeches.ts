/**
 * The languages that the sentences of the engine are told in: a folder of message files each, read once, when the
 * service starts. A further language is a further folder.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { LRUCache } from 'lru-cache';
import Negotiator from 'negotiator';
import { makeSpeech, type Speech } from '../engine/sentences/speech.ts';
import type { Told } from '../platform/problems/index.ts';

const folder = fileURLToPath(new URL('../engine/sentences/words', import.meta.url));

/** What is spoken where nobody asks for a language that is here, and what the others must say as well. */
const first = 'en';

/** By the tag of the language (BCP 47), English first. */
export const speeches: ReadonlyMap<string, Speech> = readSpeeches();

export const english: Speech = speechIn(first);

function readSpeeches(): Map<string, Speech> {
  const languages = readdirSync(folder).sort((a, b) => Number(b === first) - Number(a === first));
  const wanted = idsIn(textsOf(first));
  return new Map(
    languages.map((language) => {
      const texts = textsOf(language);
      mustSayAll(language, { wanted, said: new Set(idsIn(texts)) });
      return [language, makeSpeech(language, texts)];
    }),
  );
}

function textsOf(language: string): string[] {
  const files = readdirSync(join(folder, language)).filter((file) => file.endsWith('.ftl'));
  return files.map((file) => readFileSync(join(folder, language, file), 'utf8'));
}

function idsIn(texts: readonly string[]): string[] {
  return texts.flatMap((text) => [...text.matchAll(/^([A-Za-z][\w-]*) *=/gm)].map(([, id = '']) => id));
}

/** A sentence that is missing is noticed here, and not by a family that asks why it was third. */
function mustSayAll(
  language: string,
  { wanted, said }: { readonly wanted: readonly string[]; readonly said: ReadonlySet<string> },
): void {
  const missing = wanted.filter((id) => !said.has(id));
  if (missing.length > 0) throw new Error(`the words of "${language}" lack ${missing.join(', ')}`);
}

function speechIn(language: string): Speech {
  const speech = speeches.get(language);
  if (speech === undefined) throw new Error(`there are no words of the language "${language}"`);
  return speech;
}

const tags = [...speeches.keys()];

/** Browsers send a few dozen different headers; a posted result is asked for thousands of times. */
const chosen = new LRUCache<string, Speech>({ max: 200 });

/** By Accept-Language (RFC 9110, 12.5.4), English where none of its languages is here. */
export function speechFor(acceptLanguage: string | undefined): Speech {
  const asked = acceptLanguage ?? first;
  const known = chosen.get(asked);
  if (known !== undefined) return known;
  const headers = { 'accept-language': asked };
  const [language = first] = new Negotiator({ headers }).languages(tags);
  const speech = speechIn(language);
  chosen.set(asked, speech);
  return speech;
}

/** For the faults that a problem names: they are told once it is known who reads them. */
export const told =
  (sentence: (speech: Speech) => string): Told =>
  (acceptLanguage) =>
    sentence(speechFor(acceptLanguage));

export type Reply = Pick<FastifyReply, 'headers'>;

/** The language of an answer that holds sentences; it is said in the head, and caches keep the answers apart. */
export function tellIn(request: Pick<FastifyRequest, 'headers'>, reply: Reply): Speech {
  const speech = speechFor(request.headers['accept-language']);
  reply.headers({ 'content-language': speech.language, vary: 'accept-language' });
  return speech;
}
