/** Invitations and phones, as the office handles them. */
import { z } from 'zod';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { officeOf } from '../actor.ts';
import { actorOf } from '../guard.ts';
import { office, openTo } from '../open-to.ts';
import { listInvitations, makeInvitation, revokeInvitation } from './invitations.ts';
import {
  invitationParams,
  listedInvitation,
  listedPhone,
  madeInvitation,
  newInvitation,
  phoneParams,
  revocationQuery,
  showParams,
} from './phone-schemas.ts';
import { listPhones, revokePhone } from './phones.ts';
import { originOf } from './request-address.ts';

const tags = ['Phones'];
const config = openTo(...office);
const officeRefusals = ['token_missing', 'token_invalid', 'not_allowed', 'other_show', 'not_found'] as const;

export const invitationRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/shows/:showId/invitations', {
    config,
    schema: {
      tags,
      summary: 'Invite a phone: of a judge, her scribe, the gate',
      description:
        'Answers with a code to read aloud and the QR code of a link. They are shown once and pair one phone. Sent ' +
        'twice it makes two: an answer with a code in it is not kept, so an Idempotency-Key has no effect here.',
      params: showParams,
      body: newInvitation,
      response: {
        201: madeInvitation,
        ...refusals(...officeRefusals, 'unknown_reference', 'already_exists'),
      },
    },
    handler: async (request, reply) => {
      const made = await makeInvitation(parts, {
        showId: request.params.showId,
        createdBy: officeOf(actorOf(request)).accountId,
        origin: originOf(parts.config, request),
        asked: request.body,
      });
      reply.header('cache-control', 'no-store');
      return reply.code(201).send(made);
    },
  });

  app.get('/shows/:showId/invitations', {
    config,
    schema: {
      tags,
      summary: 'The invitations of a show, newest first; at most 500',
      params: showParams,
      response: { 200: z.strictObject({ items: z.array(listedInvitation) }), ...refusals(...officeRefusals) },
    },
    handler: async ({ params }) => ({ items: await listInvitations(parts, params.showId) }),
  });

  app.delete('/shows/:showId/invitations/:invitationId', {
    config,
    schema: {
      tags,
      summary: 'Take an invitation back before a phone took it up',
      params: invitationParams,
      response: {
        204: z.null().describe('It is taken back.'),
        ...refusals(...officeRefusals, 'invitation_used'),
      },
    },
    handler: async ({ params }, reply) => {
      await revokeInvitation(parts, params);
      return reply.code(204).send(null);
    },
  });

  app.get('/shows/:showId/phones', {
    config,
    schema: {
      tags,
      summary: 'The phones of a show, newest first; at most 500',
      params: showParams,
      response: { 200: z.strictObject({ items: z.array(listedPhone) }), ...refusals(...officeRefusals) },
    },
    handler: async ({ params }) => ({ items: await listPhones(parts, params.showId) }),
  });

  app.delete('/shows/:showId/phones/:phoneId', {
    config,
    schema: {
      tags,
      summary: 'Take a phone off the show, at once',
      description:
        'What it wrote and signed stays. Invite the phone that replaces it for the same judge: her drafts are there.',
      params: phoneParams,
      querystring: revocationQuery,
      response: {
        204: z.null().describe('Nothing of it is taken any more.'),
        ...refusals(...officeRefusals),
      },
    },
    handler: async ({ params, query }, reply) => {
      await revokePhone(parts, { ...params, ...query });
      return reply.code(204).send(null);
    },
  });

  app.delete('/phones/current', {
    config: openTo('judge', 'scribe', 'gate'),
    schema: {
      tags,
      summary: 'This phone ends its own pairing, at once',
      description:
        'What it wrote and signed stays. Its token is void with the answer; sent again it is refused as phone_revoked.',
      response: {
        204: z.null().describe('Nothing of it is taken any more.'),
        ...refusals('token_missing', 'token_invalid', 'token_expired', 'not_allowed', 'phone_revoked'),
      },
    },
    handler: async (request, reply) => {
      const actor = actorOf(request);
      if (!('phoneId' in actor)) throw new Error('only a phone gets here');
      await revokePhone(parts, { ...actor, why: 'It ended its own pairing.' });
      return reply.code(204).send(null);
    },
  });
};
