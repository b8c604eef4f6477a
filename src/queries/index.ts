/** "This looks wrong": what families ask about a class, and what the office answers. */
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { familyRoutes } from './family-routes.ts';
import { officeRoutes } from './office-routes.ts';

export const queryRoutes: FeatureRoutes = async (app, { parts }) => {
  familyRoutes(app, parts);
  officeRoutes(app, parts);
};
