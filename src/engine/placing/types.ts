/**
 * A placing is successive refinement: all entries of one status are a tied group; the rule by which the
 * judges' cards are merged splits it into ordered groups; each tie-break splits what is still tied, or
 * says that it could not. Every split is kept as a reason, and the reasons alone give the placing again.
 */
import type { Decimal, Exact } from '../numbers/exact.ts';
import type { Rounding } from '../numbers/rounding.ts';
import type { RulingCode, ScoreFlag, Tier } from '../sheets/types.ts';

export type EntryId = string;
export type JudgeId = string;

/** One judge's card as a merge sees it. `panel-card.ts` makes one of a ranking, of places or of scores. */
export interface PanelCard {
  readonly judge: JudgeId;
  readonly seat: 'judge' | 'referee';
  /** Is more better (scores) or less (times)? Nothing to do with places. */
  readonly better: 'higher' | 'lower';
  /** The entries that this judge placed or scored; who is not in it was left off. */
  readonly lines: ReadonlyMap<EntryId, CardLine>;
  /** Entries that this judge ruled out: they are not in `lines`. */
  readonly ruledOut: ReadonlyMap<EntryId, RulingCode | undefined>;
  /** What this card counts beside the others, where phases or judges are weighted; usually 1. */
  readonly weight: Exact;
}

/** One entry on one card. */
export interface CardLine {
  readonly tier: Exclude<Tier, 'not-placed'>;
  /** Place on this card from 1; tied entries all hold the better place. */
  readonly place: Exact;
  /** How many entries hold that place on this card, this one included. */
  readonly holders: number;
  readonly score: Exact | undefined;
  /** For tie-breaks by parts of the score; absent where the sheet has none. */
  readonly parts: LineParts | undefined;
  /** Not seen maneuvers, rulings whose score stands: they go with the result. */
  readonly flags: readonly ScoreFlag[];
}

export interface LineParts {
  /** Marks by position from 1; a maneuver not seen has none. */
  readonly maneuvers: ReadonlyMap<number, Exact>;
  /** Form and effectiveness, or the collective marks. */
  readonly form: Exact | undefined;
  /** Points taken by penalties, and how many were given. */
  readonly penaltyPoints: Exact;
  readonly penaltyCount: number;
}

/** What tied entries on one card count as: all the better place, or the mean of the places they hold. */
export type CardTies = 'better' | 'mean';

/**
 * What an entry counts as on a card that left it off: one more than the places on that card (`next`),
 * the mean of the places left (`mean`), or a number. It never counts toward a majority.
 */
export type Unlisted = 'next' | 'mean' | Decimal;

/** `high-and-low`: one highest and one lowest go, from four judges up; of several equal ones, one goes. */
export type Discard = 'none' | 'high-and-low';

/**
 * What a judge's missing score counts as where scores are added: nothing (`zero`: it is the lowest, and
 * goes first where the lowest is discarded), or the entry may not be placed, or the mean of those given.
 */
export type NoScore = 'zero' | 'not-placed' | 'mean';

export type MergeRule =
  | { readonly method: 'separate' }
  | { readonly method: 'total'; readonly discard: Discard; readonly noScore: NoScore }
  | {
      readonly method: 'mean';
      readonly discard: Discard;
      readonly noScore: NoScore;
      readonly round: Rounding | null;
    }
  | {
      readonly method: 'rank-sum';
      readonly cardTies: CardTies;
      readonly unlisted: Unlisted;
      readonly discard: Discard;
    }
  | {
      readonly method: 'place-points';
      /** Points for the first, second ... place on each card. */
      readonly points: readonly Decimal[];
      /** Points for a place beyond the table, and for an entry left off. */
      readonly unplaced: Decimal;
      readonly cardTies: CardTies;
      readonly discard: Discard;
    }
  | {
      readonly method: 'majority';
      readonly cardTies: CardTies;
      readonly unlisted: Unlisted;
      /** What splits equal majorities; see `merges/majority.ts`. */
      readonly equalMajorities: 'totals' | 'next-places' | 'average';
    }
  | { readonly method: 'two-judges-and-referee' }
  | { readonly method: 'pairwise' };

export type MergeMethod = MergeRule['method'];

export type TieBreak =
  /** Marks of these maneuvers, in this order, added over the judges. */
  | { readonly code: 'maneuvers'; readonly order: readonly number[] }
  /** The highest maneuver mark of any judge, then the next highest ... */
  | { readonly code: 'count-back' }
  | { readonly code: 'form' }
  | { readonly code: 'penalties'; readonly count: 'points' | 'number' }
  /** These judges' own placing, in this order; `alternate`: the list turns by one with each class number. */
  | { readonly code: 'tie-judge'; readonly judges: readonly JudgeId[]; readonly alternate: boolean }
  | { readonly code: 'head-to-head' }
  | { readonly code: 'best-single-place' }
  | { readonly code: 'most-firsts' }
  /** The discarded scores or places are brought back. */
  | { readonly code: 'discarded' }
  /** Another go decides; until its ruling is recorded the tie waits. */
  | { readonly code: 'run-off' }
  /** By lot from a seed that was announced: anyone can repeat it. */
  | { readonly code: 'draw'; readonly seed: string }
  /** The place is shared, and that is final. */
  | { readonly code: 'share' };

export type TieBreakCode = TieBreak['code'];

