import { z } from 'zod';
import { office, officeReading, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterNumber, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, id, showParams } from '../schemas/common.ts';
import { entryBody, entryChange, entryOf, newEntry, withNames } from './entry-schemas.ts';
import { addEntry, changeEntry } from './save-entry.ts';

const tags = ['Entries'];
const entryParams = z.object({ showId: id, entryId: id });
const savingRefusals = ['back_number_taken', 'unknown_reference'] as const;

export const entryRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows/:showId/entries', {
    config: openTo(...officeReading),
    schema: {
      tags,
      summary: "All of the show's entries, by back number",
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(entryBody), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      const rows = await prisma.entry.findMany({
        where: { showId, backNumber: { gt: afterNumber(cursor) ?? 0 } },
        include: withNames,
        orderBy: { backNumber: 'asc' },
        take: limit + 1,
      });
      return pageFrom(rows, limit, { key: (row) => row.backNumber, item: entryOf });
    },
  });

  app.post('/shows/:showId/entries', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Give an exhibitor with a horse a back number',
      params: showParams,
      body: newEntry,
      response: { 201: entryBody, ...refusals(...accessRefusals, ...savingRefusals) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addEntry(parts, tx, { ...request.params, ...request.body })),
      ),
  });

  app.get('/shows/:showId/entries/:entryId', {
    config: openTo(...officeReading),
    schema: {
      tags,
      summary: 'One entry',
      params: entryParams,
      response: { 200: entryBody, ...refusals(...accessRefusals) },
    },
    handler: async ({ params: { showId, entryId } }, reply) => {
      const row = await prisma.entry.findFirst({ where: { id: entryId, showId }, include: withNames });
      if (row === null) throw problem('not_found');
      sendVersion(reply, row.version);
      return entryOf(row);
    },
  });

  app.patch('/shows/:showId/entries/:entryId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Change an entry (If-Match)',
      params: entryParams,
      body: entryChange,
      response: {
        200: entryBody,
        ...refusals(
          ...accessRefusals,
          ...savingRefusals,
          'class_under_way',
          'stale_version',
          'if_match_required',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await changeEntry(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            change: request.body,
          }),
        ),
      ),
  });
};
