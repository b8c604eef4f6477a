/** Results over HTTP: the preview and its rulings for the office, postings for everyone. */
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { announcementRoutes } from './announcement-routes.ts';
import { postingRoutes, tabulationRoutes } from './office-routes.ts';
import { phoneRoutes } from './phone-routes.ts';
import { combinationRoutes, publicRoutes } from './public-routes.ts';

export const resultRoutes: FeatureRoutes = async (app, { parts }) => {
  tabulationRoutes(app, parts);
  postingRoutes(app, parts);
  publicRoutes(app, parts);
  announcementRoutes(app, parts);
  combinationRoutes(app, parts);
  phoneRoutes(app, parts);
};
