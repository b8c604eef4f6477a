/** Builds the service from given parts. Whoever wants it to listen does that elsewhere. */
import { accessRoutes, actorOf, knowActor, seesAsOffice } from './access/index.ts';
import { cardRoutes } from './cards/index.ts';
import { liveRoutes } from './ledger/index.ts';
import { officeRoutes } from './office/index.ts';
import type { App, AppParts, FeatureRoutes } from './platform/app-parts.ts';
import { browseRoutes, describeRoutes } from './platform/docs/openapi.ts';
import { createServer } from './platform/http/create-server.ts';
import { healthRoutes } from './platform/http/health.ts';
import { resultRoutes } from './results/index.ts';

/** Everything under `/v1`. */
function features(parts: AppParts): readonly FeatureRoutes[] {
  const live = liveRoutes({
    onRequest: knowActor(parts),
    hearsAll: (request, showId) => seesAsOffice(actorOf(request), showId),
  });
  return [accessRoutes, officeRoutes, cardRoutes, resultRoutes, live];
}

export async function buildApp(parts: AppParts): Promise<App> {
  const app = await createServer(parts);
  await describeRoutes(app);
  if (parts.config.browsableDocs) await browseRoutes(app);
  await app.register(healthRoutes, { parts });
  for (const feature of features(parts)) await app.register(feature, { parts, prefix: '/v1' });
  await app.ready();
  return app;
}
