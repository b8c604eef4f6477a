/** One judge's card of a class as a whole: what is on it, what it comes to, and what is wrong with it. */
import type { Exact } from '../numbers/exact.ts';
import type { Go, GoFault, JudgeScore, ScoreSheet, SheetManeuver, Tier } from './types.ts';

/** What a judge hands in. Entries go by the id of their class entry. Plain JSON; stored as it was signed. */
export interface CardContent {
  /** Scored sheets: a go for each entry that went. Places sheets: only entries with a ruling or a remark. */
  readonly goes: Readonly<Record<string, Go>>;
  /** How she broke the ties on her own card: each list is one whole tie, best first. */
  readonly ownOrder?: readonly (readonly string[])[];
  /** Places sheets: best first; entries in one inner list share a place until she orders them. */
  readonly ranking?: readonly (readonly string[])[];
}

/** An entry of the class; `going` is false once it is scratched, or never came. */
export interface CardEntry {
  readonly id: string;
  readonly going: boolean;
}

export interface CardToCheck {
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  readonly entries: readonly CardEntry[];
  readonly content: CardContent;
}

export type CardCheck =
  | { readonly ok: true; readonly card: CheckedCard }
  | { readonly ok: false; readonly faults: readonly CardFault[] };

/** A card that may be signed. */
export interface CheckedCard {
  readonly kind: 'scores' | 'ranking';
  /** Scored sheets: every entry that went. Places sheets: those with a ruling or a remark. */
  readonly goes: ReadonlyMap<string, JudgeScore>;
  /** The tied groups of the card, best first; last, as one group, those that may not be placed. */
  readonly order: readonly CardGroup[];
  /** Groups of `order` that hold several entries and that are the judge's to break. */
  readonly openTies: readonly (readonly string[])[];
  /** The judge's breaking of her own ties, as `cardFromGoes` takes it. */
  readonly ownOrder: readonly (readonly string[])[];
}

export interface CardGroup {
  readonly tier: Tier;
  readonly score: Exact | undefined;
  readonly entries: readonly string[];
}

/** A fault of one go, or of the card around it; `at` is a JSON pointer into the content. */
export interface CardFault extends Omit<GoFault, 'code'> {
  readonly code: GoFault['code'] | CardFaultCode;
  /** The entry concerned; `undefined` where it is about the whole card. */
  readonly entry: string | undefined;
}

export type CardFaultCode =
  /** Went, and the card says nothing about it. */
  | 'entry_missing'
  /** Scratched, or did not come: it may not be on a card. */
  | 'entry_not_going'
  /** Not an entry of this class. */
  | 'entry_unknown'
  | 'ranked_twice'
  /** Ranked, though the judge ruled that it may not be placed. */
  | 'ranked_but_ruled_out'
  | 'ranking_too_short'
  | 'ranking_too_long'
  /** Own order names entries that are not tied, or only some of a tie. */
  | 'own_order_not_a_tie';
