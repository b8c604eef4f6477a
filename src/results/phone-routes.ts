import { z } from 'zod';
import { actorOf, openTo } from '../access/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { isKnownToReader } from '../platform/http/versions.ts';
import { currentPhone, readCurrentPhone } from './read-phone.ts';
import { readPhoneDay } from './read-phone-day.ts';
import { phoneDay } from './read-phone-day-schema.ts';

const tags = ['Phones'];
const accessRefusals = [
  'token_missing',
  'token_invalid',
  'token_expired',
  'not_allowed',
  'phone_revoked',
] as const;

const dayQuery = z.strictObject({
  classId: z.uuid().exactOptional().describe('Of this class alone, e.g. while it is being marked.'),
});

/** What a phone asks first. It stands here because where a class stands follows from its cards and postings. */
export function phoneRoutes(app: App, parts: AppParts): void {
  app.get('/phones/current', {
    config: openTo('judge', 'scribe', 'gate'),
    schema: {
      tags,
      summary: 'What this phone is: its role, its show, its seats and their classes',
      response: { 200: currentPhone, ...refusals(...accessRefusals) },
    },
    handler: async (request, reply) => {
      const actor = actorOf(request);
      if (!('phoneId' in actor)) throw new Error('only a phone gets here');
      reply.header('cache-control', 'no-store');
      return readCurrentPhone(parts.db.sql, actor);
    },
  });

  app.get('/phones/current/day', {
    config: openTo('judge', 'scribe'),
    schema: {
      tags,
      summary: 'All that the phone needs to judge its classes with no signal, at once',
      description:
        'Sheets, patterns, order of go, and its own cards with the versions of their drafts. Ask again with the ETag in ' +
        'If-None-Match: 304 says that nothing has changed.',
      querystring: dayQuery,
      response: {
        200: phoneDay,
        304: z.null().describe('Nothing has changed.'),
        ...refusals(...accessRefusals),
      },
    },
    handler: async (request, reply) => {
      const actor = actorOf(request);
      if (actor.as !== 'judge' && actor.as !== 'scribe') throw new Error('only a judge or scribe gets here');
      const { bytes, etag } = await readPhoneDay(parts.db.sql, { actor, ...request.query });
      reply.headers({ etag, 'cache-control': 'no-store' });
      if (isKnownToReader(request, etag)) return reply.code(304).send(null);
      return reply.type('application/json; charset=utf-8').send(bytes as never);
    },
  });
}
