import { office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { created, once } from '../once.ts';
import { accessRefusals, showParams } from '../schemas/common.ts';
import { showBody } from '../shows/show-schemas.ts';
import { makeRehearsal } from './make-rehearsal.ts';

export const rehearsalRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/shows/:showId/rehearsals', {
    config: openTo(...office),
    schema: {
      tags: ['Shows'],
      summary: 'Set up a practice show like this one, without a name of anybody who rides',
      description:
        'Rings, judges, patterns, open classes, panels, back numbers and orders of go are copied under new ids; no ' +
        'card, ruling or posting is. Nothing that happens there reaches this show. No body.',
      params: showParams,
      response: { 201: showBody, ...refusals(...accessRefusals, 'rehearsal_of_practice') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => {
        const show = await makeRehearsal(parts, tx, request.params);
        return created(show, `/v1/shows/${show.id}`);
      }),
  });
};
