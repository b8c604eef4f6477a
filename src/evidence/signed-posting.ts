/** What the service signs when a result is posted: which result it is, by its fingerprint, and the head of the ledger. */

export const signedPostingForm = 'ringledger signed posting 1';

export interface SignedPosting {
  readonly form: typeof signedPostingForm;
  /** Of a rehearsal: it counts for nothing. */
  readonly practice: boolean;
  readonly showId: string;
  readonly classId: string;
  readonly postingId: string;
  /** 1 for the first posting of the class. */
  readonly version: number;
  readonly state: 'provisional' | 'official' | 'corrected';
  readonly reason: string | null;
  /** RFC 3339 in UTC with milliseconds. */
  readonly postedAt: string;
  /** Fingerprint of the rule as applied and the score sheet. */
  readonly ruleHash: string;
  /** Fingerprint of the posting's body. */
  readonly bodyHash: string;
  /** The last line of the show's ledger before the line of this posting. */
  readonly ledger: LedgerHead;
}

export interface LedgerHead {
  readonly sequence: number;
  readonly hash: string;
}
