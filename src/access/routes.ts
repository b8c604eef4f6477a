/** Everything about who may come in. */
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { officeAccountRoutes } from './accounts/routes.ts';
import { invitationRoutes } from './phones/invitation-routes.ts';
import { pairingRoutes } from './phones/pairing-routes.ts';
import type { PhoneDoor } from './phones/recognize-phone.ts';

export const accessRoutes =
  (door: PhoneDoor): FeatureRoutes =>
  async (app, { parts }) => {
    // The prefix is set already: to hand the options on would set it twice.
    await app.register(officeAccountRoutes, { parts });
    await app.register(invitationRoutes, { parts });
    await app.register(pairingRoutes(door), { parts });
  };
