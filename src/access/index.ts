export { signInName } from './accounts/account-schemas.ts';
export { makeFirstAccount } from './accounts/first-account.ts';
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
export { keyFor } from './derived-key.ts';
export { actorOf, guardRoutes, isDoor, knownSender, senderOf, stillSeesAsOffice } from './guard.ts';
export { type AccessRule, type Caller, office, officeReading, openTo } from './open-to.ts';
export { PhoneDoor } from './phones/recognize-phone.ts';
export { accessRoutes } from './routes.ts';
