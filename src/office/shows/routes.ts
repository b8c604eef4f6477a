import { actorOf, mustServeAllShows, office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterId, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, showParams } from '../schemas/common.ts';
import { changeShow } from './change-show.ts';
import { createShow } from './create-show.ts';
import { newShow, showBody, showChange, showOf } from './show-schemas.ts';

const tags = ['Shows'];

export const showRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'All shows, as they were entered',
      querystring: pageQuery,
      response: { 200: pageOf(showBody), ...refusals('invalid_cursor', 'token_invalid') },
    },
    handler: async ({ query: { limit, cursor } }) => {
      const after = afterId(cursor);
      const rows = await prisma.show.findMany({
        ...(after === undefined ? {} : { where: { id: { gt: after } } }),
        orderBy: { id: 'asc' },
        take: limit + 1,
      });
      return pageFrom(rows, limit, { key: ({ id }) => id, item: showOf });
    },
  });

  app.post('/shows', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Set up a show',
      body: newShow,
      response: { 201: showBody, ...refusals(...accessRefusals, 'unknown_time_zone', 'days_out_of_order') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => {
        mustServeAllShows(actorOf(request));
        const show = await createShow(parts, tx, request.body);
        return created(show, `/v1/shows/${show.id}`);
      }),
  });

  app.get('/shows/:showId', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'One show',
      params: showParams,
      response: { 200: showBody, ...refusals('not_found', 'token_invalid') },
    },
    handler: async ({ params: { showId } }, reply) => {
      const show = await prisma.show.findUnique({ where: { id: showId } });
      if (show === null) throw problem('not_found');
      sendVersion(reply, show.version);
      return showOf(show);
    },
  });

  app.patch('/shows/:showId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Change a show (If-Match)',
      params: showParams,
      body: showChange,
      response: {
        200: showBody,
        ...refusals(
          ...accessRefusals,
          'stale_version',
          'if_match_required',
          'unknown_time_zone',
          'day_outside_show',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await changeShow(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            change: request.body,
          }),
        ),
      ),
  });
};
