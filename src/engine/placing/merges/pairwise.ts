/**
 * Pairwise majorities: every entry against every other, judge by judge.
 *
 * Source: one-by-one judging (http://www.iceskatingintnl.com/archive/rules/obo.htm; guideline of 1998,
 * http://www.a2m2.ch/fred/skating/doc/ISU/obo_isu98.htm): a judge favours the one she placed better, a tie
 * favours both; more judges win the pair, equal numbers are a win for both; ranked by wins, then by the
 * judges in favour over all pairs. A judge who left both off treats them alike, so she favours both.
 */
import { exact } from '../../numbers/exact.ts';
import type { Step } from '../refine.ts';
import type { EntryId, PanelCard } from '../types.ts';
import { type Merge, once, type Panel } from './merge.ts';

export function mergePairwise({ cards, entries }: Panel): Merge {
  const standings = standingsOn(cards, entries);
  const record = once((entry) => recordOf(entry, standings));
  const judges = cards.length;
  const wins: Step = {
    of: 'merge',
    compare: () => ({
      basis: { step: 'pairwise-wins', judges },
      better: 'higher',
      measure: (entry) => ({ value: exact(record(entry).wins) }),
    }),
  };
  const inFavor: Step = {
    of: 'merge',
    compare: () => ({
      basis: { step: 'judges-in-favor', judges },
      better: 'higher',
      measure: (entry) => ({ value: exact(record(entry).inFavor) }),
    }),
  };
  return { steps: [wins, inFavor], total: (entry) => exact(record(entry).wins) };
}

/** Where an entry stands on each card, as a rank to compare by; who was left off stands behind all. */
function standingsOn(cards: readonly PanelCard[], entries: readonly EntryId[]): Map<EntryId, number[]> {
  const ranks = cards.map(({ lines }) => {
    const rank = new Map<string, number>();
    const places = [...lines.values()].map(({ place }) => place).sort((a, b) => a.compare(b));
    for (const place of places) if (!rank.has(place.toFraction())) rank.set(place.toFraction(), rank.size);
    return rank;
  });
  const rankOf = (entry: EntryId) => (card: PanelCard, index: number) => {
    const place = card.lines.get(entry)?.place.toFraction();
    return (place === undefined ? undefined : ranks[index]?.get(place)) ?? Number.POSITIVE_INFINITY;
  };
  return new Map(entries.map((entry) => [entry, cards.map(rankOf(entry))]));
}

function recordOf(entry: EntryId, standings: ReadonlyMap<EntryId, readonly number[]>) {
  const own = standings.get(entry) ?? [];
  let wins = 0;
  let inFavor = 0;
  for (const [other, theirs] of standings) {
    if (other === entry) continue;
    let favoring = 0;
    let favoringOther = 0;
    own.forEach((rank, card) => {
      const against = theirs[card] ?? Number.POSITIVE_INFINITY;
      if (rank <= against) favoring += 1;
      if (against <= rank) favoringOther += 1;
    });
    inFavor += favoring;
    if (favoring >= favoringOther) wins += 1;
  }
  return { wins, inFavor };
}
