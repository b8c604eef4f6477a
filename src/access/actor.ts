/** Who sends a request, as far as access is concerned. */

export const roles = ['office', 'judge', 'scribe', 'gate', 'public'] as const;
export type Role = (typeof roles)[number];

export type Actor =
  /** `showId` null: the whole service. */
  | { readonly role: 'office'; readonly showId: string | null; readonly jti: string }
  /** A judge signs for her own seat; a scribe writes drafts for one judge and never signs. */
  | {
      readonly role: 'judge' | 'scribe';
      readonly showId: string;
      readonly seatId: string;
      readonly jti: string;
    }
  | { readonly role: 'gate'; readonly showId: string; readonly jti: string }
  /** Whoever comes without a pass has no number. */
  | { readonly role: 'public'; readonly showId: string | null; readonly jti: string | null };

export const anyone: Actor = { role: 'public', showId: null, jti: null };

/** Does the pass reach into this show? A public one reads every show. */
export function reachesShow(actor: Actor, showId: string): boolean {
  return actor.role === 'public' || actor.showId === null || actor.showId === showId;
}
