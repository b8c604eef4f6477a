/**
 * The body of a posting: a class placed from its signed cards, with all that is needed to place it again.
 * Plain JSON with ids and back numbers, never names, so that it can be hashed, kept for ever and checked elsewhere.
 */
import { recordText } from '../engine/numbers/number-text.ts';
import { placeClass, placeSeparately } from '../engine/placing/place-class.ts';
import type {
  OpenTie,
  Placing,
  PlacingInput,
  PlacingNote,
  PlacingRule,
  Reason,
  TieDecision,
  Unplaced,
} from '../engine/placing/types.ts';
import { isGoing } from '../office/offline.ts';
import { fingerprint } from '../platform/canonical-json.ts';

export interface PostingBody {
  readonly form: 'ringledger posting 1';
  readonly classId: string;
  readonly classNumber: number;
  readonly sheet: { readonly code: string; readonly version: number; readonly hash: string };
  /** As it was applied: tie judges and draw seed filled in. */
  readonly rule: PlacingRule;
  readonly panel: readonly BodySeat[];
  readonly entries: readonly BodyEntry[];
  readonly cards: readonly BodyCard[];
  readonly decisions: readonly TieDecision[];
  /** One result, or one for each judge where the judges are placed separately. */
  readonly results: readonly BodyResult[];
}

export interface BodySeat {
  readonly seatId: string;
  readonly seatOrder: number;
  readonly role: 'judge' | 'referee';
}

export interface BodyEntry {
  readonly id: string;
  readonly backNumber: number;
  /** `entered` and `checked-in` went; the others did not. */
  readonly status: string;
}

export interface BodyCard {
  readonly seatId: string;
  readonly revisionId: string;
  readonly revision: number;
  readonly contentHash: string;
}

export interface BodyResult {
  /** Seat of the judge whose card this is the result of; `null`: the judges are merged. */
  readonly judge: string | null;
  readonly placed: readonly BodyPlaced[];
  readonly unplaced: readonly Unplaced[];
  readonly reasons: readonly Reason[];
  readonly notes: readonly PlacingNote[];
  readonly openTies: readonly OpenTie[];
}

export interface BodyPlaced {
  readonly entry: string;
  readonly place: number;
  readonly tied: boolean;
  /** Record text, `null` where the method compares no number. */
  readonly total: string | null;
}

type BodyHead = Omit<PostingBody, 'form' | 'results' | 'decisions' | 'rule'>;

/** The class placed by the engine, as a body. The same parts give the same bytes in `canonicalText`. */
export function postingBody(head: BodyHead, input: PlacingInput): PostingBody {
  const results =
    input.rule.merge.method === 'separate'
      ? placeSeparately(input).map(({ judge, placing }) => bodyResult(judge, placing))
      : [bodyResult(null, placeClass(input))];
  return { form: 'ringledger posting 1', ...head, rule: input.rule, decisions: input.decisions, results };
}

function bodyResult(
  judge: string | null,
  { placed, unplaced, reasons, notes, openTies }: Placing,
): BodyResult {
  const lines = placed.map(({ entry, place, tied, total }) => ({
    entry,
    place,
    tied,
    total: total === undefined ? null : recordText(total),
  }));
  return { judge, placed: lines, unplaced, reasons, notes, openTies };
}

/** What the placing was made by: the rule as applied and the sheet. */
export function ruleFingerprint({ rule, sheet }: PostingBody): string {
  return fingerprint({ rule, sheet });
}

/** What the engine places: everyone who went. */
export function placingInput(
  { entries, classNumber }: Pick<PostingBody, 'entries' | 'classNumber'>,
  { cards, rule, decisions }: Pick<PlacingInput, 'cards' | 'rule' | 'decisions'>,
): PlacingInput {
  const going = entries.filter(({ status }) => isGoing(status)).map(({ id }) => id);
  return { entries: going, cards, rule, decisions, classNumber };
}
