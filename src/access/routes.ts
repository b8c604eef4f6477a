/** Everything about who may come in. */
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { invitationRoutes } from './phones/invitation-routes.ts';
import { pairingRoutes } from './phones/pairing-routes.ts';
import type { PhoneDoor } from './phones/recognize-phone.ts';

export const accessRoutes =
  (door: PhoneDoor): FeatureRoutes =>
  async (app, options) => {
    await app.register(invitationRoutes, options);
    await app.register(pairingRoutes(door), options);
  };
