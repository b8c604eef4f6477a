/** The archive of a show: taken out, and brought in. */
import { z } from 'zod';
import { actorOf, mustServeAllShows, office, openTo } from '../access/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { exportShow } from './export/export-show.ts';
import { archiveForm } from './form/archive.ts';
import { id, sha256, thumbprint } from './form/spellings.ts';
import { importArchive } from './import/import-archive.ts';

const tags = ['Archives'];
/** One class of 300 entries and nine judges is some 3 MB; photos of paper cards come on top. */
const largestArchive = 64 * 1_048_576;

const archiveDocument = z
  .looseObject({ form: z.string() })
  .meta({ description: `${archiveForm}; its form is api-docs/archive.schema.json.` });

const importedBody = z.strictObject({
  showId: id,
  head: z.strictObject({ sequence: z.int(), hash: sha256 }).describe('The last line that came with it.'),
  keys: z
    .array(thumbprint)
    .describe('Thumbprints (RFC 7638) of the keys that it was signed by: compare them with its service.'),
});

export const archiveRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/shows/:showId/archive', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'The whole show as one signed document',
      params: z.object({ showId: id }),
      querystring: z.object({
        names: z
          .enum(['full', 'none'])
          .default('full')
          .describe('none: without names, to be handed to anyone for checking.'),
      }),
      response: {
        200: archiveDocument,
        ...refusals('token_missing', 'not_allowed', 'other_show', 'not_found'),
      },
    },
    handler: async ({ params: { showId }, query: { names } }, reply) => {
      const text = await exportShow(parts, { showId, names });
      reply.header('content-disposition', `attachment; filename="show-${showId}.json"`);
      reply.header('cache-control', 'no-store').type('application/json; charset=utf-8');
      // A text goes out as it is: it is canonical, and must stay so.
      return reply.send(text as never);
    },
  });

  app.post('/archives', {
    config: openTo('manager'),
    bodyLimit: largestArchive,
    schema: {
      tags,
      summary: 'Bring in a show from its archive',
      body: archiveDocument,
      response: {
        200: importedBody.describe('It is here already, with this history: nothing was changed.'),
        201: importedBody,
        ...refusals(
          ...(['token_missing', 'not_allowed', 'body_too_large', 'archive_form_unknown'] as const),
          ...(['archive_altered', 'archive_without_names', 'archive_of_other_history'] as const),
          ...(['archive_conflicts', 'already_exists'] as const),
        ),
      },
    },
    handler: async (request, reply) => {
      mustServeAllShows(actorOf(request));
      const { isNew, ...imported } = await importArchive(parts, request.body);
      if (isNew) reply.code(201).header('location', `/v1/shows/${imported.showId}`);
      return { ...imported, keys: [...imported.keys] };
    },
  });
};
