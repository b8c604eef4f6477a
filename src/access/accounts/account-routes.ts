/** Accounts of the office, as its managers look after them. */
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { officeOf } from '../actor.ts';
import { actorOf } from '../guard.ts';
import { openTo } from '../open-to.ts';
import { accountBody, accountChange, accountParams, invitedBody, newAccount } from './account-schemas.ts';
import { inviteColleague } from './add-account.ts';
import { changeAccount } from './change-account.ts';
import { listAccounts, readAccount } from './list-accounts.ts';
import { closeAccount, resetAccount } from './void-account.ts';

const tags = ['Accounts'];
const config = openTo('manager');
const accessRefusals = ['token_missing', 'token_invalid', 'not_allowed'] as const;
const within = 'A manager of some shows looks after the accounts of those shows alone; others are not there.';

export const accountRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/accounts', {
    config,
    schema: {
      tags,
      summary: 'The accounts of the office',
      description: within,
      querystring: pageQuery,
      response: { 200: pageOf(accountBody), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: (request) => listAccounts(parts, { actor: officeOf(actorOf(request)), ...request.query }),
  });

  app.post('/accounts', {
    config,
    schema: {
      tags,
      summary: 'Make an account',
      description:
        'Answers with a one-time code, with which the person sets password and second factor within a day. It is shown ' +
        'once. Where the answer was lost, reset the account for another code: an Idempotency-Key has no effect here.',
      body: newAccount,
      response: {
        201: invitedBody,
        ...refusals(...accessRefusals, 'unknown_reference', 'already_exists'),
      },
    },
    handler: async (request, reply) => {
      const made = await inviteColleague(parts, { actor: officeOf(actorOf(request)), asked: request.body });
      sendVersion(reply, made.account.version);
      reply.header('location', `/v1/accounts/${made.account.id}`);
      return reply.code(201).send(made);
    },
  });

  app.get('/accounts/:accountId', {
    config,
    schema: {
      tags,
      summary: 'One account',
      params: accountParams,
      response: { 200: accountBody, ...refusals(...accessRefusals, 'not_found') },
    },
    handler: async (request, reply) => {
      const found = await readAccount(parts, { actor: officeOf(actorOf(request)), ...request.params });
      sendVersion(reply, found.version);
      return found;
    },
  });

  app.patch('/accounts/:accountId', {
    config,
    schema: {
      tags,
      summary: 'Change name, duty or shows of an account (If-Match)',
      description: 'It holds at once, also for sessions that are under way.',
      params: accountParams,
      body: accountChange,
      response: {
        200: accountBody,
        ...refusals(
          ...([...accessRefusals, 'not_found', 'stale_version', 'if_match_required'] as const),
          ...(['unknown_reference', 'account_closed', 'last_manager'] as const),
        ),
      },
    },
    handler: async (request, reply) => {
      const changed = await changeAccount(parts, {
        ...{ actor: officeOf(actorOf(request)), ...request.params },
        ...{ versionRead: versionRead(request), change: request.body },
      });
      sendVersion(reply, changed.version);
      return changed;
    },
  });

  app.post('/accounts/:accountId/resets', {
    config,
    schema: {
      tags,
      summary: "Reset another's account: password, second factor and sessions are void",
      description: 'For whoever lost password or phone. Answers with a new one-time code, shown once.',
      params: accountParams,
      response: {
        201: invitedBody,
        ...refusals(...accessRefusals, 'not_found', 'own_account', 'account_closed', 'last_manager'),
      },
    },
    handler: async (request, reply) => {
      const reset = await resetAccount(parts, { actor: officeOf(actorOf(request)), ...request.params });
      sendVersion(reply, reset.account.version);
      return reply.code(201).send(reset);
    },
  });

  app.post('/accounts/:accountId/closings', {
    config,
    schema: {
      tags,
      summary: 'Close an account for good',
      description:
        'Its sessions end. Its name stays, so that what it did can still be read; closing it twice does no harm.',
      params: accountParams,
      response: { 200: accountBody, ...refusals(...accessRefusals, 'not_found', 'last_manager') },
    },
    handler: async (request, reply) => {
      const closed = await closeAccount(parts, { actor: officeOf(actorOf(request)), ...request.params });
      sendVersion(reply, closed.version);
      return closed;
    },
  });
};
