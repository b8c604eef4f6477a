import { z } from 'zod';
import { openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { created, once } from '../once.ts';
import { accessRefusals, id } from '../schemas/common.ts';
import { eraseExhibitor, erasureBody, newErasure } from './erase-exhibitor.ts';

export const erasureRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/shows/:showId/exhibitors/:exhibitorId/erasures', {
    config: openTo('manager'),
    schema: {
      tags: ['Entries'],
      summary: 'Erase the name of an exhibitor, for good',
      description:
        'Name, date of birth, consents and kept answers go; places, cards and postings stay under the back number. ' +
        'It cannot be undone, so a back number or the id is repeated in the body.',
      params: z.object({ showId: id, exhibitorId: id }),
      body: newErasure,
      response: {
        201: erasureBody,
        ...refusals(...accessRefusals, 'exhibitor_erased', 'erasure_not_confirmed', 'unknown_reference'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await eraseExhibitor(parts, tx, { ...request.params, erasure: request.body })),
      ),
  });
};
