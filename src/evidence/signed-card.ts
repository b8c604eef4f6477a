/** What a judge's phone signs: the whole card, and to which show, class, seat and revision it belongs. */
import type { CardContent } from '../engine/sheets/card-types.ts';

export const signedCardForm = 'ringledger signed card 1';

export interface SignedCard {
  readonly form: typeof signedCardForm;
  readonly showId: string;
  readonly classId: string;
  readonly seatId: string;
  readonly cardId: string;
  /** The score sheet that it was marked on; `hash` is the fingerprint of its definition. */
  readonly sheet: SheetName;
  /** 1 as first signed, 2 for the first amendment ... */
  readonly revision: number;
  /** Fingerprint of the content of the revision that it amends; `null`: the first. */
  readonly previousHash: string | null;
  /** Why it is amended; `null`: the first. */
  readonly reason: string | null;
  /** By the phone's clock, RFC 3339 in UTC with milliseconds: 2026-05-02T14:03:05.000Z */
  readonly signedAt: string;
  readonly content: CardContent;
}

export interface SheetName {
  readonly code: string;
  readonly version: number;
  readonly hash: string;
}
