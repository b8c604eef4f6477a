/** Reading a ledger: the office all of it, everyone its head. */
import type { FastifyContextConfig, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { ofTheService } from '../evidence/index.ts';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { id } from '../platform/http/id.ts';
import { refusals } from '../platform/http/refusals.ts';
import { findLines, presentHead } from './find-lines.ts';
import { ledgerHead, ledgerPage, ledgerQuery } from './ledger-schemas.ts';
import { mustBeShow } from './must-be-show.ts';

export interface ReadAccess {
  /** The `config` of a route that the office of a show may call. */
  readonly toOffice: FastifyContextConfig;
  readonly toManagers: FastifyContextConfig;
  readonly toEveryone: FastifyContextConfig;
  /** Throws not_allowed where the sender is not of the whole service. */
  readonly mustBeOfWholeService: (request: FastifyRequest) => void;
}

const tags = ['Ledger'];
const params = z.object({ showId: id });

export const readRoutes =
  (access: ReadAccess): FeatureRoutes =>
  async (app, { parts }) => {
    const { sql } = parts.db;

    app.get('/shows/:showId/ledger', {
      config: access.toOffice,
      schema: {
        tags,
        summary: 'What was done at a show, line by line, refusals too',
        description:
          'Each line carries the hash of the line before. Filters leave lines out; without filters the chain is whole.',
        params,
        querystring: ledgerQuery,
        response: { 200: ledgerPage, ...refusals('not_found') },
      },
      handler: async ({ params: { showId }, query }) => {
        await mustBeShow(sql, showId);
        return findLines(sql, showId, query);
      },
    });

    app.get('/ledger', {
      config: access.toManagers,
      schema: {
        tags,
        summary: 'What was done at the service itself: sign-ins, accounts, signing keys, shows',
        querystring: ledgerQuery,
        response: { 200: ledgerPage, ...refusals('not_allowed') },
      },
      handler: async (request) => {
        access.mustBeOfWholeService(request);
        return findLines(sql, ofTheService, request.query);
      },
    });

    app.get('/shows/:showId/ledger/head', {
      config: access.toEveryone,
      schema: {
        tags,
        summary: 'Number and hash of the last line of a show',
        description:
          'Whoever writes both down can prove later that the ledger up to that line was not changed: ' +
          '`npm run --silent verify -- ARCHIVE --head SEQUENCE:HASH`.',
        params,
        response: { 200: ledgerHead, ...refusals('not_found') },
      },
      handler: async ({ params: { showId } }, reply) => {
        await mustBeShow(sql, showId);
        reply.header('cache-control', 'no-cache');
        return presentHead(sql, showId);
      },
    });
  };
