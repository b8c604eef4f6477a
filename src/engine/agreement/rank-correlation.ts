/**
 * How far two judges agree: Kendall's tau-b and Spearman's rho, both with ties; 1 is the same order, -1 the reverse.
 *
 * Source: tau-b = (P - Q) / sqrt((P + Q + T)(P + Q + U)), P and Q pairs in the same and in opposite order, T and U
 * pairs tied on one card only (https://docs.scipy.org/doc/scipy-0.9.0/reference/generated/scipy.stats.kendalltau.html);
 * rho = the correlation of the mean ranks (https://support.sas.com/documentation/cdl/en/procstat/68142/HTML/default/procstat_corr_details03.htm).
 *
 * Both have a square root below the line. What is under it is kept as two whole numbers, so the coefficient itself
 * is kept exactly; `text` is for reading.
 */
import Fraction from 'fraction.js';
import type { Decimal, Exact } from '../numbers/exact.ts';
import type { EntryId, JudgeId, PanelCard } from '../placing/types.ts';
import { commonEntries, doubledRanks } from './ranks.ts';
import { rootText } from './square-root.ts';

/** `above / sqrt(below[0] x below[1])`; whole numbers. */
export interface Coefficient {
  readonly above: bigint;
  /**
   * tau-b: the pairs that the first judge, and that the second, did not tie.
   * rho: each judge's sum of squares of doubled ranks around their mean.
   */
  readonly below: readonly [bigint, bigint];
  /** Six digits, rounded half away from zero. */
  readonly text: Decimal;
  /** The square with the sign of the coefficient: exact, and in the same order as the coefficients. */
  readonly signedSquare: Exact;
}

export interface JudgePair {
  readonly judges: readonly [JudgeId, JudgeId];
  /** Those that both have on the card. */
  readonly entries: readonly EntryId[];
  /** `undefined`: fewer than two entries in common, or one of the two tied them all. */
  readonly tauB: Coefficient | undefined;
  readonly rho: Coefficient | undefined;
}

/** Each two judges of the panel, in the order of the cards. */
export function judgePairs(cards: readonly PanelCard[]): JudgePair[] {
  return cards.flatMap((first, index) => cards.slice(index + 1).map((second) => judgePair(first, second)));
}

function judgePair(first: PanelCard, second: PanelCard): JudgePair {
  const entries = commonEntries([first, second]);
  const ranks = [doubledRanks(first, entries), doubledRanks(second, entries)] as const;
  return { judges: [first.judge, second.judge], entries, tauB: tauB(...ranks), rho: spearman(...ranks) };
}

/** Kendall's tau-b of two rows of ranks (or of any numbers) of the same length. */
export function tauB(first: readonly number[], second: readonly number[]): Coefficient | undefined {
  let balance = 0;
  let untiedByFirst = 0;
  let untiedBySecond = 0;
  for (let one = 0; one < first.length; one += 1) {
    for (let other = 0; other < one; other += 1) {
      const a = Math.sign((first[one] ?? 0) - (first[other] ?? 0));
      const b = Math.sign((second[one] ?? 0) - (second[other] ?? 0));
      balance += a * b;
      untiedByFirst += Math.abs(a);
      untiedBySecond += Math.abs(b);
    }
  }
  return coefficient(balance, untiedByFirst, untiedBySecond);
}

/** Spearman's rho of two rows of doubled mean ranks of the same length. */
export function spearman(first: readonly number[], second: readonly number[]): Coefficient | undefined {
  const meanRank = first.length + 1;
  let products = 0;
  let firstSquares = 0;
  let secondSquares = 0;
  first.forEach((rank, index) => {
    const a = rank - meanRank;
    const b = (second[index] ?? 0) - meanRank;
    products += a * b;
    firstSquares += a * a;
    secondSquares += b * b;
  });
  return coefficient(products, firstSquares, secondSquares);
}

function coefficient(above: number, first: number, second: number): Coefficient | undefined {
  if (first === 0 || second === 0) return undefined;
  const sign = above < 0 ? -1 : 1;
  const below = [BigInt(first), BigInt(second)] as const;
  const square = new Fraction(BigInt(above) ** 2n, below[0] * below[1]);
  return { above: BigInt(above), below, text: rootText(square, sign), signedSquare: square.mul(sign) };
}
