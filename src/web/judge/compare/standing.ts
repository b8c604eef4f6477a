/** All goes of a card so far, side by side in her order: status, score, and what is tied. Pure. */
import type { Exact } from '../../../engine/numbers/exact.ts';
import { cardOrder } from '../../../engine/sheets/card-order.ts';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import { scoreGo } from '../../../engine/sheets/score-go.ts';
import type { JudgeScore } from '../../../engine/sheets/types.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { goingIn, maneuversOf } from '../entries.ts';

interface Standing {
  /** Best first; entries of one level are tied on her card, in the order that she gave them. */
  readonly levels: readonly Level[];
  /** Not written, or not whole yet. */
  readonly open: readonly DayEntry[];
}

export interface Level {
  /** `undefined`: they may not be placed. */
  readonly place: number | undefined;
  readonly score: Exact | undefined;
  readonly entries: readonly DayEntry[];
  /** Several that are hers to order, and whether she has. */
  readonly tie: 'none' | 'open' | 'broken';
}

export function standingOf(dayClass: DayClass, { goes, ownOrder = [] }: CardContent): Standing {
  const scores = new Map<string, JudgeScore>();
  const open: DayEntry[] = [];
  const maneuvers = maneuversOf(dayClass);
  for (const entry of goingIn(dayClass)) {
    const go = goes[entry.classEntryId];
    const scored = go === undefined ? undefined : scoreGo(dayClass.sheet, maneuvers, go);
    if (scored?.ok === true) scores.set(entry.classEntryId, scored.score);
    else open.push(entry);
  }
  const entryOf = new Map(dayClass.entries.map((entry) => [entry.classEntryId, entry]));
  let before = 0;
  const levels = cardOrder(undefined, scores).map(({ tier, score, entries }): Level => {
    const order = ownOrder.find((tie) => isSame(tie, entries));
    const place = tier === 'not-placed' ? undefined : before + 1;
    before += entries.length;
    const found = (order ?? entries).flatMap((id) => entryOf.get(id) ?? []);
    const tie = place === undefined || entries.length < 2 ? 'none' : order === undefined ? 'open' : 'broken';
    return { place, score, entries: found, tie };
  });
  return { levels, open };
}

const isSame = (tie: readonly string[], entries: readonly string[]): boolean =>
  tie.length === entries.length && tie.every((id) => entries.includes(id));

/** Her order of ties with this tie in this order; orders of ties that are no more are dropped with it. */
export function withTieOrder(
  { levels }: Standing,
  ownOrder: readonly (readonly string[])[],
  tie: readonly string[],
): readonly (readonly string[])[] {
  const ties = levels.filter((level) => level.tie !== 'none').map(({ entries }) => entries.map(idOf));
  const kept = ownOrder.filter((order) => ties.some((one) => isSame(one, order)) && !isSame(order, tie));
  return [...kept, tie];
}

const idOf = ({ classEntryId }: DayEntry): string => classEntryId;

/** One place up (-1) or down (1) within the tie. */
export function moved(tie: readonly string[], entry: string, by: -1 | 1): readonly string[] {
  const at = tie.indexOf(entry);
  const to = at + by;
  if (at < 0 || to < 0 || to >= tie.length) return tie;
  const rest = tie.toSpliced(at, 1);
  return rest.toSpliced(to, 0, entry);
}
