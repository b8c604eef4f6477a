/** What the owner of an account does with it: sets it up, changes the password. */
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { duties, officeOf } from '../actor.ts';
import { actorOf } from '../guard.ts';
import { openTo } from '../open-to.ts';
import { changePassword } from './change-password.ts';
import { begunSession, begunSetup, passwordChange, setupBody, setupCompletion } from './session-schemas.ts';
import { beginSetup, completeSetup } from './set-up-account.ts';

const tags = ['Accounts'];

export const setUpRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/account-setups', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'Begin to set up an account with its one-time code: the second factor to scan',
      description: 'Asked again with the same code it answers the same.',
      body: setupBody,
      response: { 201: begunSetup, ...refusals('setup_code_invalid', 'too_many_requests') },
    },
    handler: async (request, reply) => {
      return reply.code(201).send(await beginSetup(parts, request.body.setupCode));
    },
  });

  app.post('/account-setups/completions', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'Finish setting up: the password, and a code of the authenticator app',
      description: 'The set-up code is used up, and the person is signed in.',
      body: setupCompletion,
      response: {
        201: begunSession,
        ...refusals(
          ...(['setup_code_invalid', 'too_many_requests', 'setup_not_begun'] as const),
          ...(['totp_code_wrong', 'password_too_common'] as const),
        ),
      },
    },
    handler: async (request, reply) => {
      return reply.code(201).send(await completeSetup(parts, request.body));
    },
  });

  app.post('/accounts/current/passwords', {
    config: openTo(...duties),
    schema: {
      tags,
      summary: "Change one's own password",
      description: 'All sessions of the account end; the answer holds a new one.',
      body: passwordChange,
      response: {
        201: begunSession,
        ...refusals(
          ...(['token_missing', 'token_invalid', 'token_expired', 'token_revoked'] as const),
          ...(['password_wrong', 'password_too_common', 'sign_in_slowed'] as const),
        ),
      },
    },
    handler: async (request, reply) => {
      const asked = { actor: officeOf(actorOf(request)), ...request.body };
      return reply.code(201).send(await changePassword(parts, asked));
    },
  });
};
