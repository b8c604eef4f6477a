/** Documents over HTTP: what can be read as a page or a record, once more as a file. */
import { createHash } from 'node:crypto';
import { z } from 'zod';
import { openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { id } from '../platform/http/id.ts';
import { refusals } from '../platform/http/refusals.ts';
import { isKnownToReader } from '../platform/http/versions.ts';
import { readPostedResult } from '../results/index.ts';
import { resultCsv } from './result-csv.ts';

const csvAnswer = {
  description:
    'One row for each entry (RFC 4180). A cell that a spreadsheet could run begins with an apostrophe.',
  content: { 'text/csv': { schema: z.string() } },
};

export const documentRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/classes/:classId/result.csv', {
    config: openTo('everyone'),
    schema: {
      tags: ['Results'],
      summary: 'The posted result as a table for a spreadsheet, names in their public form',
      params: z.object({ classId: id }),
      response: {
        200: csvAnswer,
        304: z.null().describe('The reader has it already (If-None-Match).'),
        ...refusals('not_found', 'class_not_posted'),
      },
    },
    handler: async (request, reply) => {
      const speech = tellIn(request, reply);
      const result = await readPostedResult(parts.db, request.params.classId, speech);
      const text = resultCsv(result);
      const etag = `"${createHash('sha256').update(text).digest('base64url')}"`;
      reply.headers({ etag, 'cache-control': 'no-cache' });
      if (isKnownToReader(request, etag)) return reply.code(304).send(null);
      // The number of the class only: a file name may end up in a log or in a link.
      const file = `class-${result.class.number}-result-${result.posting.version}.csv`;
      reply.header('content-disposition', `attachment; filename="${file}"`);
      return reply.type('text/csv; charset=utf-8').send(text);
    },
  });
};
