/** What the phone keeps in its own store. Everything is plain JSON, so that it can be exported as it is. */
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { CardOrder, DayClass, DayPhone } from './day-types.ts';
import type { ServiceProblem } from './desk-types.ts';

/** A go, or the order of the card. */
export type Written = Go | CardOrder;

/** The part of a card that its order is; every other part is a class entry's id. */
export const orderPart = 'order';

/** One part of one card, with all that must survive: what is unsent, what it was made from, and how to undo it. */
export interface Writing {
  readonly classId: string;
  readonly part: string;
  readonly content: Written;
  /** What the service had when this phone last heard. `version: null`: nothing yet. */
  readonly seen: { readonly version: number | null; readonly content: Written };
  /** When it was written (ms), while the service does not have it: this is the outbox. */
  readonly unsentSince?: number;
  /** Sent since `seen`, with no answer yet: one of them may have come in. */
  readonly tried: readonly Written[];
  readonly conflict: KeptConflict | null;
  readonly refused: ServiceProblem | null;
  /** What stood here before each change made on this phone, the last one last. */
  readonly before: readonly Written[];
}

export interface KeptConflict {
  /** `null`: it was wiped there. */
  readonly theirs: Written | null;
  readonly version: number | null;
  readonly savedAt: string | null;
  readonly foundAt: string;
  /** It stands on a signed card: it can be amended, not overwritten. */
  readonly signed: boolean;
}

export interface KeptClass {
  readonly classId: string;
  /** Its place in the program. */
  readonly at: number;
  readonly day: DayClass;
}

/** A signature of this phone. It stays in the store, whatever became of it. */
export interface KeptSignature {
  /** Also its Idempotency-Key. */
  readonly id: string;
  readonly classId: string;
  readonly revision: number;
  /** As it was made, and as it is sent, also again. */
  readonly jws: string;
  readonly content: CardContent;
  readonly contentHash: string;
  readonly reason: string | null;
  /** By the phone's clock. */
  readonly signedAt: string;
  /** 1 for the first of its class, 2 ...: no clock can put them into another order. */
  readonly madeAt: number;
  readonly state: SignatureFate;
  readonly problem: ServiceProblem | null;
  readonly differences: number;
}

/** `taken-back`: before it was sent, or after it was refused. It counts no more. */
export type SignatureFate = 'waiting' | 'received' | 'refused' | 'taken-back';

export interface KeptPhone {
  readonly place: typeof thisPhone;
  /** Of the key that all of this belongs to. */
  readonly thumbprint: string;
  readonly phone: DayPhone | null;
  readonly heardAt: string | null;
  /** Of the whole day. */
  readonly etag: string | null;
  /** Why the service takes nothing of this phone any more. */
  readonly ended: ServiceProblem | null;
}
export const thisPhone = 'this phone';

export interface KeptAmendment {
  readonly classId: string;
  readonly content: CardContent;
  readonly reason: string;
}

/** The work of somebody else who was paired here before and had not sent all. */
export interface KeptLeftBehind {
  readonly id: string;
  readonly leftAt: string;
  readonly judge: string;
  readonly show: string;
  readonly text: string;
}
