/** Asking and following need no account: whoever has the code is whoever asked. */
import { z } from 'zod';
import { openTo } from '../access/index.ts';
import { created, once } from '../office/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { inTransaction } from '../platform/database.ts';
import { refusals } from '../platform/http/refusals.ts';
import { askQuery } from './ask-query.ts';
import { followCode, followCodeOf } from './follow-code.ts';
import { readFollowed, withdrawQuery } from './follow-query.ts';
import { askedBody, followedBody, id, newQuery } from './query-schemas.ts';

const tags = ['Queries'];
const config = openTo('everyone');
/** In a header and never in an address, which ends up in histories and in what is sent on. */
const headers = z.looseObject({ 'query-follow-code': followCode });

export function familyRoutes(app: App, parts: AppParts): void {
  app.post('/classes/:classId/queries', {
    config,
    schema: {
      tags,
      summary: 'Say that something looks wrong about a class',
      description:
        'The office reads it and answers; nobody else is told that there is a query. It is no protest: those go by the ' +
        "rules of the governing body to the steward or the show committee, and the judge's decision stands until then.",
      params: z.object({ classId: id }),
      body: newQuery,
      response: {
        201: askedBody,
        ...refusals(
          ...(['not_found', 'back_number_not_in_class', 'unknown_reference', 'queries_waiting'] as const),
          ...(['idempotency_key_reused', 'answer_erased', 'too_many_requests'] as const),
        ),
      },
    },
    handler: async (request, reply) => {
      reply.header('cache-control', 'no-store');
      const { classId } = request.params;
      const asked = await once({ parts, request, reply }, async (tx) =>
        created(await askQuery(parts, tx, { classId, query: request.body })),
      );
      // Not part of the answer that is kept for a request sent twice.
      return { id: asked.id, followCode: followCodeOf(parts.tokenKey, asked.id) };
    },
  });

  app.get('/queries/followed', {
    config,
    schema: {
      tags,
      summary: 'The query that the code follows, with its answers',
      headers,
      response: { 200: followedBody, ...refusals('follow_code_unknown') },
    },
    handler: async (request, reply) => {
      reply.header('cache-control', 'no-store');
      return readFollowed(parts.db, request.headers['query-follow-code']);
    },
  });

  app.post('/queries/followed/withdrawals', {
    config,
    schema: {
      tags,
      summary: 'Take the query back, before it is answered: its words go at once',
      description: 'No body.',
      headers,
      response: { 200: followedBody, ...refusals('follow_code_unknown', 'query_closed') },
    },
    handler: async (request, reply) => {
      reply.header('cache-control', 'no-store');
      // Done twice it is the same, so it needs no key; and a kept answer would be told to whoever sends the same key.
      const code = request.headers['query-follow-code'];
      return inTransaction(parts.db, (tx) => withdrawQuery(parts, tx, code));
    },
  });
}
