/**
 * Score sheets as data, and what a judge writes on them. A sheet says what may be marked and what it
 * does; `score-go.ts` turns the marks of one go into one judge's score, part by part.
 */
import type { Decimal, Exact } from '../numbers/exact.ts';
import type { Rounding } from '../numbers/rounding.ts';

export type ScoreSheet = PatternSheet | PercentageSheet | OneMarkSheet | PlacesSheet | MeasuredSheet;
export type SheetKind = ScoreSheet['kind'];

interface SheetHead {
  /** Stable short name, e.g. `"horsemanship"`; a changed sheet is a new version of the same code. */
  readonly code: string;
  readonly version: number;
  readonly title: string;
  /** Rule book and section, or "common practice, no source". */
  readonly source: string;
  /** What the rulings do on this sheet; one that is not listed may not be given on it. */
  readonly rulings: Readonly<Partial<Record<RulingCode, RulingEffect>>>;
}

/** From..to, both included, in steps counted from `low`. All decimals. */
export interface MarkRange {
  readonly low: Decimal;
  readonly high: Decimal;
  readonly step: Decimal;
}

/** Base, a mark for each maneuver, extra marks, penalties: 70 + maneuvers + form - penalties. */
export interface PatternSheet extends SheetHead {
  readonly kind: 'pattern';
  readonly base: Decimal;
  readonly maneuver: MarkRange;
  readonly extras: readonly ExtraMark[];
  readonly penalties: readonly Penalty[];
  readonly notSeen: NotSeenRule;
  /** A total below this counts as this; `null`: there is no lower limit. */
  readonly lowest: Decimal | null;
  /** What a total may be at all; a sum outside it is a fault. `null`: any. */
  readonly totalRange: { readonly low: Decimal; readonly high: Decimal } | null;
}

/** Dressage and its kin: marks out of a maximum with coefficients, errors of course, a percentage. */
export interface PercentageSheet extends SheetHead {
  readonly kind: 'percentage';
  readonly maneuver: MarkRange;
  /** Collective marks, each with its coefficient. */
  readonly collectives: readonly ExtraMark[];
  /**
   * What the first, second ... error of course takes off, as points of the sum of marks or of the percentage;
   * one more than listed eliminates. `cumulative`: they add up (2, then 2 + 4); otherwise only the last counts.
   */
  readonly errorsOfCourse: {
    readonly takes: readonly Decimal[];
    readonly from: 'points' | 'percentage';
    readonly cumulative: boolean;
  };
  readonly notSeen: NotSeenRule;
  /** Rounding of one judge's percentage, as the rule says; `null`: none. */
  readonly roundJudge: Rounding | null;
}

/** One mark for the whole go: 0..100. */
export interface OneMarkSheet extends SheetHead {
  readonly kind: 'one-mark';
  readonly mark: MarkRange;
  readonly penalties: readonly Penalty[];
}

/**
 * Rail classes: the judge ranks the first `first` entries; nothing is scored. A ruling either bars the entry
 * or is noted only: where it stands is the judge's ranking.
 */
export interface PlacesSheet extends SheetHead {
  readonly kind: 'places';
  readonly first: number;
}

/** Time in seconds with penalty seconds; the least wins. */
export interface MeasuredSheet extends SheetHead {
  readonly kind: 'measured';
  readonly unit: 'seconds';
  readonly measure: MarkRange;
  readonly penalties: readonly Penalty[];
}

/** A mark beside the maneuvers: form and effectiveness, collective marks. */
export interface ExtraMark {
  readonly code: string;
  readonly label: string;
  readonly range: MarkRange;
  readonly coefficient: Decimal;
}

export interface Penalty {
  readonly code: string;
  readonly label: string;
  /** Points (or seconds on a measured sheet) taken each time; positive. */
  readonly points: Decimal;
  readonly weight: 'minor' | 'major' | 'severe';
}

/**
 * A maneuver that the judge could not see is never a silent zero:
 * `absent`: judged as not shown, so the judge must rule on the pattern; `left-out`: it counts for nothing either way.
 */
export type NotSeenRule = 'absent' | 'left-out';

export const rulingCodes = [
  'off-pattern',
  'disqualified',
  'excused',
  'eliminated',
  'no-score',
  'no-show',
  'scratched',
  'retired',
] as const;
export type RulingCode = (typeof rulingCodes)[number];

export type RulingEffect =
  /** Off the sum of the parts (off the sum of marks on a percentage sheet); on a measured sheet seconds added. */
  | { readonly kind: 'takes-points-off'; readonly points: Decimal }
  /** Placed below all who kept the pattern. */
  | { readonly kind: 'placed-below' }
  /** May not be placed. */
  | { readonly kind: 'not-placed' }
  /** The judge's discretion: the score stands, flagged. */
  | { readonly kind: 'score-stands' };

