export { type Actor, type Role, reachesShow } from './actor.ts';
export {
  actorOf,
  knowActor,
  mustHoldSeat,
  requireRole,
  requireServiceOffice,
  seesAsOffice,
} from './require-role.ts';
export { accessRoutes } from './routes.ts';
export { type IssuedToken, issueToken } from './tokens.ts';
