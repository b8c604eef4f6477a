import { z } from 'zod';
import { actorOf, officeReading, openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';
import { refusals } from '../platform/http/refusals.ts';
import { openingSchema } from './card-schemas.ts';
import { cardViewSchema, readCardView } from './card-view.ts';
import { classProgress, seatProgressSchema } from './class-progress.ts';
import { draftRoutes } from './draft-routes.ts';
import { openCard } from './open-card.ts';
import { tellingOffice } from './open-class.ts';
import { paperRoutes } from './paper/routes.ts';
import { accessRefusals, cardParams, classParams, tags } from './route-parts.ts';
import { signingRoutes } from './signing-routes.ts';

/** A judge's card from the first mark to the signature, and its amendments. */
export const cardRoutes: FeatureRoutes = async (app, options) => {
  const { parts } = options;

  app.get('/classes/:classId/cards', {
    config: openTo(...officeReading, 'gate', 'judge', 'scribe'),
    schema: {
      tags,
      summary: 'How far the cards of a class are: counts, never a mark',
      description: 'A judge or scribe hears of her own seat only.',
      params: classParams,
      response: {
        200: z.strictObject({ items: z.array(seatProgressSchema) }),
        ...refusals(...accessRefusals),
      },
    },
    handler: async (request) => {
      const { classId } = request.params;
      const actor = actorOf(request);
      return { items: await inSqlTransaction(parts.db, (tx) => classProgress(tx, { classId, actor })) };
    },
  });

  app.post('/classes/:classId/cards', {
    config: openTo('judge', 'scribe'),
    schema: {
      tags,
      summary: 'Open the card of a seat',
      description: 'A seat has one card: opened again, by another phone or twice, it is the same card (200).',
      params: classParams,
      body: openingSchema,
      response: {
        200: cardViewSchema.describe('It was open already.'),
        201: cardViewSchema.describe('It is open now.'),
        ...refusals(...accessRefusals, 'seat_withdrawn', 'class_not_open', 'class_not_empty'),
      },
    },
    handler: async (request, reply) => {
      const { classId } = request.params;
      const { seatId } = request.body;
      const actor = actorOf(request);
      const speech = tellIn(request, reply);
      const { isNew, card } = await tellingOffice(parts, classId, () =>
        inSqlTransaction(parts.db, async (tx) => {
          const opened = await openCard(parts, tx, { classId, seatId, actor });
          return {
            isNew: opened.isNew,
            card: await readCardView(tx, { cardId: opened.cardId, actor, speech }),
          };
        }),
      );
      return reply
        .code(isNew ? 201 : 200)
        .header('location', `/v1/cards/${card.id}`)
        .send(card);
    },
  });

  app.get('/cards/:cardId', {
    config: openTo(...officeReading, 'judge', 'scribe'),
    schema: {
      tags,
      summary: 'The whole card: goes with their running totals, ties, what is missing, signed revisions',
      description:
        'Its judge and her scribe see it at any time, the office once it is signed. A signed card shows its last revision.',
      params: cardParams,
      response: { 200: cardViewSchema, ...refusals(...accessRefusals, 'card_hidden') },
    },
    handler: async (request, reply) => {
      const { cardId } = request.params;
      const actor = actorOf(request);
      const speech = tellIn(request, reply);
      return inSqlTransaction(parts.db, (tx) => readCardView(tx, { cardId, actor, speech }));
    },
  });

  await draftRoutes(app, options);
  await signingRoutes(app, options);
  await paperRoutes(app, options);
};
