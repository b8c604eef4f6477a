/**
 * The desk: everything of the judge's page that is not screen. Marks are kept on the phone before the screen changes,
 * the outbox sends them when there is signal, and what the other phone of the seat wrote comes in.
 *
 * Signals are read-only: the screen calls the verbs. A verb resolves once the phone has it for good (IndexedDB,
 * durability strict); it never waits for the service. Verbs do not reject: what did not work is in the outcome.
 */
import type { ReadonlySignal } from '@preact/signals';
import type { CardContent, CardFault, CheckedCard } from '../../../engine/sheets/card-types.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { CardOrder, Day, DayClass } from './day-types.ts';

/**
 * Opens the phone's own store and begins to send and listen. Once per page. `undefined`: the browser keeps nothing (a
 * private window, a full disk), so nothing can be marked here.
 */
export type OpenDesk = () => Promise<Desk | undefined>;

export interface Desk {
  readonly day: ReadonlySignal<DayState>;
  readonly signal: ReadonlySignal<SignalState>;
  /** Of all classes, the oldest first. */
  readonly conflicts: ReadonlySignal<readonly Conflict[]>;
  readonly update: ReadonlySignal<UpdateState>;

  /** The same signal for the same class each time. `undefined`: no such class on this phone. */
  classOf(classId: string): ReadonlySignal<DayClass | undefined>;
  /** What is written of one go: on this phone, or of the signed card once it is signed. */
  goOf(classId: string, classEntryId: string): ReadonlySignal<GoOnDesk>;
  orderOf(classId: string): ReadonlySignal<OrderOnDesk>;
  stateOf(classId: string): ReadonlySignal<CardState>;
  /** The whole card as it stands now: what would be signed, or what was signed last. Only entries that go. */
  contentOf(classId: string): ReadonlySignal<CardContent>;
  /** Runs the engine over the card; cheap, but not for every render of every row. */
  checkSignable(classId: string): SignCheck;
  checkAmendment(classId: string, content: CardContent): SignCheck;

  /**
   * Give a function where a tap changes something of a go: it is applied to what is kept, so that two quick taps, or
   * two tabs, never lose one another. It must be pure.
   */
  writeGo(classId: string, classEntryId: string, go: Go | ((kept: Go) => Go)): Promise<WriteOutcome>;
  writeOrder(classId: string, order: CardOrder | ((kept: CardOrder) => CardOrder)): Promise<WriteOutcome>;
  /** Takes the last change made on this phone back; `nothing-to-undo` where there is none. */
  undo(classId: string, classEntryId: string): Promise<WriteOutcome>;
  undoOrder(classId: string): Promise<WriteOutcome>;

  /** Judge's phone only. Signed on the phone and kept in the outbox when it resolves. */
  sign(classId: string): Promise<SignOutcome>;
  amend(classId: string, content: CardContent, reason: string): Promise<SignOutcome>;
  /** An amendment that is being written is kept too; `null` throws it away, `amend` does when it is signed. */
  keepAmendment(classId: string, amendment: Amendment | null): Promise<WriteOutcome>;
  amendmentOf(classId: string): ReadonlySignal<Amendment | undefined>;
  settle(conflict: Conflict, choice: Choice): Promise<WriteOutcome>;
  /** What the service refused is put away: the go is as the service has it, and `undo` brings it back. */
  dismissRefusal(classId: string, classEntryId: string): Promise<WriteOutcome>;
  dismissSignature(classId: string): Promise<WriteOutcome>;

  /** Says which class is open for marking (`null`: none): it is asked for more often, and no update comes in between. */
  marking(classId: string | null): void;
  /** Asks and sends now, as after a pull or a tap on "try again". */
  tryNow(): void;
  /** Reloads into the version that waits. Only where `update` says `ready`. */
  takeUpdate(): Promise<void>;

