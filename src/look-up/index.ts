/** Finding an entry and what it got, without an account. */
import { openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { LookUp } from './look-up.ts';
import {
  foundAnswer,
  lookUpParams,
  lookUpQuery,
  numberAnswer,
  numberParams,
  numberResultsAnswer,
} from './look-up-schemas.ts';
import { readNumberResults } from './number-results.ts';

const tags = ['Results'];

export const lookUpRoutes: FeatureRoutes = async (app, { parts }) => {
  const lookUp = new LookUp(parts.db);

  app.get('/shows/:showId/look-up', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'Find an entry by its back number, or by what is public of a name',
      params: lookUpParams,
      querystring: lookUpQuery,
      response: { 200: foundAnswer, ...refusals('not_found') },
    },
    handler: async ({ params, query }, reply) => {
      reply.header('cache-control', 'no-store');
      return lookUp.find(params.showId, query.words);
    },
  });

  app.get('/shows/:showId/numbers/:backNumber', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'One entry of the show by its back number: its classes, and what it got in each',
      params: numberParams,
      response: { 200: numberAnswer, ...refusals('not_found') },
    },
    handler: async ({ params }, reply) => {
      reply.header('cache-control', 'no-cache');
      return lookUp.number(params.showId, params.backNumber);
    },
  });

  app.get('/shows/:showId/numbers/:backNumber/results', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'What one entry got, from whom, on which maneuver, and why',
      params: numberParams,
      response: { 200: numberResultsAnswer, ...refusals('not_found') },
    },
    handler: async (request, reply) => {
      const { showId, backNumber } = request.params;
      const speech = tellIn(request, reply);
      reply.header('cache-control', 'no-cache');
      return readNumberResults(parts.db, lookUp, { showId, backNumber, speech });
    },
  });
};
