export { type OpenedSession, openSession } from './accounts/sessions.ts';
export {
  type Actor,
  type Duty,
  duties,
  mustHoldSeat,
  mustServeAllShows,
  officeOf,
  reachesShow,
  seesAsOffice,
  senderKey,
} from './actor.ts';
export { actorOf, guardRoutes, isDoor, senderOf } from './guard.ts';
export { type AccessRule, type Caller, office, officeReading, openTo } from './open-to.ts';
export { PhoneDoor } from './phones/recognize-phone.ts';
export { accessRoutes } from './routes.ts';
