import { z } from 'zod';
import { actorOf, mustServeAllShows, office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterId, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { created, once } from '../once.ts';
import { accessRefusals } from '../schemas/common.ts';

import { code, scoreSheet } from '../schemas/score-sheet.ts';
import { addScoreSheet } from './add-score-sheet.ts';
import { scoreSheetBody, scoreSheetOf } from './sheet-schemas.ts';

const tags = ['Score sheets'];
const version = z.coerce.number().int().min(1).max(1_000_000);

/** Score sheets belong to no show: all shows may use them, and none may change one. */
export const scoreSheetRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/score-sheets', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'All versions of all score sheets',
      querystring: pageQuery,
      response: { 200: pageOf(scoreSheetBody), ...refusals('invalid_cursor', 'token_invalid') },
    },
    handler: async ({ query: { limit, cursor } }) => {
      const after = afterId(cursor);
      const rows = await prisma.scoreSheet.findMany({
        ...(after === undefined ? {} : { where: { id: { gt: after } } }),
        orderBy: { id: 'asc' },
        take: limit + 1,
      });
      return pageFrom(rows, limit, { key: ({ id }) => id, item: scoreSheetOf });
    },
  });

  app.get('/score-sheets/:code/:version', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'One version of a score sheet',
      params: z.object({ code, version }),
      response: { 200: scoreSheetBody, ...refusals('not_found', 'token_invalid') },
    },
    handler: async ({ params }, reply) => {
      const row = await prisma.scoreSheet.findUnique({ where: { code_version: params } });
      if (row === null) throw problem('not_found');
      reply.header('cache-control', 'public, max-age=86400, immutable').header('etag', `"${row.hash}"`);
      return scoreSheetOf(row);
    },
  });

  app.post('/score-sheets', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Add a score sheet, or a new version of one',
      body: scoreSheet,
      response: {
        201: scoreSheetBody,
        ...refusals(...accessRefusals, 'sheet_invalid', 'sheet_version_taken'),
      },
    },
    handler: async (request, reply) => {
      // Classes that name no version take the last one: of all shows, so no single show's office may set it.
      mustServeAllShows(actorOf(request));
      return once({ parts, request, reply }, async (tx) => {
        const sheet = await addScoreSheet(parts, tx, { sheet: request.body, origin: 'added' });
        return created(sheet, `/v1/score-sheets/${sheet.code}/${sheet.version}`);
      });
    },
  });
};
