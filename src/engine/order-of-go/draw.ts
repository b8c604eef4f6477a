/**
 * The draw of the order of go, from a seed that was announced: anyone can repeat it.
 *
 * Each entry's lot is the SHA-256 of `seed:lot name` (the back number), and the smallest lot goes first;
 * but an exhibitor with several horses needs time to change them, so the least gap between two goes of one
 * rider is made as wide as the field allows. (Ten entries, one rider on two of them: she goes first and last.)
 * Source: common practice, no source.
 */
import { lot } from '../numbers/lot.ts';

export interface DrawEntry {
  readonly id: string;
  /** What its lot is drawn by, different for each entry and known to all: the back number. */
  readonly lotName: string;
  readonly rider: string;
}

export interface Drawing {
  readonly seed: string;
  readonly entries: readonly DrawEntry[];
  /** A gap of so many goes is enough; without it the widest is taken. */
  readonly enough?: number;
}

export interface DrawnOrder {
  /** Ids in the order of go. */
  readonly order: readonly string[];
  /** Any two goes of one rider are at least so many goes apart; `null`: no rider goes twice. */
  readonly leastGap: number | null;
}

/** The drawn order. Throws when two entries have the same lot name, which would make their order an accident. */
export function drawOrder({ seed, entries, enough }: Drawing): DrawnOrder {
  const lots = inLotOrder(seed, entries);
  const gap = widestGap(entries.map(({ rider }) => rider));
  if (gap === null) return { order: lots.map(({ id }) => id), leastGap: null };
  const kept = Math.min(gap, Math.max(1, enough ?? gap));
  const order = spacedOut(lots, kept);
  return { order: order.map(({ id }) => id), leastGap: leastGapOf(order.map(({ rider }) => rider)) };
}

/**
 * The widest gap at which all goes still fit without a pause. With `most` horses for the busiest rider and
 * `busiest` riders who have that many, (most - 1) x gap + busiest goes are needed. `null`: no rider goes twice.
 */
export function widestGap(riders: readonly string[]): number | null {
  const horses = [...countOf(riders).values()];
  const most = Math.max(0, ...horses);
  if (most < 2) return null;
  const busiest = horses.filter((count) => count === most).length;
  return Math.floor((riders.length - busiest) / (most - 1));
}

/** The least gap that an order has between two goes of one rider; `null`: no rider goes twice. */
export function leastGapOf(riders: readonly string[]): number | null {
  const last = new Map<string, number>();
  let least: number | null = null;
  riders.forEach((rider, go) => {
    const before = last.get(rider);
    if (before !== undefined) least = Math.min(least ?? Number.POSITIVE_INFINITY, go - before);
    last.set(rider, go);
  });
  return least;
}

function inLotOrder(seed: string, entries: readonly DrawEntry[]): DrawEntry[] {
  if (new Set(entries.map(({ lotName }) => lotName)).size !== entries.length) {
    throw new RangeError('two entries have the same lot name');
  }
  const lotOf = (entry: DrawEntry) => lot(seed, entry.lotName);
  return entries
    .map((entry) => ({ entry, lot: lotOf(entry) }))
    .sort((a, b) => (a.lot < b.lot ? -1 : 1))
    .map(({ entry }) => entry);
}

/** How many horses each rider still has to show, and from which go on she may. */
interface Waiting {
  readonly left: number;
  readonly from: number;
}

/** Go by go the smallest lot whose rider is rested, and after which the rest can still keep the gap. */
function spacedOut(lots: readonly DrawEntry[], gap: number): DrawEntry[] {
  const waiting = new Map<string, Waiting>();
  for (const [rider, left] of countOf(lots.map((lot) => lot.rider))) waiting.set(rider, { left, from: 0 });
  const rest = [...lots];
  const order: DrawEntry[] = [];
  while (rest.length > 0) {
    const index = nextLot(rest, { waiting, go: order.length, gap, goes: lots.length });
    const [entry] = rest.splice(index, 1);
    if (entry === undefined) throw new Error('no entry can go next: the gap does not fit the field');
    waiting.set(entry.rider, afterGo(waiting.get(entry.rider), order.length + gap));
    order.push(entry);
  }
  return order;
}

interface Moment {
  readonly waiting: ReadonlyMap<string, Waiting>;
  readonly go: number;
  readonly gap: number;
  readonly goes: number;
}

function nextLot(rest: readonly DrawEntry[], moment: Moment): number {
  // Rested riders with the same number of horses left are the same question: it is asked once.
  const answers = new Map<number, boolean>();
  return rest.findIndex(({ rider }) => {
    const state = moment.waiting.get(rider);
    if (state === undefined || state.from > moment.go) return false;
    const known = answers.get(state.left);
    if (known !== undefined) return known;
    const after = new Map(moment.waiting).set(rider, afterGo(state, moment.go + moment.gap));
    const fits = restFits(after, { ...moment, go: moment.go + 1 });
    answers.set(state.left, fits);
    return fits;
  });
}

const afterGo = (state: Waiting | undefined, from: number): Waiting => ({
  left: (state?.left ?? 1) - 1,
  from,
});

/** Can all that is left keep the gap? Tried with the rider who has most left going whenever she is rested. */
function restFits(waiting: ReadonlyMap<string, Waiting>, { go, gap, goes }: Moment): boolean {
  // A rider with one horse left who is rested fills any go; only the others can be too late.
  const busy = [...waiting.values()].filter(({ left, from }) => left > 1 || (left === 1 && from > go));
  const states = busy.map((state) => ({ ...state }));
  for (let at = go; at < goes; at += 1) {
    const next = states
      .filter(({ left, from }) => left > 0 && from <= at)
      .reduce<Waiting | undefined>(
        (most, state) => (most && most.left >= state.left ? most : state),
        undefined,
      );
    const index = next === undefined ? -1 : states.indexOf(next);
    if (index >= 0) states[index] = afterGo(next, at + gap);
  }
  return states.every(({ left }) => left === 0);
}

function countOf(riders: readonly string[]): Map<string, number> {
  const count = new Map<string, number>();
  for (const rider of riders) count.set(rider, (count.get(rider) ?? 0) + 1);
  return count;
}
