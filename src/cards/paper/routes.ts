/** Cards that came in on paper: taken up by the office, entered by two of its people, accepted where they agree. */
import { z } from 'zod';
import { actorOf, office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { inSqlTransaction } from '../../platform/database.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { etagOf, versionRead } from '../../platform/http/versions.ts';
import { contentSchema } from '../card-schemas.ts';
import { tellingOffice } from '../open-class.ts';
import { accessRefusals, tags, writingRefusals } from '../route-parts.ts';
import { enterPaperCard } from './enter.ts';
import { paperCardForReading } from './paper-record.ts';
import {
  classParams,
  paperCardParams,
  paperCardSchema,
  takingUpSchema,
  withdrawalSchema,
} from './paper-schemas.ts';
import { paperCardsOfClass, paperCardView } from './paper-view.ts';
import { photoRoutes } from './photo-routes.ts';
import { takeUpPaperCard } from './take-up.ts';
import { withdrawPaperCard } from './withdraw.ts';

const enteringRefusals = [
  ...writingRefusals,
  'paper_card_closed',
  'paper_card_overtaken',
  'paper_card_has_both',
  'if_match_required',
  'stale_version',
  'card_incomplete',
  'card_illegal',
  'card_has_open_ties',
  'entry_not_going',
  'amendment_changes_nothing',
] as const;

export const paperRoutes: FeatureRoutes = async (app, options) => {
  const { parts } = options;
  const config = openTo(...office);

  app.post('/classes/:classId/paper-cards', {
    config,
    schema: {
      tags,
      summary: 'Take up a card that came in on paper',
      description:
        'While the card of the seat is not signed, or as an amendment of the signed one (reason and previousHash). A seat has one open paper card: taken up again it is the same (200). What the judge has on her phone is not touched; where she signs first, the paper card is overtaken.',
      params: classParams,
      body: takingUpSchema,
      response: {
        200: paperCardSchema.describe('It was taken up already.'),
        201: paperCardSchema.describe('It is taken up.'),
        ...refusals(
          ...writingRefusals,
          'class_not_empty',
          'card_already_signed',
          'card_not_signed',
          'reason_missing',
          'stale_revision',
          'paper_card_overtaken',
        ),
      },
    },
    handler: async (request, reply) => {
      const asked = { ...request.params, ...request.body, actor: actorOf(request) };
      const { isNew, paper } = await tellingOffice(parts, asked.classId, () =>
        inSqlTransaction(parts.db, async (tx) => {
          const taken = await takeUpPaperCard(parts, tx, asked);
          const found = await paperCardForReading(tx, taken.paperCardId, asked.actor);
          return { isNew: taken.isNew, paper: await paperCardView(tx, found, asked.actor) };
        }),
      );
      return reply
        .code(isNew ? 201 : 200)
        .header('location', `/v1/paper-cards/${paper.id}`)
        .send(paper);
    },
  });

  app.get('/classes/:classId/paper-cards', {
    config,
    schema: {
      tags,
      summary: 'The paper cards of a class, the first first',
      params: classParams,
      response: { 200: z.strictObject({ items: z.array(paperCardSchema) }), ...refusals(...accessRefusals) },
    },
    handler: async (request) => {
      const asked = { ...request.params, actor: actorOf(request) };
      return { items: await inSqlTransaction(parts.db, (tx) => paperCardsOfClass(tx, asked)) };
    },
  });

  app.get('/paper-cards/:paperCardId', {
    config,
    schema: {
      tags,
      summary: 'A paper card: who has entered; what, only where you may see it',
      params: paperCardParams,
      response: { 200: paperCardSchema, ...refusals(...accessRefusals) },
    },
    handler: async (request, reply) => {
      const { paperCardId } = request.params;
      const actor = actorOf(request);
      const paper = await inSqlTransaction(parts.db, async (tx) =>
        paperCardView(tx, await paperCardForReading(tx, paperCardId, actor), actor),
      );
      if (paper.mine !== null) reply.header('etag', etagOf(paper.mine.version));
      return paper;
    },
  });

  app.put('/paper-cards/:paperCardId/entries/mine', {
    config,
    schema: {
      tags,
      summary: 'Enter the whole card as you read it off the paper',
      description:
        'Two different accounts enter it, and neither sees what the other has until both are in. Where they differ, "differences" names each field to both, and each corrects her own (If-Match: the ETag of her entry). Where they are the same, the card is accepted, under the rules of a signature.',
      params: paperCardParams,
      body: contentSchema,
      response: {
        200: paperCardSchema.describe(
          'Kept. "status" says whether it is accepted; the ETag is the version of your entry.',
        ),
        ...refusals(...enteringRefusals),
      },
    },
    handler: async (request, reply) => {
      const { paperCardId } = request.params;
      const actor = actorOf(request);
      const seen = request.headers['if-match'] === undefined ? undefined : versionRead(request);
      const entering = { paperCardId, actor, content: request.body, seen };
      const paper = await inSqlTransaction(parts.db, async (tx) => {
        await enterPaperCard(parts, tx, entering);
        return paperCardView(tx, await paperCardForReading(tx, paperCardId, actor), actor);
      });
      if (paper.mine !== null) reply.header('etag', etagOf(paper.mine.version));
      return paper;
    },
  });

  app.post('/paper-cards/:paperCardId/withdrawals', {
    config,
    schema: {
      tags,
      summary: 'Withdraw an open paper card, with the reason',
      params: paperCardParams,
      body: withdrawalSchema,
      response: {
        200: paperCardSchema.describe('It is withdrawn.'),
        ...refusals(...accessRefusals, 'paper_card_closed'),
      },
    },
    handler: async (request) => {
      const { paperCardId } = request.params;
      const actor = actorOf(request);
      return inSqlTransaction(parts.db, async (tx) => {
        await withdrawPaperCard(parts, tx, { paperCardId, actor, ...request.body });
        return paperCardView(tx, await paperCardForReading(tx, paperCardId, actor), actor);
      });
    },
  });

  // A scope of its own, which is registered below the same address.
  await app.register(photoRoutes, { parts });
};
