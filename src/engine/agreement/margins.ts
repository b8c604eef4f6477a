/**
 * How close a placing was: for each two neighbours the smallest change of one score, or of one place, on one card
 * that would have put the one behind ahead, and on whose card.
 *
 * What a change does is defined by placing the class again with the changed card: `placeClass` is the truth, all
 * else here only spares looking. A mark is changed in steps of the sheet on one judge's score, of one of the two
 * entries, where scores are added; a place on one card, of one of the two, where cards are merged by place (see
 * `movesOf`). The parts of a score that tie-breaks look at stay as they are: it is not said which mark it was.
 */
import type { Decimal } from '../numbers/exact.ts';
import { addsScores } from '../placing/merges/reads.ts';
import { placeClass } from '../placing/place-class.ts';
import type { EntryId, JudgeId, Placed, Placing, PlacingInput } from '../placing/types.ts';
import { marginByPlaces } from './margin-by-places.ts';
import { marginByPoints } from './margin-by-points.ts';

/** Plain JSON. */
export interface Margin {
  readonly ahead: EntryId;
  readonly behind: EntryId;
  /** Place of the one ahead. */
  readonly place: number;
  readonly change: MarginChange;
}

export type MarginChange =
  /** `size`: record text, in points of one judge's score. */
  | { readonly by: 'points'; readonly size: string; readonly on: readonly CardChange[] }
  | { readonly by: 'places'; readonly size: number; readonly on: readonly CardChange[] }
  /** `status`: the one behind is placed below all who kept the pattern. `no-single-change`: no one card could do it. */
  | { readonly by: 'none'; readonly why: 'status' | 'no-single-change' };

/** One of the cards on which a change of this size is enough, in the order of the panel. */
export interface CardChange {
  readonly judge: JudgeId;
  readonly entry: EntryId;
  /** `up`: better for the entry behind; `down`: worse for the one ahead. */
  readonly direction: 'up' | 'down';
}

export interface MarginSetting {
  /** By which a judge's score changes: `"0.5"`. */
  readonly step: Decimal;
  /** What a score may be at all; `null`: any. */
  readonly range: { readonly low: Decimal; readonly high: Decimal } | null;
  /** Only this many pairs are looked at, from first place down. */
  readonly upTo: number;
}

/** Two entries as they were placed, and the class that they were placed in. */
export interface Pair {
  readonly ahead: EntryId;
  readonly behind: EntryId;
  readonly input: PlacingInput;
}

export const usualMarginSetting: MarginSetting = { step: '0.5', range: null, upTo: 10 };

/**
 * Margins of neighbours, from first place down. Entries that share a place have no margin between them; each of them
 * has one with each entry of the next place. Throws where `placeClass` does.
 */
export function margins(input: PlacingInput, setting: MarginSetting = usualMarginSetting): Margin[] {
  const placing = placeClass(input);
  const lowered = loweredEntries(placing);
  return neighbors(placing.placed)
    .slice(0, setting.upTo)
    .map(([one, other]): Margin => {
      const pair = { ahead: one.entry, behind: other.entry, input };
      const parted = lowered.has(pair.behind) && !lowered.has(pair.ahead);
      const change = parted ? ({ by: 'none', why: 'status' } as const) : smallestChange(pair, setting);
      return { ahead: pair.ahead, behind: pair.behind, place: one.place, change };
    });
}

function smallestChange(pair: Pair, setting: MarginSetting): MarginChange {
  const { merge } = pair.input.rule;
  const ownScores = merge.method === 'separate' && hasScores(pair);
  return addsScores(merge) || ownScores ? marginByPoints(pair, setting) : marginByPlaces(pair);
}

const hasScores = ({ input, ahead, behind }: Pair) =>
  [ahead, behind].every((entry) => input.cards.every(({ lines }) => lines.get(entry)?.score !== undefined));

/** Each entry with each of the next place. */
function neighbors(placed: readonly Placed[]): [Placed, Placed][] {
  return placed.flatMap((one) => {
    const next = placed.find(({ place }) => place > one.place)?.place;
    return placed.filter(({ place }) => place === next).map((other): [Placed, Placed] => [one, other]);
  });
}

/** Those whom the status put below all who kept the pattern. */
function loweredEntries({ reasons }: Placing): ReadonlySet<EntryId> {
  const compared = reasons
    .filter(({ basis }) => basis.step === 'status')
    .flatMap((reason) => reason.compared);
  return new Set(compared.filter(({ value }) => value !== '0').map(({ entry }) => entry));
}
