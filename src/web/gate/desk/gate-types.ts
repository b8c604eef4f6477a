/** What the gate works with, as the service answers it and as this device keeps it. */
import type { Answer } from '../../shared/api.ts';
import type { Problem } from '../../shared/problem-words.ts';

export type Board = Answer<'/v1/shows/{showId}/board'>;
export type ClassLine = Board['classes'][number];
export type EntryLine = Answer<'/v1/shows/{showId}/classes/{classId}/entries'>['items'][number];
export type Status = EntryLine['status'];
/** Which the gate may give; `moved` is the office's. */
export type GivenStatus = Exclude<Status, 'moved'>;
export type CardLine = Answer<'/v1/classes/{classId}/cards'>['items'][number];
export type Announcement = Answer<'/v1/classes/{classId}/announcement'>;

/** The gate sheet of one class. */
export interface Sheet {
  readonly entries: readonly EntryLine[];
  readonly cards: readonly CardLine[];
  /** A rail class: all are in the ring at once. */
  readonly isRail: boolean;
}

export interface Show {
  readonly id: string;
  readonly name: string;
  readonly timeZone: string;
  readonly isPractice: boolean;
}

/** Something that was seen, and when it was asked for. */
export interface Seen<What> {
  readonly what: What;
  /** ISO, by the clock of this device. */
  readonly seenAt: string;
}

/** Who went last, as the gate itself said it; `null`: nobody yet. */
export interface GoneByHand {
  readonly gone: string | null;
  /** How many goes the judges had written then. */
  readonly judgedThen: number;
}

export type Change =
  | { readonly kind: 'call' }
  | {
      readonly kind: 'status';
      readonly classEntryId: string;
      readonly backNumber: number;
      readonly status: GivenStatus;
      readonly reason: string | null;
    }
  | { readonly kind: 'order'; readonly order: readonly string[]; readonly reason: string };

/** A change on its way to the service: kept before it is shown, sent in order, each once. */
export interface Outgoing {
  /** The Idempotency-Key: sent twice, it is done once. */
  readonly id: string;
  readonly classId: string;
  readonly classNumber: number;
  readonly change: Change;
  readonly madeAt: string;
  /** `null`: waiting to be sent. */
  readonly refused: Problem | null;
}

export type GateState =
  | { readonly is: 'loading' }
  /** Paired as a judge's or a scribe's. */
  | { readonly is: 'other-phone' }
  /** Paired, and the service has not been heard of since. */
  | { readonly is: 'waiting' }
  /** At the office's desk: which show? */
  | { readonly is: 'choose-show' }
  /** The phone was taken off the show, or the session of the office ended. */
  | { readonly is: 'ended'; readonly problem: Problem }
  | { readonly is: 'here'; readonly show: Show };

export interface Hearing {
  readonly kind: 'live' | 'looking' | 'lost';
  readonly heardAt: Date | undefined;
}
