import { office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { created, once } from '../once.ts';
import { accessRefusals, classParams } from '../schemas/common.ts';
import { combineClasses } from './combine-classes.ts';
import { newCombination, newSplit, relationOf, relationsBody } from './relation-schemas.ts';
import { splitClass } from './split-class.ts';

const tags = ['Classes'];

export const relationRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/shows/:showId/classes/:classId/relations', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'From which classes this one came, and into which it went',
      params: classParams,
      response: { 200: relationsBody, ...refusals('not_found', 'token_invalid') },
    },
    handler: async ({ params: { showId, classId } }) => {
      const { prisma } = parts.db;
      if ((await prisma.showClass.count({ where: { id: classId, showId } })) === 0)
        throw problem('not_found');
      const where = { OR: [{ fromClassId: classId }, { toClassId: classId }] };
      const rows = await prisma.classRelation.findMany({ where, orderBy: { id: 'asc' } });
      return { items: rows.map(relationOf) };
    },
  });

  app.post('/shows/:showId/classes/:classId/splits', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Split the class, before a card is signed',
      params: classParams,
      body: newSplit,
      response: {
        201: relationsBody,
        ...refusals(
          ...accessRefusals,
          'class_not_open',
          'class_under_way',
          'class_number_taken',
          'unknown_reference',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created({ items: await splitClass(parts, tx, { ...request.params, ...request.body }) }),
      ),
  });

  app.post('/shows/:showId/classes/:classId/combinations', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Combine other classes into this one, before a card is signed',
      params: classParams,
      body: newCombination,
      response: {
        201: relationsBody,
        ...refusals(...accessRefusals, 'class_not_open', 'class_under_way', 'unknown_reference'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created({ items: await combineClasses(parts, tx, { ...request.params, ...request.body }) }),
      ),
  });
};
