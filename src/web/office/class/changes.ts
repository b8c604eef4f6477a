/** What changes between two bodies of a result: which places move, which totals, and what it came from. */
import { fromRecordText, readingText } from '../../../engine/numbers/number-text.ts';

/** What is read of a body here (`posting-body.ts` of the service makes it). */
export interface ResultBody {
  readonly entries: readonly { readonly id: string; readonly backNumber: number; readonly status: string }[];
  readonly cards: readonly { readonly seatId: string; readonly revision: number }[];
  readonly decisions: readonly { readonly id: string }[];
  readonly results: readonly {
    readonly judge: string | null;
    readonly placed: readonly PlacedLine[];
    readonly unplaced: readonly { readonly entry: string }[];
  }[];
}

interface PlacedLine {
  readonly entry: string;
  readonly place: number;
  readonly tied: boolean;
  readonly total: string | null;
}

export type Standing =
  | { readonly is: 'placed'; readonly place: number; readonly tied: boolean; readonly total: string | null }
  | { readonly is: 'unplaced' }
  | { readonly is: 'did-not-go' };

export interface LineOfChange {
  /** Seat of the judge, where the judges are placed separately. */
  readonly judge: string | null;
  readonly entry: string;
  readonly backNumber: number;
  readonly was: Standing;
  readonly willBe: Standing;
  readonly moves: boolean;
  readonly totalChanges: boolean;
}

export interface Changes {
  /** In the order of the later result. */
  readonly lines: readonly LineOfChange[];
  readonly moved: readonly LineOfChange[];
  /** Cards with another revision than before; `from` is `undefined` where there was none. */
  readonly cards: readonly {
    readonly seatId: string;
    readonly from: number | undefined;
    readonly to: number;
  }[];
  readonly newRulings: number;
}

export function changesBetween(before: ResultBody, after: ResultBody): Changes {
  const lines = after.results.flatMap(({ judge }) => linesOf(judge, before, after));
  return {
    lines,
    moved: lines.filter(({ moves, totalChanges }) => moves || totalChanges),
    cards: after.cards.flatMap(({ seatId, revision }) => {
      const from = before.cards.find((card) => card.seatId === seatId)?.revision;
      return from === revision ? [] : [{ seatId, from, to: revision }];
    }),
    newRulings: after.decisions.filter(({ id }) => !before.decisions.some((known) => known.id === id)).length,
  };
}

function linesOf(judge: string | null, before: ResultBody, after: ResultBody): LineOfChange[] {
  const entries = [...after.entries].sort(
    (one, other) => rank(standingOf(after, judge, one.id)) - rank(standingOf(after, judge, other.id)),
  );
  return entries.map(({ id: entry, backNumber }) => {
    const [was, willBe] = [standingOf(before, judge, entry), standingOf(after, judge, entry)];
    return {
      ...{ judge, entry, backNumber, was, willBe },
      moves: was.is !== willBe.is || placeIn(was) !== placeIn(willBe),
      totalChanges: totalIn(was) !== totalIn(willBe),
    };
  });
}

function standingOf({ results }: ResultBody, judge: string | null, entry: string): Standing {
  const result = results.find((one) => one.judge === judge);
  const placed = result?.placed.find((line) => line.entry === entry);
  if (placed !== undefined) return { is: 'placed', ...placed };
  return { is: result?.unplaced.some((line) => line.entry === entry) === true ? 'unplaced' : 'did-not-go' };
}

const placeIn = (standing: Standing): string =>
  standing.is === 'placed' ? `${standing.place} ${standing.tied}` : standing.is;

const totalIn = (standing: Standing): string | null => (standing.is === 'placed' ? standing.total : null);

const last = Number.MAX_SAFE_INTEGER;

function rank(standing: Standing): number {
  switch (standing.is) {
    case 'placed':
      return standing.place;
    case 'unplaced':
      return last - 1;
    case 'did-not-go':
      return last;
  }
}

/** `"214/3"` -> `"71.333"`; with a true minus. */
export const shownNumber = (recorded: string): string =>
  readingText(fromRecordText(recorded)).replace('-', '−');
