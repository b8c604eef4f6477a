/** The office hears the question, and answers it. */
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { actorOf, office, officeOf, openTo, reachesShow } from '../access/index.ts';
import { changed, created, once } from '../office/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { answerQuery, eraseQuery } from './answer-query.ts';
import { listQueries } from './list-queries.ts';
import { answerBody, erasedBody, id, newAnswer, officeQueries } from './query-schemas.ts';

const tags = ['Queries'];
const config = openTo(...office);
const access = ['token_missing', 'token_invalid', 'not_allowed', 'not_found'] as const;
const params = z.object({ queryId: id });

export function officeRoutes(app: App, parts: AppParts): void {
  const preHandler = mustBeOfficeOf(parts);

  app.get('/shows/:showId/queries', {
    config,
    schema: {
      tags,
      summary: 'What families ask: open queries first, by class',
      params: z.object({ showId: id }),
      response: { 200: officeQueries, ...refusals(...access) },
    },
    handler: async ({ params: { showId } }, reply) => {
      reply.header('cache-control', 'no-store');
      if ((await parts.db.prisma.show.count({ where: { id: showId } })) === 0) throw problem('not_found');
      return { items: await listQueries(parts.db, showId) };
    },
  });

  app.post('/queries/:queryId/answers', {
    config,
    preHandler,
    schema: {
      tags,
      summary: 'Answer a query, and say what came of it',
      description: 'It changes no result. A correction is a new posting, with its reason.',
      params,
      body: newAnswer,
      response: { 201: answerBody, ...refusals(...access, 'query_closed', 'idempotency_key_reused') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => {
        const answeredBy = officeOf(actorOf(request)).accountId;
        const { queryId } = request.params;
        return created(await answerQuery(parts, tx, { queryId, answer: request.body, answeredBy }));
      }),
  });

  app.post('/queries/:queryId/erasures', {
    config,
    preHandler,
    schema: {
      tags,
      summary: 'Take the words of a query and of its answers out, for good',
      description: 'An open one is closed by it. That there was a query stays. No body.',
      params,
      response: { 200: erasedBody, ...refusals(...access) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(await eraseQuery(parts, tx, request.params.queryId)),
      ),
  });
}

const showOfQuery: Statement = {
  name: 'queries.show-of-query',
  text: 'SELECT show_id AS "showId" FROM query WHERE id = $1::uuid',
};

/** A query of another show is not there for this office. Throws not_found. */
function mustBeOfficeOf({ db }: AppParts) {
  return async (request: FastifyRequest): Promise<void> => {
    const { queryId } = params.parse(request.params);
    const found = await db.sql.row<{ showId: string }>(showOfQuery, [queryId]);
    if (found !== undefined && reachesShow(actorOf(request), found.showId)) return;
    throw problem('not_found', { detail: 'There is no such query in this show.' });
  };
}