  /** All that this phone holds, as JSON that the office can key in from. Also after the phone was taken back. */
  exportText(): Promise<string>;
  /** Wipes key, day, drafts, history. Refuses while something is unsent, unless `evenUnsent`. */
  letGo(options?: { readonly evenUnsent?: boolean }): Promise<LetGoOutcome>;
  readonly leftBehind: ReadonlySignal<readonly LeftBehind[]>;
  throwAway(leftBehind: LeftBehind): Promise<void>;
  /** Stops sending and listening. For tests. */
  close(): void;
}

export interface Amendment {
  readonly content: CardContent;
  /** As far as it is written. */
  readonly reason: string;
}

/** What another judge had not sent when this phone was paired for somebody else. */
export interface LeftBehind {
  readonly id: string;
  readonly leftAt: string;
  readonly judge: string;
  readonly show: string;
  /** JSON, as of `exportText`. */
  readonly text: string;
}

export type DayState =
  | { readonly is: 'loading' }
  /** `because`: the service took it back before anything was written, or knows no such key. */
  | { readonly is: 'not-paired'; readonly because: ServiceProblem | null }
  /** Paired, but no day has come yet: there was no signal since. */
  | { readonly is: 'paired-no-day'; readonly because: ServiceProblem | null }
  | { readonly is: 'gate-phone' }
  | { readonly is: 'here'; readonly day: Day; readonly heardAt: string }
  /**
   * The pairing has ended: what is written stays, can be read, exported and even gone on with, and is sent once this
   * phone is paired for the same judge again. Nothing is signed meanwhile.
   */
  | { readonly is: 'revoked'; readonly day: Day; readonly problem: ServiceProblem };

export interface SignalState {
  /** `asking`: nothing heard or missed yet since the page was opened. */
  readonly is: 'asking' | 'heard' | 'no-answer';
  /** When the service last answered, by this phone's clock (ISO); `null`: not since the page was opened. */
  readonly lastHeardAt: string | null;
  /** Of all cards: changes that the service does not have yet. */
  readonly unsent: number;
  /** Phone's clock less the service's, in whole seconds; `null`: not known, or less than a minute. Only told. */
  readonly clockAheadSeconds: number | null;
}

/** `waits`: a newer version is here, but a class is being marked. */
export type UpdateState = 'none' | 'waits' | 'ready';

export interface GoOnDesk {
  /** `{}`: nothing written. */
  readonly go: Go;
  readonly state: WrittenState;
  /** How many changes `undo` can take back. */
  readonly undoable: number;
}

export interface OrderOnDesk {
  readonly order: CardOrder;
  readonly state: WrittenState;
  readonly undoable: number;
}

/** Where one go, or the order, is. */
export type WrittenState =
  | { readonly is: 'blank' }
  | { readonly is: 'only-on-this-phone' }
  | { readonly is: 'on-its-way' }
  | { readonly is: 'at-the-service' }
  /** The other phone wrote something else; see `conflicts`. */
  | { readonly is: 'conflict' }
  | { readonly is: 'refused'; readonly problem: ServiceProblem }
  /** Part of a card that is signed (here, or received). */
  | { readonly is: 'signed' };

/**
 * Where the card is; the weightiest is told. The order: signed here, signature refused, signed and received, conflict,
 * refused, unsent.
 */
export type CardState =
  | { readonly is: 'blank' }
  | { readonly is: 'only-on-this-phone'; readonly unsent: number }
  | { readonly is: 'on-its-way'; readonly unsent: number }
  | { readonly is: 'at-the-service' }
  | { readonly is: 'refused'; readonly problem: ServiceProblem }
  | { readonly is: 'conflict'; readonly count: number }
  | { readonly is: 'signed-on-this-phone'; readonly signature: SignatureHere }
  /** `leftOver`: changes of this phone that are not on the signed card, under `conflicts`. */
  | {
      readonly is: 'signed-and-received';
      readonly revision: number;
      readonly receivedAt: string;
      readonly leftOver: number;
    }
  /** `differences`: what the service has from the other phone stands under `conflicts`; settle, then sign again. */
  | {
      readonly is: 'signature-refused';
      readonly signature: SignatureHere;
      readonly problem: ServiceProblem;
      readonly differences: number;
    };

