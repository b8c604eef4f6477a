import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { actorOf, office, officeReading, openTo, seesAsOffice } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, created, once } from '../once.ts';
import { accessRefusals, classEntryParams, classParams } from '../schemas/common.ts';
import { publicEntries } from '../store/public-entries.ts';
import { addClassEntry } from './add-class-entry.ts';
import { changeStatus } from './change-status.ts';
import {
  asPublic,
  type ClassEntryBody,
  classEntryBody,
  classEntryOf,
  newClassEntry,
  newStatus,
  newVideo,
  withEntry,
} from './class-entry-schemas.ts';
import { setVideo } from './set-video.ts';

const tags = ['Entries'];

export const classEntryRoutes: FeatureRoutes = async (app, { parts }) => {
  const { prisma } = parts.db;

  app.get('/shows/:showId/classes/:classId/entries', {
    config: openTo(...officeReading, 'gate'),
    schema: {
      tags,
      summary:
        'The entries of a class, in the order of go, those moved to other classes too; full names for the office',
      params: classParams,
      response: { 200: z.strictObject({ items: z.array(classEntryBody) }), ...refusals(...accessRefusals) },
    },
    handler: async (request) => {
      const { showId, classId } = request.params;
      if ((await prisma.showClass.count({ where: { id: classId, showId } })) === 0)
        throw problem('not_found');
      const rows = await prisma.classEntry.findMany({
        where: { classId },
        include: withEntry,
        orderBy: [{ goPosition: { sort: 'asc', nulls: 'last' } }, { entry: { backNumber: 'asc' } }],
      });
      const items = rows.map(classEntryOf);
      if (seesAsOffice(actorOf(request), showId)) return { items };
      const entries = await publicEntries(parts.db, classId);
      return { items: items.map((item) => asPublic(item, entries)) };
    },
  });

  app.post('/shows/:showId/classes/:classId/entries', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Enter an entry in a class; a late add once the order of go is drawn',
      params: classParams,
      body: newClassEntry,
      response: {
        201: classEntryBody,
        ...refusals(
          ...accessRefusals,
          ...(['class_not_open', 'class_under_way', 'unknown_reference'] as const),
        ),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addClassEntry(parts, tx, { ...request.params, ...request.body })),
      ),
  });

  app.put('/shows/:showId/classes/:classId/entries/:classEntryId/status', {
    config: openTo(...office, 'gate'),
    schema: {
      tags,
      summary: 'Check in, scratch, mark as no-show or excused, or take that back',
      params: classEntryParams,
      body: newStatus,
      response: {
        200: classEntryBody,
        ...refusals(...accessRefusals, 'class_not_open', 'status_change_refused', 'reason_needed'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(forSender(request, await changeStatus(parts, tx, { ...request.params, ...request.body }))),
      ),
  });

  app.put('/shows/:showId/classes/:classId/entries/:classEntryId/video', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Say where the video of a go is, or take it off',
      description: 'The office and the judges of the class see it, and nobody else.',
      params: classEntryParams,
      body: newVideo,
      response: { 200: classEntryBody, ...refusals(...accessRefusals, 'class_not_open', 'exhibitor_erased') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(await setVideo(parts, tx, { ...request.params, ...request.body })),
      ),
  });
};

/** What is kept for a request that the gate sends twice holds no name at all. */
function forSender(request: FastifyRequest, body: ClassEntryBody): ClassEntryBody {
  return actorOf(request).as === 'office' ? body : asPublic(body);
}
