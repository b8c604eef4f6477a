/** The one door of the results. */

export { canonical, fingerprint } from './posting-body.ts';
export { resultRoutes } from './routes.ts';
