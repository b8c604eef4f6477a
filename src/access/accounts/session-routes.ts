/** Signing in and out, and who is signed in where. */
import { z } from 'zod';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { duties, officeOf } from '../actor.ts';
import { actorOf } from '../guard.ts';
import { openTo } from '../open-to.ts';
import { accountParams } from './account-schemas.ts';
import { endSession, signOut } from './end-sessions.ts';
import { GuessesOfStrangers } from './guesses-of-strangers.ts';
import { listSessions, readCurrent } from './read-sessions.ts';
import {
  begunSession,
  currentSession,
  listedSession,
  sessionParams,
  typedSignIn,
} from './session-schemas.ts';
import { signIn } from './sign-in.ts';

const tags = ['Accounts'];
const config = openTo(...duties);
const accessRefusals = ['token_missing', 'token_invalid', 'token_expired', 'token_revoked'] as const;
const ended = z.null().describe('It has ended.');

export const sessionRoutes: FeatureRoutes = async (app, { parts }) => {
  const strangers = new GuessesOfStrangers();

  app.post('/sessions', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'Sign in: name, password, one-time code',
      description:
        'Whichever of the three is wrong, the answer is the same. After five failures in a row the account must wait, ' +
        'after each further one twice as long, at most a quarter of an hour; tries within the wait count for nothing.',
      body: typedSignIn,
      response: { 201: begunSession, ...refusals('sign_in_refused', 'sign_in_slowed', 'too_many_requests') },
    },
    handler: async (request, reply) => {
      return reply.code(201).send(await signIn({ parts, strangers }, request.body));
    },
  });

  app.get('/sessions/current', {
    config,
    schema: {
      tags,
      summary: 'The session that asks: whose it is, and where it may work',
      response: { 200: currentSession, ...refusals(...accessRefusals) },
    },
    handler: (request) => readCurrent(parts, officeOf(actorOf(request))),
  });

  app.delete('/sessions/current', {
    config,
    schema: { tags, summary: 'Sign out', response: { 204: ended, ...refusals(...accessRefusals) } },
    handler: async (request, reply) => {
      await signOut(parts, officeOf(actorOf(request)));
      return reply.code(204).send(null);
    },
  });

  app.get('/accounts/:accountId/sessions', {
    config,
    schema: {
      tags,
      summary: 'The sessions of an account that go on: for its owner, and for a manager',
      params: accountParams,
      response: {
        200: z.strictObject({ items: z.array(listedSession) }),
        ...refusals(...accessRefusals, 'not_found'),
      },
    },
    handler: async (request) => ({
      items: await listSessions(parts, { actor: officeOf(actorOf(request)), ...request.params }),
    }),
  });

  app.delete('/sessions/:sessionId', {
    config,
    schema: {
      tags,
      summary: "End a session: one's own, or, for a manager, one of an account within her reach",
      description: 'Ending it twice does no harm.',
      params: sessionParams,
      response: { 204: ended, ...refusals(...accessRefusals, 'not_found') },
    },
    handler: async (request, reply) => {
      await endSession(parts, { actor: officeOf(actorOf(request)), ...request.params });
      return reply.code(204).send(null);
    },
  });
};
