/** A judge's scores over the order of go, and the line through them: geometry in a unit square. Pure. */
import { type Agreement, drawn, type JudgeGoes, recordOf } from './closeness-answers.ts';

export interface DriftPlot {
  readonly judge: JudgeGoes;
  /** `x`: 0 the first go, 1 the last; `y`: 0 the lowest score of all judges, 1 the highest. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly backNumber: number }[];
  /** At the first and at the last go; `undefined`: fewer than two goes. */
  readonly line: { readonly from: number; readonly to: number } | undefined;
  /** Recorded: points gained or lost with each next go. */
  readonly drift: string | null;
}

export interface DriftScale {
  readonly low: number;
  readonly high: number;
  readonly goes: number;
  readonly plots: readonly DriftPlot[];
}

/** One scale for all judges, so that they can be held side by side. `undefined`: nothing is scored, or no order of go. */
export function driftPlots(agreement: Agreement): DriftScale | undefined {
  const scored = agreement.judges.map((judge) => ({ judge, goes: scoredGoes(judge) }));
  const all = scored.flatMap(({ goes }) => goes);
  if (all.length < 2) return undefined;
  const scores = all.map(({ score }) => score);
  const [low, high] = [Math.min(...scores), Math.max(...scores)];
  const last = Math.max(...all.map(({ position }) => position));
  const x = (position: number) => (last === 1 ? 0 : (position - 1) / (last - 1));
  const y = (score: number) => (high === low ? 0.5 : (score - low) / (high - low));
  const tendencies = recordOf(agreement).judges;
  const plots = scored.map(({ judge, goes }): DriftPlot => {
    const drift = tendencies.find((one) => one.judge === judge.seatId)?.drift ?? null;
    const at = drift === null ? undefined : lineThrough(goes, drawn(drift));
    return {
      ...{ judge, drift },
      points: goes.map(({ position, score, backNumber }) => ({ x: x(position), y: y(score), backNumber })),
      line: at === undefined ? undefined : { from: y(at(1)), to: y(at(last)) },
    };
  });
  return { low, high, goes: last, plots };
}

interface ScoredGo {
  readonly position: number;
  readonly score: number;
  readonly backNumber: number;
}

const scoredGoes = ({ goes }: JudgeGoes): ScoredGo[] =>
  goes.flatMap(({ backNumber, goPosition, score }) =>
    goPosition === null || score === null ? [] : [{ backNumber, position: goPosition, score: drawn(score) }],
  );

/** The line of least squares goes through the means. */
function lineThrough(goes: readonly ScoredGo[], slope: number): (position: number) => number {
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const middle = { position: mean(goes.map((go) => go.position)), score: mean(goes.map((go) => go.score)) };
  return (position) => middle.score + slope * (position - middle.position);
}
