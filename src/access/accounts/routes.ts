import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { accountRoutes } from './account-routes.ts';
import { sessionRoutes } from './session-routes.ts';
import { setUpRoutes } from './set-up-routes.ts';

/** Everything about accounts of the office. To be registered as a plugin: what it says of caching is for these routes. */
export const officeAccountRoutes: FeatureRoutes = async (app, options) => {
  // Tokens, secrets, one-time codes, names of colleagues: nothing here is for a cache.
  app.addHook('onRequest', async (_request, reply) => {
    reply.header('cache-control', 'no-store');
  });
  for (const feature of [accountRoutes, sessionRoutes, setUpRoutes]) {
    await feature(app, options);
  }
};
