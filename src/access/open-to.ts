/** Who may call a route: said where the route is, checked by the one guard in front of all of them. */
import { type Duty, duties } from './actor.ts';

export type Caller = Duty | 'judge' | 'scribe' | 'gate' | 'everyone';

/** What a route's `config` says. */
export interface AccessRule {
  readonly access: readonly [Caller, ...Caller[]];
}

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Who may call it. A route of the API without this keeps the service from starting. */
    access?: AccessRule['access'];
  }
}

/** Whoever changes a show's records at the office. */
export const office = ['manager', 'secretary'] as const satisfies readonly Caller[];
/** Whoever reads them there: the points secretary too. */
export const officeReading = duties;

/**
 * `config: openTo(...office, 'judge')`. `everyone` needs no pass, but whoever brings one must bring a valid one; it
 * stands alone, since nobody is left out.
 */
export const openTo = (...access: AccessRule['access']): AccessRule => ({ access });
