import { z } from 'zod';
import { actorOf, office, officeOf, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { inTransaction } from '../../platform/database.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { created, once } from '../once.ts';
import { accessRefusals, id } from '../schemas/common.ts';
import { consentBody, newConsent } from './consent-schemas.ts';
import { openConsents, recordConsent } from './record-consent.ts';

const tags = ['Entries'];
const exhibitorParams = z.object({ showId: id, exhibitorId: id });

export const consentRoutes: FeatureRoutes = async (app, { parts }) => {
  app.post('/shows/:showId/exhibitors/:exhibitorId/consents', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'Record in which form the name may be public, and whose word that is',
      description:
        'It holds at once, for what was posted before too. For someone under 18, or of unknown age in a youth class, ' +
        'a parent or guardian must give it. To take it back, record back-number.',
      params: exhibitorParams,
      body: newConsent,
      response: {
        201: consentBody,
        ...refusals(...accessRefusals, 'consent_needs_parent', 'consent_overtaken', 'exhibitor_erased'),
      },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) => {
        const recordedBy = officeOf(actorOf(request)).accountId;
        return created(
          await recordConsent(parts, tx, { ...request.params, consent: request.body, recordedBy }),
        );
      }),
  });

  app.get('/shows/:showId/exhibitors/:exhibitorId/consents', {
    config: openTo(...office),
    schema: {
      tags,
      summary: 'The consents of an exhibitor, as they were recorded; the last one holds',
      description: 'Each reading is a line in the ledger of the show.',
      params: exhibitorParams,
      response: { 200: z.strictObject({ items: z.array(consentBody) }), ...refusals(...accessRefusals) },
    },
    handler: async ({ params }, reply) => {
      reply.header('cache-control', 'no-store');
      return { items: await inTransaction(parts.db, (tx) => openConsents(parts, tx, params)) };
    },
  });
};
