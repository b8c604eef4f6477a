import { office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { afterNumber, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, classParams, showParams } from '../schemas/common.ts';
import { callClass, cancelClass } from './call-class.ts';
import { changeClass } from './change-class.ts';
import { classOf, withSheetAndShow } from './class-of.ts';
import { classBody, classChange, newClass } from './class-schemas.ts';
import { createClass } from './create-class.ts';

const tags = ['Classes'];
const settingRefusals = [
  'class_number_taken',
  'unknown_reference',
  'pattern_needed',
  'rule_invalid',
  'invalid_local_time',
  'day_outside_show',
] as const;

export const classRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows/:showId/classes', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'The classes of the program, by number',
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(classBody), ...refusals('not_found', 'invalid_cursor', 'token_invalid') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      if ((await prisma.show.count({ where: { id: showId } })) === 0) throw problem('not_found');
      const rows = await prisma.showClass.findMany({
        where: { showId, number: { gt: afterNumber(cursor) ?? 0 } },
        include: withSheetAndShow,
        orderBy: { number: 'asc' },
        take: limit + 1,
      });
      return pageFrom(rows, limit, { key: (row) => row.number, item: classOf });
    },
  });

  app.post('/shows/:showId/classes', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Add a class to the program',
      params: showParams,
      body: newClass,
      response: { 201: classBody, ...refusals(...accessRefusals, ...settingRefusals) },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => {
        const made = await createClass(parts, tx, { ...request.params, ...request.body });
        return created(made, `/v1/shows/${made.showId}/classes/${made.id}`);
      }),
  });

  app.get('/shows/:showId/classes/:classId', {
    config: openTo('everyone'),
    schema: {
      tags,
      summary: 'One class',
      params: classParams,
      response: { 200: classBody, ...refusals('not_found', 'token_invalid') },
    },
    handler: async ({ params: { showId, classId } }, reply) => {
      const row = await prisma.showClass.findFirst({
        where: { id: classId, showId },
        include: withSheetAndShow,
      });
      if (row === null) throw problem('not_found');
      sendVersion(reply, row.version);
      return classOf(row);
    },
  });

  app.patch('/shows/:showId/classes/:classId', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Change a class (If-Match)',
      params: classParams,
      body: classChange,
      response: {
        200: classBody,
        ...refusals(
          ...accessRefusals,
          ...settingRefusals,
          'class_under_way',
          'stale_version',
          'if_match_required',
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await changeClass(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            change: request.body,
          }),
        ),
      ),
  });

  app.post('/shows/:showId/classes/:classId/calls', {
    config: openTo(...office, 'gate'),
    schema: {
      tags,
      summary: 'Call the class to the ring',
      params: classParams,
      response: { 200: classBody, ...refusals(...accessRefusals, 'class_not_open') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => changed(await callClass(parts, tx, request.params))),
  });

  app.post('/shows/:showId/classes/:classId/cancellation', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Cancel the class, before a card is signed',
      params: classParams,
      response: { 200: classBody, ...refusals(...accessRefusals, 'class_not_open', 'class_under_way') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => changed(await cancelClass(parts, tx, request.params))),
  });
};
