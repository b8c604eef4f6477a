/** The card before it is signed: saved go by go, from either phone of the seat. */
import { z } from 'zod';
import { actorOf, openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';
import { refusals } from '../platform/http/refusals.ts';
import { sendVersion } from '../platform/http/versions.ts';
import { goSchema, orderSchema } from './card-schemas.ts';
import { goViewSchema } from './go-view.ts';
import { orderView, orderViewSchema } from './order-view.ts';
import { cardParams, goParams, seenVersion, tags, writingRefusals } from './route-parts.ts';
import { saveGo, wipeGo } from './save-go.ts';
import { saveOrder } from './save-order.ts';

const versions =
  'The first save needs no header (If-None-Match: * says that nothing was there); every later one says in ' +
  'If-Match which version it is of. The same content again is no conflict. A save of an old version is refused ' +
  '(412) with both: "current" and "sent".';

export const draftRoutes: FeatureRoutes = async (app, { parts }) => {
  const draftRefusals = [
    ...writingRefusals,
    'card_already_signed',
    'draft_changed_meanwhile',
    'stale_version',
  ] as const;

  app.put('/cards/:cardId/goes/:classEntryId', {
    config: openTo('judge', 'scribe'),
    schema: {
      tags,
      summary: 'Save one go as far as it is written',
      description: `What is missing is fine in a draft; what the sheet does not allow is refused, all of it at once. ${versions}`,
      params: goParams,
      body: goSchema,
      response: {
        200: goViewSchema.describe('Saved. The ETag is its version.'),
        ...refusals(...draftRefusals, 'go_not_on_sheet', 'go_not_in_class', 'entry_not_going'),
      },
    },
    handler: async (request, reply) => {
      const address = { ...request.params, actor: actorOf(request), seen: seenVersion(request) };
      const speech = tellIn(request, reply);
      const go = await inSqlTransaction(parts.db, (tx) =>
        saveGo(parts, tx, { address, go: request.body, speech }),
      );
      if (go.version !== null) sendVersion(reply, go.version);
      return go;
    },
  });

  app.delete('/cards/:cardId/goes/:classEntryId', {
    config: openTo('judge', 'scribe'),
    schema: {
      tags,
      summary: 'Wipe the draft of one go',
      description: 'Needs If-Match. Its versions go on counting. Wiped twice is wiped.',
      params: goParams,
      response: {
        204: z.null().describe('It is wiped.'),
        ...refusals(...draftRefusals, 'go_not_in_class', 'entry_not_going', 'if_match_required'),
      },
    },
    handler: async (request, reply) => {
      const address = { ...request.params, actor: actorOf(request), seen: seenVersion(request) };
      await inSqlTransaction(parts.db, (tx) => wipeGo(parts, tx, address));
      return reply.code(204).send(null);
    },
  });

  app.put('/cards/:cardId/order', {
    config: openTo('judge', 'scribe'),
    schema: {
      tags,
      summary: "Save the judge's own order of tied entries, or her ranking of a rail class",
      description: `Only what is tied on the card so far can be ordered, a whole tie at a time. ${versions}`,
      params: cardParams,
      body: orderSchema,
      response: {
        200: orderViewSchema.describe('Saved. The ETag is its version.'),
        ...refusals(...draftRefusals, 'card_illegal'),
      },
    },
    handler: async (request, reply) => {
      const { cardId } = request.params;
      const asked = { cardId, actor: actorOf(request), seen: seenVersion(request), order: request.body };
      const saved = await inSqlTransaction(parts.db, (tx) => saveOrder(parts, tx, asked));
      sendVersion(reply, saved.version);
      return orderView(saved);
    },
  });
};
