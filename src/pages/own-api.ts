/** The service asks its own public API, as anybody would: nothing that is not public can get onto a page. */
import type { FastifyInstance } from 'fastify';
import type { Language } from '../web/shared/words.tsx';

interface Reader {
  readonly language: Language;
  /** Each question counts as one of the reader's own: a page is no way around the limits. */
  readonly from: string;
}

/** A question that was not answered: too many of them (429), or the service is in trouble. */
export class NotAnswered extends Error {
  readonly status: number;
  /** Seconds, as the API said it. */
  readonly retryAfter: string | undefined;

  constructor(status: number, retryAfter?: string) {
    super(`a page asked the API and was answered ${status}`);
    this.status = status;
    this.retryAfter = retryAfter;
  }
}

/** Resolves with the answer; `undefined` where the API refused it as such. Throws NotAnswered. */
export function askOwnApi(app: FastifyInstance, { language, from }: Reader) {
  return async (url: string): Promise<unknown> => {
    const answer = await app.inject({ url, remoteAddress: from, headers: { 'accept-language': language } });
    if (answer.statusCode === 200) return answer.json();
    if (answer.statusCode < 500 && answer.statusCode !== 429) return undefined;
    const retryAfter = answer.headers['retry-after'];
    throw new NotAnswered(answer.statusCode, retryAfter === undefined ? undefined : String(retryAfter));
  };
}
