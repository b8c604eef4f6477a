/**
 * Guessing slows down (OWASP ASVS 5.0, 6.3.1): after five failures in a row an account must wait, after each further one
 * twice as long, at most a quarter of an hour. Tries within the wait are refused unread and count for nothing, so a
 * stranger can vex the owner for minutes but never lock the account; sessions that were begun go on.
 *
 * The fifth failure costs 15 seconds, the sixth 30, ... the eleventh and all after it 15 minutes: in a year some
 * 35,000 tries, each at two factors.
 */
const freeFailures = 4;
const firstWaitSeconds = 15;
const longestWaitSeconds = 15 * 60;

/** How long to wait after so many failures in a row, in seconds. */
export function waitAfter(failures: number): number {
  if (failures <= freeFailures) return 0;
  const doublings = Math.min(failures - freeFailures - 1, 16);
  return Math.min(firstWaitSeconds * 2 ** doublings, longestWaitSeconds);
}

export interface Guesses {
  readonly failures: number;
  readonly slowedUntil: Date | null;
}

/** One more failure. */
export function afterFailure({ failures }: Pick<Guesses, 'failures'>, at: Date): Guesses {
  const wait = waitAfter(failures + 1);
  const slowedUntil = wait === 0 ? null : new Date(at.getTime() + wait * 1_000);
  return { failures: failures + 1, slowedUntil };
}

/** Whole seconds that are left to wait; 0: try now. */
export function secondsToWait({ slowedUntil }: Pick<Guesses, 'slowedUntil'>, at: Date): number {
  return slowedUntil === null ? 0 : Math.max(0, Math.ceil((slowedUntil.getTime() - at.getTime()) / 1_000));
}
