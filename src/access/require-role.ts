/** Guards in front of routes. They run before the body is read, so that a stranger learns nothing from its faults. */
import type { FastifyRequest } from 'fastify';
import type { AppParts } from '../platform/app-parts.ts';
import { problem } from '../platform/problems/index.ts';
import { type Actor, anyone, type Role, reachesShow } from './actor.ts';
import { readToken } from './tokens.ts';

type Guard = (request: FastifyRequest) => Promise<void>;

const actors = new WeakMap<FastifyRequest, Actor>();

/** Who sends the request. A route without a guard knows nobody. */
export const actorOf = (request: FastifyRequest): Actor => actors.get(request) ?? anyone;

/**
 * `onRequest: requireRole(parts, 'office', 'gate')`: a valid pass of one of the roles is needed, and where the
 * address has `:showId`, one for that show. Throws token_missing, token_invalid, token_expired, token_revoked,
 * not_allowed, other_show.
 */
export function requireRole(parts: AppParts, ...allowed: readonly Exclude<Role, 'public'>[]): Guard {
  return async (request) => {
    const actor = await recognize(parts, request);
    if (actor === undefined) throw problem('token_missing');
    if (!allowed.some((role) => role === actor.role)) {
      throw problem('not_allowed', {
        detail: `The pass is of the role ${actor.role}; this needs ${allowed.join(' or ')}.`,
      });
    }
    mustReachShow(request, actor);
  };
}

/** For what everyone may read: no pass is needed, but whoever brings one must bring a valid one. */
export function knowActor(parts: AppParts): Guard {
  return async (request) => {
    await recognize(parts, request);
  };
}

/** An office of the whole service, which sets up shows and hands out passes to their offices. */
export function requireServiceOffice(parts: AppParts): Guard {
  const isOffice = requireRole(parts, 'office');
  return async (request) => {
    await isOffice(request);
    if (actorOf(request).showId !== null) {
      throw problem('not_allowed', {
        detail: 'The pass is for one show; this needs the office of the whole service.',
      });
    }
  };
}

/** A judge or scribe must hold the seat; an office is not asked for one. Throws other_seat. */
export function mustHoldSeat(actor: Actor, seatId: string): void {
  if ((actor.role === 'judge' || actor.role === 'scribe') && actor.seatId !== seatId)
    throw problem('other_seat');
}

/** Does the sender see what only the office of this show sees? */
export function seesAsOffice(actor: Actor, showId: string): boolean {
  return actor.role === 'office' && reachesShow(actor, showId);
}

async function recognize(parts: AppParts, request: FastifyRequest): Promise<Actor | undefined> {
  const header = request.headers.authorization;
  if (header === undefined) return undefined;
  const token = /^Bearer ([\w-]+\.[\w-]+\.[\w-]+)$/i.exec(header)?.[1];
  if (token === undefined) throw problem('token_invalid');
  const actor = await readToken(parts, token);
  actors.set(request, actor);
  return actor;
}

function mustReachShow(request: FastifyRequest, actor: Actor): void {
  const { params } = request;
  if (typeof params !== 'object' || params === null || !('showId' in params)) return;
  const showId = typeof params.showId === 'string' ? params.showId.toLowerCase() : '';
  if (!reachesShow(actor, showId)) throw problem('other_show');
}
