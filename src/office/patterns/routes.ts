import { z } from 'zod';
import { office, officeReading, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterId, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, id, showParams } from '../schemas/common.ts';
import { newPattern, patternBody, patternOf, withManeuvers } from './pattern-schemas.ts';
import { addPattern, changePattern } from './save-pattern.ts';

const tags = ['Patterns'];
const patternParams = z.object({ showId: id, patternId: id });

/** Patterns are posted by the show when it chooses to; until then the office and its judges see them. */
export const patternRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows/:showId/patterns', {
    config: openTo(...officeReading, 'judge', 'scribe'),
    schema: {
      tags,
      summary: "All of the show's patterns",
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(patternBody), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      const after = afterId(cursor);
      const rows = await prisma.pattern.findMany({
        where: { showId, ...(after === undefined ? {} : { id: { gt: after } }) },
        include: withManeuvers,
        orderBy: { id: 'asc' },
        take: limit + 1,
      });
      return pageFrom(rows, limit, { key: (row) => row.id, item: patternOf });
    },
  });

  app.post('/shows/:showId/patterns', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Add a pattern',
      params: showParams,
      body: newPattern,
      response: { 201: patternBody, ...refusals(...accessRefusals, 'already_exists', 'drawing_invalid') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addPattern(parts, tx, { ...request.params, ...request.body })),
      ),
  });

  app.get('/shows/:showId/patterns/:patternId', {
    config: openTo(...officeReading, 'judge', 'scribe'),
    schema: {
      tags,
      summary: 'One pattern with its maneuvers',
      params: patternParams,
      response: { 200: patternBody, ...refusals(...accessRefusals) },
    },
    handler: async ({ params: { showId, patternId } }, reply) => {
      const row = await prisma.pattern.findFirst({
        where: { id: patternId, showId },
        include: withManeuvers,
      });
      if (row === null) throw problem('not_found');
      sendVersion(reply, row.version);
      return patternOf(row);
    },
  });

  app.put('/shows/:showId/patterns/:patternId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Put a pattern anew, before a card is written on it (If-Match)',
      params: patternParams,
      body: newPattern,
      response: {
        200: patternBody,
        ...refusals(
          ...accessRefusals,
          'pattern_in_use',
          'already_exists',
          'drawing_invalid',
          'stale_version',
          'if_match_required',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await changePattern(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            pattern: request.body,
          }),
        ),
      ),
  });
};
