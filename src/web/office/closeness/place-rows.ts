/** Where each judge had each entry: a row for each entry, and in it who had it at which place. Pure. */
import { drawn, type JudgeGoes, type Result } from './closeness-answers.ts';

export interface PlaceRow {
  readonly backNumber: number;
  /** In the posted result; `null`: it has none, or each judge's result stands for itself. */
  readonly place: number | null;
  /** By place on the card; several judges may have the same. */
  readonly at: readonly { readonly place: number; readonly seats: readonly number[] }[];
  /** Seats that did not place it at all. */
  readonly leftOffBy: readonly number[];
  /** From the best place that a judge gave it to the last; 0: all the same. */
  readonly spread: number;
}

/** In the order of the result; where there is none, by the mean of the places. */
export function placeRows(judges: readonly JudgeGoes[], result: Result | undefined): readonly PlaceRow[] {
  const numbers = new Set(judges.flatMap(({ goes }) => goes.map(({ backNumber }) => backNumber)));
  const placed = result?.results.length === 1 ? (result.results[0]?.placings ?? []) : [];
  const places = new Map(placed.map(({ backNumber, place }) => [backNumber, place]));
  return [...numbers]
    .map((backNumber) => rowOf(backNumber, judges, places.get(backNumber) ?? null))
    .toSorted((a, b) => rankOf(a) - rankOf(b) || meanOf(a) - meanOf(b) || a.backNumber - b.backNumber);
}

function rowOf(backNumber: number, judges: readonly JudgeGoes[], place: number | null): PlaceRow {
  const given = judges.map(({ seatOrder, goes }) => ({
    seatOrder,
    place: goes.find((go) => go.backNumber === backNumber)?.place,
  }));
  const byPlace = new Map<number, number[]>();
  for (const { seatOrder, place: text } of given) {
    if (text === undefined) continue;
    const at = drawn(text);
    byPlace.set(at, [...(byPlace.get(at) ?? []), seatOrder]);
  }
  const at = [...byPlace]
    .map(([onCard, seats]) => ({ place: onCard, seats }))
    .sort((a, b) => a.place - b.place);
  return {
    ...{ backNumber, place, at },
    leftOffBy: given.flatMap(({ seatOrder, place: text }) => (text === undefined ? [seatOrder] : [])),
    spread: (at.at(-1)?.place ?? 0) - (at[0]?.place ?? 0),
  };
}

const rankOf = ({ place }: PlaceRow): number => place ?? Number.MAX_SAFE_INTEGER;

function meanOf({ at }: PlaceRow): number {
  const all = at.flatMap(({ place, seats }) => seats.map(() => place));
  return all.length === 0 ? Number.MAX_SAFE_INTEGER : all.reduce((sum, one) => sum + one, 0) / all.length;
}
