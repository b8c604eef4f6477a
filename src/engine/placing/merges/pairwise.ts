/**
 * Pairwise majorities: every entry against every other, judge by judge.
 *
 * Source: one-by-one judging (http://www.iceskatingintnl.com/archive/rules/obo.htm; guideline of 1998,
 * http://www.a2m2.ch/fred/skating/doc/ISU/obo_isu98.htm): a judge favours the one she placed better, a tie
 * favours both; more judges win the pair, equal numbers are a win for both; ranked by wins, then by the
 * judges in favour over all pairs. A judge who left both off treats them alike, so she favours both.
 */
import { exact } from '../../numbers/exact.ts';
import { compareOnCard } from '../panel-card.ts';
import type { Step } from '../refine.ts';
import type { EntryId, PanelCard } from '../types.ts';
import { type Merge, once, type Panel } from './merge.ts';

export function mergePairwise({ cards, entries }: Panel): Merge {
  const record = once((entry) => recordOf(entry, entries, cards));
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

function recordOf(entry: EntryId, entries: readonly EntryId[], cards: readonly PanelCard[]) {
  let wins = 0;
  let inFavor = 0;
  for (const other of entries) {
    if (other === entry) continue;
    const favoring = judgesFavoring(cards, entry, other);
    inFavor += favoring;
    if (favoring >= judgesFavoring(cards, other, entry)) wins += 1;
  }
  return { wins, inFavor };
}

const judgesFavoring = (cards: readonly PanelCard[], entry: EntryId, other: EntryId) =>
  cards.filter((card) => compareOnCard(card, entry, other) <= 0).length;
