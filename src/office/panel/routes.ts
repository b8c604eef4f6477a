import { office, officeReading, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { sendVersion, versionRead } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { changed, once } from '../once.ts';
import { accessRefusals, classParams, id } from '../schemas/common.ts';
import { newPanel, panelBody, withdrawal } from './panel-schemas.ts';
import { readPanel } from './read-panel.ts';
import { seatPanel } from './seat-panel.ts';
import { withdrawJudge } from './withdraw-judge.ts';

const tags = ['Panels'];
const seatParams = classParams.extend({ seatId: id });

const seatingRefusals = [
  'class_not_open',
  'panel_locked',
  'seat_taken',
  'unknown_reference',
  'rule_invalid',
  'stale_version',
  'if_match_required',
] as const;

export const panelRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/shows/:showId/classes/:classId/panel', {
    config: openTo(...officeReading, 'judge', 'scribe', 'gate'),
    schema: {
      tags,
      summary: 'Who judges the class',
      params: classParams,
      response: { 200: panelBody, ...refusals(...accessRefusals) },
    },
    handler: async ({ params: { showId, classId } }, reply) => {
      const found = await parts.db.prisma.showClass.findFirst({ where: { id: classId, showId } });
      if (found === null) throw problem('not_found');
      sendVersion(reply, found.version);
      return readPanel(parts.db, found);
    },
  });

  app.put('/shows/:showId/classes/:classId/panel', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Seat the panel, before a card is written (If-Match: version of the class)',
      params: classParams,
      body: newPanel,
      response: {
        200: panelBody,
        ...refusals(...accessRefusals, ...seatingRefusals),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(
          await seatPanel(parts, tx, {
            ...request.params,
            versionRead: versionRead(request),
            panel: request.body,
          }),
        ),
      ),
  });

  app.post('/shows/:showId/classes/:classId/panel/:seatId/withdrawal', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'A judge leaves the panel, and another may take her place',
      params: seatParams,
      body: withdrawal,
      response: {
        200: panelBody,
        ...refusals(...accessRefusals, 'class_not_open', 'seat_withdrawn', 'unknown_reference', 'seat_taken'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        changed(await withdrawJudge(parts, tx, { ...request.params, ...request.body })),
      ),
  });
};
