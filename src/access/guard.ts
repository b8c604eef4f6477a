/** The one guard in front of all routes. It runs before the body is read, so that a stranger learns nothing from its faults. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { LineActor } from '../evidence/index.ts';
import { onBehalfOf } from '../ledger/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { Problem, problem } from '../platform/problems/index.ts';
import { readSession } from './accounts/sessions.ts';
import { type Actor, anyone, lineActorOf, reachesShow, seesAsOffice } from './actor.ts';
import type { AccessRule, Caller } from './open-to.ts';
import type { FoundPhone } from './phones/find-phone.ts';
import type { PhoneDoor } from './phones/recognize-phone.ts';

const actors = new WeakMap<FastifyRequest, Actor>();

/** Who sends the request. */
export const actorOf = (request: FastifyRequest): Actor => actors.get(request) ?? anyone;

/** The account or phone that sends it; `undefined`: nobody that is known. */
export function senderOf(request: FastifyRequest): string | undefined {
  const actor = actorOf(request);
  if (actor.as === 'everyone') return undefined;
  return actor.as === 'office' ? `account ${actor.accountId}` : `phone ${actor.phoneId}`;
}

/** The same, as the ledger names the sender. */
export function knownSender(request: FastifyRequest): LineActor | undefined {
  const actor = actorOf(request);
  return actor.as === 'everyone' ? undefined : lineActorOf(actor);
}

/** Does the office that sent the request see the show as before? For an answer that stays open: its session may have ended. */
export async function stillSeesAsOffice(
  parts: AppParts,
  request: FastifyRequest,
  showId: string,
): Promise<boolean> {
  const [, token = ''] = /^Bearer ([\w.-]+)$/i.exec(request.headers.authorization ?? '') ?? [];
  try {
    return seesAsOffice(await readSession(parts, token), showId);
  } catch (error) {
    if (error instanceof Problem) return false;
    throw error;
  }
}

/** Needs no pass and changes something: where codes and passwords are guessed. */
export const isDoor = ({ method, routeOptions }: FastifyRequest): boolean =>
  routeOptions.config.access?.[0] === 'everyone' && method !== 'GET' && method !== 'HEAD';

/**
 * Must be set up before the routes of the API are added: one that does not say who may call it is refused then and
 * there. Requests are answered with token_missing, what the pass itself is refused for, not_allowed or other_show.
 */
export function guardRoutes(
  app: App,
  { parts, door }: { readonly parts: AppParts; readonly door: PhoneDoor },
): void {
  app.addHook('onRoute', ({ url, method, config }) => {
    if (url.startsWith('/v1/') && config?.access === undefined) {
      throw new Error(`${String(method)} ${url} does not say who may call it: give it config: openTo(...)`);
    }
  });
  app.addHook('onRequest', async (request, reply) => {
    const { access } = request.routeOptions.config;
    if (access === undefined) return;
    const actor = await recognize(request, reply, { parts, door });
    actors.set(request, actor);
    mustBeLetIn(actor, access);
    mustReachShow(request, actor);
  });
  app.addHook('preHandler', (request, _reply, done) => {
    onBehalfOf(lineActorOf(actorOf(request)), done);
  });
}

async function recognize(
  request: FastifyRequest,
  reply: FastifyReply,
  { parts, door }: { readonly parts: AppParts; readonly door: PhoneDoor },
): Promise<Actor> {
  const header = request.headers.authorization;
  if (header === undefined) return anyone;
  const [, scheme = '', token = ''] = /^(Bearer|DPoP) ([\w.-]+)$/i.exec(header) ?? [];
  switch (scheme.toLowerCase()) {
    case 'bearer':
      return readSession(parts, token);
    case 'dpop':
      return phoneActor(await door.recognize(request, reply, token));
    default:
      throw problem('token_invalid');
  }
}

function phoneActor({ id: phoneId, showId, role, personId, seatIds }: FoundPhone): Actor {
  if (role === 'gate') return { as: role, showId, phoneId };
  if (personId === null) throw new Error('the phone of a judge or scribe belongs to nobody');
  return { as: role, showId, phoneId, personId, seatIds: new Set(seatIds) };
}

function mustBeLetIn(actor: Actor, access: AccessRule['access']): void {
  if (access.includes('everyone')) return;
  if (actor.as === 'everyone') throw problem('token_missing');
  const caller: Caller = actor.as === 'office' ? actor.duty : actor.as;
  if (access.includes(caller)) return;
  throw problem('not_allowed', {
    detail: `The pass is that of a ${words(caller)}; this is open to ${access.map(words).join(', ')}.`,
  });
}

const words = (caller: Caller): string => caller.replace('-', ' ');

function mustReachShow(request: FastifyRequest, actor: Actor): void {
  const { params } = request;
  if (typeof params !== 'object' || params === null || !('showId' in params)) return;
  const showId = typeof params.showId === 'string' ? params.showId.toLowerCase() : '';
  if (!reachesShow(actor, showId)) throw problem('other_show');
}
