/**
 * Kendall's coefficient of concordance W: how far all judges of a panel agree; 1 is the same order on every card,
 * 0 is no common order at all.
 *
 * Source: Kendall, Rank Correlation Methods (1948), with the correction for ties, as documented and computed by the
 * R packages irr and DescTools (https://rdrr.io/cran/irr/src/R/kendall.R):
 *
 *     W = 12 S / (m^2 (n^3 - n) - m T),   S = sum of (sum of ranks of an entry - mean of these sums)^2,
 *     T = sum over all ties on all cards of (t^3 - t)
 *
 * Entries that a judge left off are no opinion of that judge: only those on all cards are compared.
 */
import Fraction from 'fraction.js';
import { type Exact, exact } from '../numbers/exact.ts';
import type { EntryId, PanelCard } from '../placing/types.ts';
import { commonEntries, doubledRanks, tieSizes } from './ranks.ts';

export interface Concordance {
  /** 0 to 1, exact. `undefined`: fewer than two judges or two entries in common, or every card ties everyone. */
  readonly w: Exact | undefined;
  readonly judges: number;
  /** Those that all judges have on the card. */
  readonly entries: readonly EntryId[];
}

export function concordance(cards: readonly PanelCard[]): Concordance {
  const entries = commonEntries(cards);
  const ranks = cards.map((card) => doubledRanks(card, entries));
  return { w: coefficientW(ranks), judges: cards.length, entries };
}

/** W of doubled ranks, judge by judge over the same entries. */
export function coefficientW(doubled: readonly (readonly number[])[]): Exact | undefined {
  const judges = doubled.length;
  const entries = doubled[0]?.length ?? 0;
  if (judges < 2 || entries < 2) return undefined;
  const ties = doubled.flatMap(tieSizes).reduce((total, size) => total + size ** 3 - size, 0);
  const most = judges ** 2 * (entries ** 3 - entries) - judges * ties;
  if (most === 0) return undefined;
  // Doubled ranks of one card add up to n (n + 1), so the mean of the doubled sums is m (n + 1).
  const meanSum = judges * (entries + 1);
  let fourS = 0;
  for (let index = 0; index < entries; index += 1) {
    const sum = doubled.reduce((total, card) => total + (card[index] ?? 0), 0);
    fourS += (sum - meanSum) ** 2;
  }
  return exact(3 * fourS).div(new Fraction(most));
}
