/** Builds the service from given parts. Whoever wants it to listen does that elsewhere. */
import {
  accessRoutes,
  actorOf,
  guardRoutes,
  isDoor,
  knownSender,
  mustServeAllShows,
  office,
  openTo,
  PhoneDoor,
  seesAsOffice,
  senderOf,
  stillSeesAsOffice,
} from './access/index.ts';
import { archiveRoutes } from './archive/index.ts';
import { cardRoutes } from './cards/index.ts';
import { documentRoutes } from './documents/index.ts';
import { liveRoutes, readRoutes, recordRefusals } from './ledger/index.ts';
import { lookUpRoutes } from './look-up/index.ts';
import { officeRoutes } from './office/index.ts';
import { renderedPages } from './pages/index.ts';
import type { App, AppParts, FeatureRoutes } from './platform/app-parts.ts';
import { browseRoutes, describeRoutes } from './platform/docs/openapi.ts';
import { createServer } from './platform/http/create-server.ts';
import { healthRoutes } from './platform/http/health.ts';
import { limitSenders } from './platform/http/rate-limits.ts';
import { pageRoutes } from './platform/http/serve-pages.ts';
import { signingKeysRoute } from './platform/http/signing-keys-route.ts';
import { queryRoutes } from './queries/index.ts';
import { resultRoutes } from './results/index.ts';

/** Everything under `/v1`. */
function features(door: PhoneDoor): readonly FeatureRoutes[] {
  const live = liveRoutes({
    config: openTo('everyone'),
    hearsAll: (request, showId) => seesAsOffice(actorOf(request), showId),
    stillHearsAll: stillSeesAsOffice,
  });
  const ledger = readRoutes({
    ...{ toOffice: openTo(...office), toManagers: openTo('manager'), toEveryone: openTo('everyone') },
    mustBeOfWholeService: (request) => mustServeAllShows(actorOf(request)),
  });
  return [
    accessRoutes(door),
    officeRoutes,
    cardRoutes,
    resultRoutes,
    lookUpRoutes,
    queryRoutes,
    documentRoutes,
    archiveRoutes,
    ledger,
    live,
  ];
}

export async function buildApp(parts: AppParts): Promise<App> {
  const { config } = parts;
  const app = await createServer(parts);
  const door = new PhoneDoor(parts);
  guardRoutes(app, { parts, door });
  limitSenders(app, {
    ...{ perSender: config.senderRequestsPerMinute, atDoors: config.signInsPerMinute },
    ...{ senderOf, isDoor },
  });
  recordRefusals(app, parts, { sender: knownSender });
  await describeRoutes(app);
  if (config.browsableDocs) await browseRoutes(app);
  await app.register(healthRoutes, { parts });
  await app.register(signingKeysRoute, { parts });
  await app.register(pageRoutes);
  await app.register(renderedPages);
  for (const feature of features(door)) await app.register(feature, { parts, prefix: '/v1' });
  await app.ready();
  return app;
}