/** A signature that this phone made and the service has not confirmed. */
export interface SignatureHere {
  readonly revision: number;
  /** By the phone's clock. */
  readonly signedAt: string;
  readonly reason: string | null;
  /** It is held back until the conflicts of its card are settled. */
  readonly heldByConflicts: boolean;
}

export type Conflict = GoConflict | OrderConflict;

interface ConflictHead<Content> {
  readonly classId: string;
  readonly mine: Content;
  /** `null`: it was wiped there. */
  readonly theirs: Content | null;
  readonly theirVersion: number | null;
  /** It stands on the signed card: `mine` can only be put there by an amendment, so choose `theirs`, or amend. */
  readonly theirsIsSigned: boolean;
  /** By the service's clock. */
  readonly theirSavedAt: string | null;
  /** By the phone's clock. */
  readonly foundAt: string;
}

export interface GoConflict extends ConflictHead<Go> {
  readonly kind: 'go';
  readonly classEntryId: string;
  readonly backNumber: number;
  /** Both put together, where they contradict each other nowhere (she marked 1 to 3, her scribe 4); else `null`. */
  readonly together: Go | null;
}

export interface OrderConflict extends ConflictHead<CardOrder> {
  readonly kind: 'order';
}

/** `merged`: as she put it together herself. */
export type Choice =
  | { readonly take: 'mine' }
  | { readonly take: 'theirs' }
  | { readonly take: 'merged'; readonly go: Go };

export type WriteOutcome =
  | { readonly ok: true }
  | {
      readonly ok: false;
      readonly why: /** The card is signed: amend it. */
        | 'signed'
        /** Scratched, or did not come. */
        | 'not-going'
        | 'unknown-class'
        | 'withdrawn'
        /** Settled meanwhile, by another tab or because both are the same now. */
        | 'no-conflict'
        | 'nothing-to-undo'
        /** The browser did not keep it: nothing changed, on the screen neither. */
        | 'not-kept';
    }
  /** What the sheet does not allow; nothing changed. What is only missing is no fault. */
  | { readonly ok: false; readonly why: 'not-on-sheet'; readonly faults: readonly CardFault[] };

export interface SignCheck {
  readonly mayBeSigned: boolean;
  readonly content: CardContent;
  /** What is not written yet; `entry` is a class entry's id. Words: engine/sentences/fault-sentences. */
  readonly missing: readonly CardFault[];
  readonly faults: readonly CardFault[];
  /** By class entry. */
  readonly openTies: readonly (readonly string[])[];
  /** Open ties are in the way: the class merges places. */
  readonly tiesMustBeBroken: boolean;
  readonly conflicts: number;
  /** The scores and the order of the card, where nothing is missing or wrong. */
  readonly card: CheckedCard | undefined;
}

export type SignOutcome =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly why: 'not-signable'; readonly check: SignCheck }
  | {
      readonly ok: false;
      readonly why:
        | 'scribe-phone'
        | 'unknown-class'
        | 'withdrawn'
        | 'revoked'
        | 'already-signed'
        /** `amend` before there is a signature; it need not have been received. */
        | 'not-signed'
        | 'reason-missing'
        | 'changes-nothing'
        | 'not-kept';
    };

export type LetGoOutcome =
  /** `told`: the service heard it. Otherwise the office still shows the phone, and may take it back. */
  | { readonly ok: true; readonly told: boolean }
  | { readonly ok: false; readonly why: 'unsent'; readonly unsent: number };

/** What the service refused (RFC 9457). Texts are the service's; `code` is stable. */
export interface ServiceProblem {
  readonly code: string;
  readonly title: string;
  readonly detail?: string;
  readonly whatToDo: string;
  readonly errors?: readonly { readonly field: string; readonly message: string }[];
}
