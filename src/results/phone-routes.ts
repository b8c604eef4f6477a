import { actorOf, openTo } from '../access/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { currentPhone, readCurrentPhone } from './read-phone.ts';

/** What a phone asks first. It stands here because where a class stands follows from its cards and postings. */
export function phoneRoutes(app: App, parts: AppParts): void {
  app.get('/phones/current', {
    config: openTo('judge', 'scribe', 'gate'),
    schema: {
      tags: ['Phones'],
      summary: 'What this phone is: its role, its show, its seats and their classes',
      response: {
        200: currentPhone,
        ...refusals('token_missing', 'token_invalid', 'token_expired', 'not_allowed', 'phone_revoked'),
      },
    },
    handler: async (request, reply) => {
      const actor = actorOf(request);
      if (!('phoneId' in actor)) throw new Error('only a phone gets here');
      reply.header('cache-control', 'no-store');
      return readCurrentPhone(parts.db.sql, actor);
    },
  });
}