export interface PlacingRule {
  readonly merge: MergeRule;
  readonly ties: readonly TieBreak[];
  /** After a tie-break split a tie: those still tied go on at the same step, or start the chain again. */
  readonly afterSplit: 'go-on' | 'start-again';
  /** How many places are given; `null`: all. */
  readonly placesGiven: number | null;
  /**
   * How many of the judges must rule an entry below, or out, for it to hold for the class. `null`: as the
   * method has it: any where scores are added (a sum needs every judge), all where cards are merged by place
   * (each card says for itself where it puts the entry).
   */
  readonly rulingHolds: 'any' | 'majority' | 'all' | null;
}

/** What was decided outside the arithmetic, and recorded: a run-off, a re-work, a coin, the office's or a judge's ruling. */
export interface TieDecision {
  readonly id: string;
  readonly kind: 'run-off' | 're-work' | 'judge' | 'coin' | 'share' | 'declined';
  /** Ordered groups of the entries it was about; `declined`: one group, and the chain goes on. */
  readonly order: readonly (readonly EntryId[])[];
}

export interface PlacingInput {
  /** Everyone who may be placed, in any order. */
  readonly entries: readonly EntryId[];
  readonly cards: readonly PanelCard[];
  readonly rule: PlacingRule;
  /** In the order in which they were recorded; a later one about the same entries stands. */
  readonly decisions: readonly TieDecision[];
  /** For tie judges who alternate. */
  readonly classNumber: number;
}

export interface Placing {
  /** In order of place. */
  readonly placed: readonly Placed[];
  readonly unplaced: readonly Unplaced[];
  /** In the order in which they were found; see `reasons.ts`. */
  readonly reasons: readonly Reason[];
  /** What the judges' cards say beside the numbers: whoever reads the result must see it. */
  readonly notes: readonly PlacingNote[];
  /** Ties that nothing has split and that no rule lets stand: someone must rule. */
  readonly openTies: readonly OpenTie[];
}

export interface Placed {
  readonly entry: EntryId;
  /** From 1; entries that share a place all hold the better one. */
  readonly place: number;
  readonly tied: boolean;
  /** The number that the merge compares: total, mean, sum of places, points, wins; `undefined` where it has none. */
  readonly total: Exact | undefined;
}

export interface Unplaced {
  readonly entry: EntryId;
  readonly why:
    | {
        readonly code: 'ruled-out';
        readonly judges: readonly JudgeId[];
        readonly rulings: readonly RulingCode[];
      }
    | { readonly code: 'on-no-card' }
    | { readonly code: 'no-score'; readonly judges: readonly JudgeId[] }
    | { readonly code: 'beyond-places'; readonly placesGiven: number };
}

export interface PlacingNote {
  readonly entry: EntryId;
  readonly judge: JudgeId;
  readonly flag: ScoreFlag;
}

export interface OpenTie {
  readonly entries: readonly EntryId[];
  readonly place: number;
  /** `run-off`: the chain waits there; `chain-ended`: no step of the chain split it. */
  readonly waitsFor: 'run-off' | 'chain-ended';
}

/** One comparison of entries that were tied until then. Plain JSON: numbers are record texts. */
export interface Reason {
  /** Place of the first of them. */
  readonly place: number;
  readonly better: 'higher' | 'lower';
  /** `all`: every different value is a group of its own; `best-first`: the best are taken, the rest are compared anew. */
  readonly splits: 'all' | 'best-first';
  readonly compared: readonly Compared[];
  readonly basis: Basis;
}

export interface Compared {
  readonly entry: EntryId;
  /** `null`: it has nothing to compare and stands behind all that have. */
  readonly value: string | null;
  /** What each judge gave toward the value, where judges did. */
  readonly parts?: readonly ReasonPart[];
}

export interface ReasonPart {
  readonly judge: JudgeId;
  readonly value: string;
  /** How the number came about, when not plainly from the card. */
  readonly note?: 'left-off' | 'no-score' | 'discarded-high' | 'discarded-low';
  /** What the card counts beside the others, where that is not 1: the value comes into the sum this many times. */
  readonly weight?: string;
}

/** Which rule compared, and what one has to know to repeat it. */
export type Basis =
  | { readonly step: 'status' }
  | { readonly step: 'card-place'; readonly judge: JudgeId }
  | { readonly step: 'total' | 'mean' | 'rank-sum' | 'place-points'; readonly discard: Discard }
  | { readonly step: 'majority-place'; readonly needed: number; readonly judges: number }
  | { readonly step: 'majority-size' | 'majority-total'; readonly column: number }
  | { readonly step: 'total-of-all' }
  | { readonly step: 'next-places'; readonly column: number; readonly compares: 'judges' | 'total' }
  | { readonly step: 'referee'; readonly tops: readonly (readonly EntryId[])[]; readonly agreed: boolean }
  | { readonly step: 'pairwise-wins' | 'judges-in-favor'; readonly judges: number }
  | { readonly step: 'maneuver'; readonly position: number }
  | { readonly step: 'count-back'; readonly rank: number }
  | { readonly step: 'form' | 'penalty-points' | 'penalty-count' }
  | { readonly step: 'tie-judge'; readonly judge: JudgeId }
  | { readonly step: 'head-to-head' }
  | { readonly step: 'best-single-place' }
  | { readonly step: 'most-places'; readonly at: number }
  | { readonly step: 'discarded' }
  | { readonly step: 'decision'; readonly id: string; readonly kind: TieDecision['kind'] }
  | { readonly step: 'draw'; readonly seed: string }
  | { readonly step: 'share' };

export type StepCode = Basis['step'];
