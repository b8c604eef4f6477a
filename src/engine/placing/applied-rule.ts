/** The rule of a class as it is applied: with the panel's tie judges and the class's own seed filled in. */
import type { PlacingRule, TieBreak } from './types.ts';

interface RuleSetting {
  readonly rule: PlacingRule;
  readonly placesGiven: number | null;
  readonly drawSeed: string;
  readonly seats: readonly {
    readonly id: string;
    readonly tieOrder: number | null;
    readonly callOrder: number | null;
  }[];
}

/** A chain that names no tie judges asks those of the panel in their order; a draw without a seed takes the class's. */
export function appliedRule({ rule, placesGiven, drawSeed, seats }: RuleSetting): PlacingRule {
  const judges = inOrder(seats, ({ tieOrder }) => tieOrder);
  const callJudges = inOrder(seats, ({ callOrder }) => callOrder);
  const fill = (tie: TieBreak): TieBreak => {
    if (tie.code === 'tie-judge' && tie.judges.length === 0) {
      return { ...tie, judges: judges.length > 0 ? judges : callJudges };
    }
    return tie.code === 'draw' && tie.seed === '' ? { ...tie, seed: drawSeed } : tie;
  };
  return { ...rule, placesGiven: rule.placesGiven ?? placesGiven, ties: rule.ties.map(fill) };
}

type Seat = RuleSetting['seats'][number];

function inOrder(seats: readonly Seat[], order: (seat: Seat) => number | null): string[] {
  return seats
    .flatMap((seat) => {
      const at = order(seat);
      return at === null ? [] : [{ id: seat.id, at }];
    })
    .sort((a, b) => a.at - b.at)
    .map(({ id }) => id);
}