/** One maneuver of a pattern as a sheet needs it. Positions count from 1. */
export interface SheetManeuver {
  readonly position: number;
  readonly name: string;
  readonly coefficient: Decimal;
}

/** What a judge wrote for one maneuver: a mark, or that she could not see it. */
export type ManeuverMark =
  | { readonly position: number; readonly mark: Decimal; readonly remark?: string }
  | { readonly position: number; readonly notSeen: true; readonly remark?: string };

/** What one judge wrote for one entry's go. Which parts are needed follows from the sheet's kind. */
export interface Go {
  readonly maneuvers?: readonly ManeuverMark[];
  readonly extras?: Readonly<Record<string, Decimal>>;
  /** Entered any number of times; without a position it is against the whole go. */
  readonly penalties?: readonly { readonly code: string; readonly position?: number }[];
  readonly errorsOfCourse?: number;
  /** One-mark sheets. */
  readonly mark?: Decimal;
  /** Measured sheets, in the sheet's unit. */
  readonly measure?: Decimal;
  readonly ruling?: { readonly code: RulingCode; readonly remark?: string };
  readonly remark?: string;
}

/** Status before score: these are tiers, not numbers. Best first. */
export const tiers = ['kept-pattern', 'placed-below', 'not-placed'] as const;
export type Tier = (typeof tiers)[number];

/** One judge's score for one go, with the parts that it is the sum of. */
export interface JudgeScore {
  readonly tier: Tier;
  /** `undefined` where nothing is scored: places-only sheets, and a go that may not be placed. */
  readonly score: Exact | undefined;
  readonly better: 'higher' | 'lower';
  readonly parts: ScoreParts;
  /** What the office and the reasons must show: not seen maneuvers, a ruling whose score stands, the lower limit. */
  readonly flags: readonly ScoreFlag[];
}

export interface ScoreParts {
  /** The base; the mark on a one-mark sheet, the measure on a measured one; zero on a percentage sheet. */
  readonly base: Exact;
  /**
   * `counts` is the mark times its coefficient. Not seen: no mark; judged as absent it counts zero, and
   * where it is left out it has no `counts` either.
   */
  readonly maneuvers: readonly {
    readonly position: number;
    readonly mark: Exact | undefined;
    readonly counts: Exact | undefined;
  }[];
  readonly extras: readonly { readonly code: string; readonly mark: Exact; readonly counts: Exact }[];
  readonly penalties: readonly {
    readonly code: string;
    readonly position: number | undefined;
    readonly points: Exact;
  }[];
  /** What they take off, in points or in percent as the sheet says. */
  readonly errorsOfCourse: Exact;
  /** What the judge ruled; `eliminated` where it follows from the errors of course. */
  readonly ruling: { readonly code: RulingCode; readonly effect: RulingEffect } | undefined;
  /** Percentage sheets: what the marks could have reached. */
  readonly maximum: Exact | undefined;
}

/** Plain JSON. `sum` is a record text: what the parts added up to before the lower limit. */
export type ScoreFlag =
  | { readonly kind: 'not-seen'; readonly position: number; readonly treatedAs: NotSeenRule }
  | { readonly kind: 'score-stands'; readonly ruling: RulingCode }
  | { readonly kind: 'lower-limit'; readonly sum: string };

/** What is missing or out of range on a go, so that the judge can put it right. */
export interface GoFault {
  readonly code:
    | 'mark_missing'
    | 'mark_not_a_number'
    | 'mark_out_of_range'
    | 'mark_off_step'
    | 'maneuver_unknown'
    | 'maneuver_twice'
    | 'extra_missing'
    | 'extra_unknown'
    | 'penalty_unknown'
    | 'ruling_unknown'
    | 'ruling_missing'
    | 'measure_missing'
    | 'errors_not_a_count'
    | 'total_out_of_range'
    | 'not_on_this_sheet';
  /** JSON pointer into the go, e.g. `/maneuvers/2/mark`. */
  readonly at: string;
  /** The maneuver concerned, from 1, where there is one. */
  readonly position: number | undefined;
  /** What was written there, as it was written; `sentences/` turns the fault into words. */
  readonly written: string | undefined;
  readonly allowed: Allowed | undefined;
}

/** What may be written there instead. Decimals and codes as the sheet has them. */
export type Allowed =
  /** From..to, both included; `step` is `undefined` where any number between them will do. */
  | {
      readonly kind: 'range';
      readonly low: Decimal;
      readonly high: Decimal;
      readonly step: Decimal | undefined;
    }
  /** Names that the sheet knows; empty: it knows none. */
  | { readonly kind: 'codes'; readonly codes: readonly string[] }
  /** So many places are ranked. */
  | { readonly kind: 'places'; readonly first: number }
  /** The whole tie; empty: there is none. */
  | { readonly kind: 'tie'; readonly entries: readonly string[] };
