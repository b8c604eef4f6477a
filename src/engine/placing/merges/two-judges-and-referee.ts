/**
 * Two judges and a referee: where the judges agree the referee is not asked.
 *
 * Source: breed magazine of the Tennessee Walking Horse, August 1969 p. 81: take the top un-struck number of
 * each judge's card; the same: placed; different: whichever of the two stands higher on the referee's card,
 * even if neither is his first; strike it from all cards; repeat. An entry missing from the referee's card
 * loses to one that is on it (1963 cards, p. 18). Both missing: no source; they stay tied for the tie-breaks.
 */
import { compareOnCard, nextPlace } from '../panel-card.ts';
import type { Step } from '../refine.ts';
import type { EntryId, PanelCard } from '../types.ts';
import type { Merge, Panel } from './merge.ts';

export function mergeTwoJudgesAndReferee({ cards }: Panel): Merge {
  const referee = cards.find(({ seat }) => seat === 'referee');
  const judges = cards.filter(({ seat }) => seat === 'judge');
  if (referee === undefined || judges.length !== 2) throw new RangeError('needs two judges and one referee');
  return { steps: [pick(judges, referee)], total: () => undefined };
}

function pick(judges: readonly PanelCard[], referee: PanelCard): Step {
  const missing = nextPlace(referee);
  return {
    of: 'merge',
    compare: (group) => {
      const tops = judges.map((card) => topOf(card, group)).filter((top) => top.length > 0);
      if (tops.length === 0) return undefined;
      const candidates = new Set(callFrom(tops));
      const agreed = candidates.size === 1;
      return {
        basis: { step: 'referee', tops, agreed },
        better: 'lower',
        splits: 'best-first',
        measure: (entry) => ({
          value: candidates.has(entry) ? (referee.lines.get(entry)?.place ?? missing) : undefined,
        }),
      };
    },
  };
}

/** Whom the judges' tops call: those that both name, otherwise all that either names. */
function callFrom(tops: readonly (readonly EntryId[])[]): readonly EntryId[] {
  const named = [...new Set(tops.flat())];
  const both = named.filter((entry) => tops.every((top) => top.includes(entry)));
  return both.length > 0 ? both : named;
}

/** The entries of the group that stand highest on the card: one, or several that are tied on it. */
function topOf(card: PanelCard, group: readonly EntryId[]): EntryId[] {
  let top: EntryId[] = [];
  for (const entry of group) {
    if (!card.lines.has(entry)) continue;
    const [best] = top;
    const against = best === undefined ? -1 : compareOnCard(card, entry, best);
    if (against < 0) top = [entry];
    else if (against === 0) top.push(entry);
  }
  return top;
}
