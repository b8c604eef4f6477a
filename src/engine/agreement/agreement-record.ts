/** Agreement as plain JSON: whole numbers and decimals as strings, nothing lost but what is said to be rounded. */
import { recordText } from '../numbers/number-text.ts';
import type { EntryId, JudgeId } from '../placing/types.ts';
import type { Agreement } from './agreement.ts';
import type { JudgeTendency } from './judge-tendency.ts';
import type { Coefficient, JudgePair } from './rank-correlation.ts';

export interface AgreementRecord {
  /** `w`: record text, `"0.65"` or a fraction `"41/63"`; `null` where there is none. */
  readonly together: {
    readonly w: string | null;
    readonly judges: number;
    readonly entries: readonly EntryId[];
  };
  readonly pairs: readonly {
    readonly judges: readonly [JudgeId, JudgeId];
    readonly entries: number;
    readonly tauB: CoefficientRecord | null;
    readonly rho: CoefficientRecord | null;
  }[];
  readonly judges: readonly {
    readonly judge: JudgeId;
    /** `mean` and `variance`: record texts; `deviation`: rounded to six digits. */
    readonly scores: {
      readonly goes: number;
      readonly mean: string;
      readonly variance: string;
      readonly deviation: string;
    } | null;
    readonly drift: string | null;
    readonly lateness: CoefficientRecord | null;
  }[];
}

/** `above / sqrt(below[0] x below[1])`, and its value rounded to six digits. */
export interface CoefficientRecord {
  readonly above: string;
  readonly below: readonly [string, string];
  readonly value: string;
}

export function agreementRecord({ together, pairs, judges }: Agreement): AgreementRecord {
  return {
    together: {
      w: together.w === undefined ? null : recordText(together.w),
      judges: together.judges,
      entries: together.entries,
    },
    pairs: pairs.map(pairRecord),
    judges: judges.map(tendencyRecord),
  };
}

const pairRecord = ({ judges, entries, tauB, rho }: JudgePair) => ({
  judges,
  entries: entries.length,
  tauB: coefficientRecord(tauB),
  rho: coefficientRecord(rho),
});

function tendencyRecord({ judge, scores, drift, lateness }: JudgeTendency) {
  return {
    judge,
    scores:
      scores === undefined
        ? null
        : { ...scores, mean: recordText(scores.mean), variance: recordText(scores.variance) },
    drift: drift === undefined ? null : recordText(drift),
    lateness: coefficientRecord(lateness),
  };
}

function coefficientRecord(coefficient: Coefficient | undefined): CoefficientRecord | null {
  if (coefficient === undefined) return null;
  const { above, below, text } = coefficient;
  return { above: String(above), below: [String(below[0]), String(below[1])], value: text };
}
