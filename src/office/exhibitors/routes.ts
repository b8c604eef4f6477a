import { z } from 'zod';
import { office, officeReading, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterId, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, id, showParams } from '../schemas/common.ts';
import { addHorse } from './add-horse.ts';
import { changeHorse } from './change-horse.ts';
import {
  exhibitorBody,
  exhibitorChange,
  exhibitorOf,
  horseBody,
  horseChange,
  horseOf,
  newExhibitor,
  newHorse,
} from './exhibitor-schemas.ts';
import { addExhibitor, changeExhibitor } from './save-exhibitor.ts';

const tags = ['Entries'];
const exhibitorParams = z.object({ showId: id, exhibitorId: id });
const afterWhere = (cursor: string | undefined) => {
  const after = afterId(cursor);
  return after === undefined ? {} : { id: { gt: after } };
};

/** All of it is for the office alone: it holds dates of birth and full names. What is public follows the consents. */
export const exhibitorRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows/:showId/exhibitors', {
    config: openTo(...officeReading),
    schema: {
      tags,
      summary: "All of the show's exhibitors",
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(exhibitorBody), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      const where = { showId, ...afterWhere(cursor) };
      const rows = await prisma.exhibitor.findMany({ where, orderBy: { id: 'asc' }, take: limit + 1 });
      return pageFrom(rows, limit, { key: (row) => row.id, item: exhibitorOf });
    },
  });

  app.post('/shows/:showId/exhibitors', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Add an exhibitor',
      params: showParams,
      body: newExhibitor,
      response: { 201: exhibitorBody, ...refusals(...accessRefusals) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addExhibitor(parts, tx, { ...request.params, ...request.body })),
      ),
  });

  app.get('/shows/:showId/exhibitors/:exhibitorId', {
    config: openTo(...officeReading),
    schema: {
      tags,
      summary: 'One exhibitor',
      params: exhibitorParams,
      response: { 200: exhibitorBody, ...refusals(...accessRefusals) },
    },
    handler: async ({ params: { showId, exhibitorId } }, reply) => {
      const row = await prisma.exhibitor.findFirst({ where: { id: exhibitorId, showId } });
      if (row === null) throw problem('not_found');
      sendVersion(reply, row.version);
      return exhibitorOf(row);
    },
  });

  app.patch('/shows/:showId/exhibitors/:exhibitorId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: "Change an exhibitor's record (If-Match)",
      params: exhibitorParams,
      body: exhibitorChange,
      response: {
        200: exhibitorBody,
        ...refusals(...accessRefusals, 'stale_version', 'if_match_required', 'exhibitor_erased'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await changeExhibitor(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            change: request.body,
          }),
        ),
      ),
  });

  app.get('/shows/:showId/horses', {
    config: openTo(...officeReading),
    schema: {
      tags,
      summary: "All of the show's horses",
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(horseBody), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      const where = { showId, ...afterWhere(cursor) };
      const rows = await prisma.horse.findMany({ where, orderBy: { id: 'asc' }, take: limit + 1 });
      return pageFrom(rows, limit, { key: (row) => row.id, item: horseOf });
    },
  });

  app.post('/shows/:showId/horses', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Add a horse',
      params: showParams,
      body: newHorse,
      response: { 201: horseBody, ...refusals(...accessRefusals) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addHorse(parts, tx, { ...request.params, ...request.body })),
      ),
  });

  app.patch('/shows/:showId/horses/:horseId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: "Say how a horse's name is spoken",
      params: z.object({ showId: id, horseId: id }),
      body: horseChange,
      response: { 200: horseBody, ...refusals(...accessRefusals) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(await changeHorse(parts, tx, { ...request.params, ...request.body })),
      ),
  });
};
