/** What the ledger keeps of a ruling, so that it cannot be changed without being noticed. */
import { fingerprint } from '../platform/canonical-json.ts';

export interface FingerprintedRuling {
  readonly id: string;
  readonly classId: string;
  readonly kind: string;
  readonly decision: unknown;
  /** In words: the steward, the call judge. */
  readonly decidedBy: string;
  readonly why: string;
  readonly ruledAt: Date | string;
}

/** SHA-256, as small hex, over the canonical form (RFC 8785) of all that was recorded. */
export function rulingFingerprint(ruling: FingerprintedRuling): string {
  const { id, classId, kind, decision, decidedBy, why, ruledAt } = ruling;
  return fingerprint({
    id,
    classId,
    kind,
    decision,
    decidedBy,
    why,
    ruledAt: new Date(ruledAt).toISOString(),
  });
}
