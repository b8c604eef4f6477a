/** The one door of the archives. */
export { archiveRoutes } from './routes.ts';
