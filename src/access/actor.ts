/** Who sends a request, as far as access is concerned. */
import type { LineActor } from '../evidence/index.ts';
import { problem } from '../platform/problems/index.ts';

/** What an account of the office is for. */
export const duties = ['manager', 'secretary', 'points-secretary'] as const;
export type Duty = (typeof duties)[number];

export type Actor =
  | {
      readonly as: 'office';
      readonly duty: Duty;
      readonly accountId: string;
      readonly sessionId: string;
      /** Where the account may work. */
      readonly shows: 'all' | ReadonlySet<string>;
    }
  /** The phone of a judge, who signs, or of the scribe who writes for her and never signs. */
  | {
      readonly as: 'judge' | 'scribe';
      readonly showId: string;
      readonly phoneId: string;
      /** The judge. */
      readonly personId: string;
      /** All of her seats at the show. */
      readonly seatIds: ReadonlySet<string>;
    }
  | { readonly as: 'gate'; readonly showId: string; readonly phoneId: string }
  /** Whoever comes without a pass. */
  | { readonly as: 'everyone' };

/** An account of the office, under one of its sessions. */
export type Office = Extract<Actor, { as: 'office' }>;

export const anyone: Actor = { as: 'everyone' };

/** Is the show one of the sender's? Whoever comes without a pass reads what is public of every show. */
export function reachesShow(actor: Actor, showId: string): boolean {
  switch (actor.as) {
    case 'everyone':
      return true;
    case 'office':
      return actor.shows === 'all' || actor.shows.has(showId);
    default:
      return actor.showId === showId;
  }
}

/** A judge or scribe must hold the seat; an office is not asked for one. Throws other_seat. */
export function mustHoldSeat(actor: Actor, seatId: string): void {
  if ((actor.as === 'judge' || actor.as === 'scribe') && !actor.seatIds.has(seatId))
    throw problem('other_seat');
}

/** Does the sender see what only the office of this show sees? */
export const seesAsOffice = (actor: Actor, showId: string): boolean =>
  actor.as === 'office' && reachesShow(actor, showId);

/** For what belongs to no show yet, or to all. Throws not_allowed. */
export function mustServeAllShows(actor: Actor): void {
  if (actor.as === 'office' && actor.shows === 'all') return;
  throw problem('not_allowed', {
    detail: 'The account is for some shows; this needs one for the whole service.',
  });
}

/** The account at work. Where another kind of sender comes so far, a route was opened to too many. */
export function officeOf(actor: Actor): Office {
  if (actor.as === 'office') return actor;
  throw new Error('this is for an account of the office alone');
}

/** Whose Idempotency-Keys they are: a judge may go on with another phone, or her scribe for her. */
export function senderKey(actor: Actor): string {
  switch (actor.as) {
    case 'office':
      return `account ${actor.accountId}`;
    case 'judge':
    case 'scribe':
      return `person ${actor.personId}`;
    case 'gate':
      return `gate ${actor.showId}`;
    case 'everyone':
      return actor.as;
  }
}

/** As the ledger names the sender: ids, never names. */
export function lineActorOf(actor: Actor): LineActor {
  switch (actor.as) {
    case 'office':
      return { as: actor.as, account: actor.accountId, session: actor.sessionId };
    case 'judge':
    case 'scribe':
      return { as: actor.as, phone: actor.phoneId, person: actor.personId };
    case 'gate':
      return { as: actor.as, phone: actor.phoneId };
    case 'everyone':
      return { as: actor.as };
  }
}
