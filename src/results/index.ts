/** The one door of the results. */
export { resultRoutes } from './routes.ts';
