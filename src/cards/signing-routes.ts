/** The signature, amendments, and the signed revisions. */
import { z } from 'zod';
import { actorOf, officeReading, openTo } from '../access/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';
import { sendAnswer } from '../platform/http/answer-once.ts';
import { refusals } from '../platform/http/refusals.ts';
import { problem } from '../platform/problems/index.ts';
import { amendCard } from './amend-card.ts';
import { cardForReading } from './card-record.ts';
import { signatureSchema } from './card-schemas.ts';
import {
  fullRevisionSchema,
  fullRevisionView,
  revisionSchema,
  revisionView,
  signedSchema,
} from './revision-view.ts';
import { revisionOf, revisionsOf } from './revisions.ts';
import {
  accessRefusals,
  cardParams,
  onceForSeat,
  revisionParams,
  tags,
  writingRefusals,
} from './route-parts.ts';
import { type Signed, signCard } from './sign-card.ts';

const checkRefusals = [
  ...writingRefusals,
  'card_incomplete',
  'card_illegal',
  'card_has_open_ties',
  'entry_not_going',
  'idempotency_key_reused',
  'signature_invalid',
  'signature_of_other_card',
] as const;

const ties =
  "Ties on the card are its judge's to break: where the class merges places, or the card is a ranking, it is " +
  'refused with open ones (card_has_open_ties); where scores are added they are flagged under "openTies".';

const again =
  'Sent again, with the same Idempotency-Key or just with the same content, it is answered the same.';

function signedAnswer({ card, revision, openTies }: Signed) {
  const { id: cardId, classId, seatId } = card;
  const body = {
    ...revisionView(revision),
    cardId,
    classId,
    seatId,
    openTies: openTies.map((tie) => [...tie]),
  };
  return { status: 201, body, headers: { location: `/v1/cards/${cardId}/revisions/${revision.revision}` } };
}

export const signingRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/cards/:cardId/signatures', {
    config: openTo('judge'),
    schema: {
      tags,
      summary: 'Sign the card: only its judge can',
      description: `The phone signs the whole card: goes that were never saved as drafts may be on it, but nothing that differs from a draft. The service checks the signature, keeps it as it came, and cannot make one. Everything that is missing is named at once. ${ties} ${again}`,
      params: cardParams,
      body: signatureSchema,
      response: {
        201: signedSchema.describe('The card is signed: revision 1 is kept.'),
        ...refusals(...checkRefusals, 'card_already_signed', 'card_differs_from_draft'),
      },
    },
    handler: async (request, reply) => {
      const { params, body } = request;
      const answer = await onceForSeat(parts, request, async (tx, actor) =>
        signedAnswer(await signCard(parts, tx, { ...params, ...body, actor })),
      );
      return sendAnswer(reply, answer);
    },
  });

  app.post('/cards/:cardId/amendments', {
    config: openTo('judge'),
    schema: {
      tags,
      summary: 'Amend a signed card, with a reason: only its judge can',
      description: `A new revision that names the one before by its fingerprint; the old one stays readable. Allowed after the result was posted: that posting is then out of date, and a correction is due. ${ties} ${again}`,
      params: cardParams,
      body: signatureSchema,
      response: {
        201: signedSchema.describe('The new revision is kept.'),
        ...refusals(
          ...checkRefusals,
          'reason_missing',
          'card_not_signed',
          'stale_revision',
          'amendment_changes_nothing',
        ),
      },
    },
    handler: async (request, reply) => {
      const { params, body } = request;
      const answer = await onceForSeat(parts, request, async (tx, actor) =>
        signedAnswer(await amendCard(parts, tx, { ...params, ...body, actor })),
      );
      return sendAnswer(reply, answer);
    },
  });

  const readingRefusals = refusals(...accessRefusals, 'card_hidden');

  app.get('/cards/:cardId/revisions', {
    config: openTo(...officeReading, 'judge', 'scribe'),
    schema: {
      tags,
      summary: 'The signed revisions of a card, the first first',
      params: cardParams,
      response: { 200: z.strictObject({ items: z.array(revisionSchema) }), ...readingRefusals },
    },
    handler: async (request) => {
      const { cardId } = request.params;
      const found = await inSqlTransaction(parts.db, async (tx) =>
        revisionsOf(tx, await cardForReading(tx, cardId, actorOf(request))),
      );
      return { items: found.map(revisionView) };
    },
  });

  app.get('/cards/:cardId/revisions/:revision', {
    config: openTo(...officeReading, 'judge', 'scribe'),
    schema: {
      tags,
      summary: 'One signed revision, whole',
      params: revisionParams,
      response: { 200: fullRevisionSchema, ...readingRefusals },
    },
    handler: async (request) => {
      const { cardId, revision } = request.params;
      const found = await inSqlTransaction(parts.db, async (tx) =>
        revisionOf(tx, await cardForReading(tx, cardId, actorOf(request)), revision),
      );
      if (found === undefined)
        throw problem('not_found', { detail: `The card has no revision ${revision}.` });
      return fullRevisionView(cardId, found);
    },
  });
};
