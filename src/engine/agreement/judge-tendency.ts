/**
 * Each judge's own scale: the mean of the scores, how far they spread, and whether they drifted over the order of go.
 *
 * Source: variance and least squares as in any textbook of statistics; the class is the whole of what is looked at,
 * so the variance divides by n. Drift is no fault by itself: the better riders may have gone late. Two judges who
 * saw the same goes and drifted apart are worth a look.
 */
import { type Decimal, type Exact, exact, mean, sum, zero } from '../numbers/exact.ts';
import type { EntryId, JudgeId, PanelCard } from '../placing/types.ts';
import { type Coefficient, tauB } from './rank-correlation.ts';
import { doubledRanks } from './ranks.ts';
import { rootText } from './square-root.ts';

export interface JudgeTendency {
  readonly judge: JudgeId;
  /** `undefined` where the card has no scores. */
  readonly scores: ScoreSpread | undefined;
  /** Points gained (or lost, below zero) with each next go; `undefined`: no scores, or fewer than two goes. */
  readonly drift: Exact | undefined;
  /**
   * Kendall's tau-b between the order of go and the places, turned so that above zero means: later goes were placed
   * better. For every card, scored or not.
   */
  readonly lateness: Coefficient | undefined;
}

export interface ScoreSpread {
  readonly goes: number;
  readonly mean: Exact;
  /** Mean square distance from the mean, in points squared. */
  readonly variance: Exact;
  /** Its square root in points: six digits, for reading. */
  readonly deviation: Decimal;
}

/** One scored go: where it stood in the order of go (from 1), and what it got. */
export interface ScoredGo {
  readonly position: number;
  readonly score: Exact;
}

/** `orderOfGo`: the entries as they went; those that are not on the card, or not in the order, are passed over. */
export function judgeTendency(card: PanelCard, orderOfGo: readonly EntryId[]): JudgeTendency {
  const scores = [...card.lines.values()].flatMap(({ score }) => score ?? []);
  const went = orderOfGo.filter((entry) => card.lines.has(entry));
  const goes = orderOfGo.flatMap((entry, index): ScoredGo[] => {
    const score = card.lines.get(entry)?.score;
    return score === undefined ? [] : [{ position: index + 1, score }];
  });
  return {
    judge: card.judge,
    scores: spread(scores),
    drift: drift(goes),
    lateness: tauB(
      went.map((_, index) => -index),
      doubledRanks(card, went),
    ),
  };
}

export function spread(scores: readonly Exact[]): ScoreSpread | undefined {
  if (scores.length === 0) return undefined;
  const middle = mean(scores);
  const variance = mean(scores.map((score) => square(score.sub(middle))));
  return { goes: scores.length, mean: middle, variance, deviation: rootText(variance) };
}

/**
 * Slope of the least-squares line of score on position: exact. Goes of a whole day may be given in one row, numbered
 * through. `undefined` for fewer than two different positions.
 */
export function drift(goes: readonly ScoredGo[]): Exact | undefined {
  if (goes.length < 2) return undefined;
  const middlePosition = mean(goes.map(({ position }) => exact(position)));
  const middleScore = mean(goes.map(({ score }) => score));
  const away = goes.map(({ position, score }) => ({
    position: exact(position).sub(middlePosition),
    score: score.sub(middleScore),
  }));
  const squares = sum(away.map(({ position }) => position.mul(position)));
  return squares.equals(zero)
    ? undefined
    : sum(away.map(({ position, score }) => position.mul(score))).div(squares);
}

const square = (value: Exact): Exact => value.mul(value);
