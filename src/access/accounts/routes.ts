import type { App, FeatureRoutes } from '../../platform/app-parts.ts';
import { accountRoutes } from './account-routes.ts';
import { sessionRoutes } from './session-routes.ts';
import { setUpRoutes } from './set-up-routes.ts';

/** Everything about accounts of the office. */
export const officeAccountRoutes: FeatureRoutes = async (above, options) => {
  await above.register(async (app: App) => {
    // Tokens, secrets, one-time codes, names of colleagues: nothing here is for a cache.
    app.addHook('onRequest', async (_request, reply) => {
      reply.header('cache-control', 'no-store');
    });
    for (const feature of [accountRoutes, sessionRoutes, setUpRoutes]) await feature(app, options);
  });
};
