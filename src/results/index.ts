/** The one door of the results. */
export { classStates } from './class-state.ts';
export { resultRoutes } from './routes.ts';
