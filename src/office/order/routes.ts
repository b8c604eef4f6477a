import { z } from 'zod';
import { office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, classParams } from '../schemas/common.ts';
import { publicEntries } from '../store/public-entries.ts';
import { drawOrderOfGo, reorderByHand } from './draw-order.ts';
import { drawBody, drawOf, newDraw, newOrder, orderOfGoBody } from './order-schemas.ts';

const tags = ['Order of go'];

export const orderRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;
  const mustBeThere = async ({ showId, classId }: z.infer<typeof classParams>) => {
    if ((await prisma.showClass.count({ where: { id: classId, showId } })) === 0) throw problem('not_found');
  };

  app.get('/shows/:showId/classes/:classId/order-of-go', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'Who goes when, names in their public form',
      params: classParams,
      response: { 200: orderOfGoBody, ...refusals('not_found', 'token_invalid') },
    },
    handler: async ({ params }) => {
      await mustBeThere(params);
      const goes = await publicEntries(parts.db, params.classId);
      const drawn = (await prisma.orderDraw.count({ where: { classId: params.classId } })) > 0;
      return { classId: params.classId, drawn, goes };
    },
  });

  app.get('/shows/:showId/classes/:classId/order-of-go/draws', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'How the order of go came about: each draw with its seed, each change with its reason',
      params: classParams,
      response: {
        200: z.strictObject({ items: z.array(drawBody) }),
        ...refusals('not_found', 'token_invalid'),
      },
    },
    handler: async ({ params }) => {
      await mustBeThere(params);
      const { classId } = params;
      const rows = await prisma.orderDraw.findMany({ where: { classId }, orderBy: { number: 'asc' } });
      return { items: rows.map(drawOf) };
    },
  });

  app.post('/shows/:showId/classes/:classId/order-of-go/draws', {
    config: openTo(...office),
    schema: {
      tags,
      summary: "Draw the order of go from the class's seed, or draw it again",
      params: classParams,
      body: newDraw,
      response: {
        201: drawBody,
        ...refusals(
          ...accessRefusals,
          'class_not_open',
          'no_entries',
          'order_already_drawn',
          'class_under_way',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(drawOf(await drawOrderOfGo(parts, tx, { ...request.params, ...request.body }))),
      ),
  });

  app.put('/shows/:showId/classes/:classId/order-of-go', {
    config: openTo(...office, 'gate'),
    schema: {
      tags,
      summary: 'Set the order of go by hand, with the reason',
      params: classParams,
      body: newOrder,
      response: {
        200: drawBody,
        ...refusals(...accessRefusals, 'class_not_open', 'order_not_drawn', 'order_incomplete'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(drawOf(await reorderByHand(parts, tx, { ...request.params, ...request.body }))),
      ),
  });
};
