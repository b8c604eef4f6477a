/** The day of a phone, as `GET /v1/phones/current/day` answers it: all that the phone needs, also with no signal. */

import type { PatternDrawing } from '../../../engine/patterns/types.ts';
import type { PlacingRule } from '../../../engine/placing/types.ts';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Go, ScoreSheet } from '../../../engine/sheets/types.ts';
import type { SheetName } from '../../../evidence/index.ts';

export interface Day {
  readonly phone: DayPhone;
  /** In the order of the program; one for each seat of this judge. */
  readonly classes: readonly DayClass[];
}

export interface DayPhone {
  readonly id: string;
  readonly role: 'judge' | 'scribe';
  readonly label: string | null;
  readonly judge: { readonly personId: string; readonly name: string };
  /** How many other phones write for the same judge. */
  readonly otherPhones: number;
  readonly show: {
    readonly id: string;
    readonly name: string;
    readonly place: string;
    /** IANA, e.g. "America/Chicago": every time is shown in it. */
    readonly timeZone: string;
    readonly firstDay: string;
    readonly lastDay: string;
    readonly kind: 'official' | 'practice';
  };
}

export interface DayClass {
  readonly classId: string;
  readonly seatId: string;
  readonly seatRole: 'judge' | 'referee';
  /** The judge left the panel: her card counts no more and cannot be written. */
  readonly withdrawn: boolean;
  readonly number: number;
  readonly name: string;
  readonly discipline: string;
  readonly division: string | null;
  readonly ring: string | null;
  /** ISO instant. */
  readonly scheduledAt: string | null;
  /** setting-up, drawn, called, under-way, cards-in, provisional, official, corrected, cancelled, combined. */
  readonly state: string;
  /** How the class is placed; in words by engine/sentences/rule-words, `panel` says which judge is meant. */
  readonly rule: PlacingRule;
  /** Seats of the panel by their order; no names. */
  readonly panel: readonly { readonly seatId: string; readonly seatOrder: number }[];
  readonly sheet: ScoreSheet;
  readonly sheetName: SheetName;
  /** `null`: the class has no pattern (a rail class, one mark). */
  readonly pattern: DayPattern | null;
  /** In the order of go; who has no position yet stands behind, by back number. */
  readonly entries: readonly DayEntry[];
  /** true: the card cannot be signed while ties on it are open; false: they are flagged. */
  readonly tiesMustBeBroken: boolean;
  readonly card: DayCard;
}

export interface DayPattern {
  readonly name: string;
  readonly maneuvers: readonly DayManeuver[];
  /** `null`: it is not drawn. */
  readonly drawing: PatternDrawing | null;
}

export interface DayManeuver {
  /** From 1. */
  readonly position: number;
  readonly name: string;
  readonly description: string | null;
  /** Letters of the cones. */
  readonly startCone: string | null;
  readonly endCone: string | null;
  readonly gait: string | null;
  readonly leadOrDiagonal: 'left' | 'right' | null;
  /** Decimal as text. */
  readonly coefficient: string;
}

export interface DayEntry {
  readonly classEntryId: string;
  readonly backNumber: number;
  /** `null`: not drawn yet. */
  readonly goPosition: number | null;
  /** entered, checked-in, scratched, no-show, excused, moved; only the first two go. */
  readonly status: string;
  readonly videoUrl: string | null;
}

/** Her own order of ties, or her ranking of a rail class. */
export type CardOrder = Pick<CardContent, 'ownOrder' | 'ranking'>;

/** The card as the service has it. */
export interface DayCard {
  readonly cardId: string;
  readonly opened: boolean;
  readonly goes: readonly {
    readonly classEntryId: string;
    readonly version: number;
    readonly savedAt: string;
    readonly content: Go;
  }[];
  readonly order: { readonly version: number; readonly savedAt: string; readonly content: CardOrder } | null;
  /** The last signed revision; `null`: the card is not signed. */
  readonly signed: {
    readonly revision: number;
    readonly contentHash: string;
    readonly signedAt: string;
    readonly receivedAt: string;
    readonly content: CardContent;
    /** Why it was amended; `null`: it was not. */
    readonly reason: string | null;
  } | null;
}
