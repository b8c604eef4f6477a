/** A file that a phone keeps. */
export interface KeptFile {
  /** From the root: `/judge`, `/assets/judge-3f2a.js`. */
  readonly address: string;
  /** SHA-256 in small hex: a page that was built anew meanwhile is not taken for the one of this build. */
  readonly hash: string;
  /** Answers every address below it. */
  readonly isPage: boolean;
}
