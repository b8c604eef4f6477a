/**
 * The second factor of the office: time-based one-time codes (RFC 6238) as authenticator apps make them, with SHA-1,
 * six digits, steps of 30 seconds.
 */
import { Secret, TOTP } from 'otpauth';

export const stepSeconds = 30;
/** The clocks of a phone and of the server may be a step apart (RFC 6238, 5.2). */
const stepsApart = 1;
const secretBytes = 20;

/** A new secret of 160 bits (RFC 4226, 4, requirement 6), in base 32. */
export const newSecret = (): string => new Secret({ size: secretBytes }).base32;

/** What an authenticator app reads: `otpauth://totp/Ringledger:ada?issuer=Ringledger&secret=...` */
export const secretUri = (secret: string, signIn: string): string => generator(secret, signIn).toString();

/** The code of a moment, six digits. */
export const codeAt = (secret: string, at: Date): string =>
  generator(secret).generate({ timestamp: at.getTime() });

interface TypedCode {
  /** In base 32. */
  readonly secret: string;
  readonly code: string;
  readonly at: Date;
  /** The step whose code was taken last; `null`: none yet. */
  readonly lastStep: number | null;
}

/**
 * The step whose code it is, or `undefined`: it is the code of no step near `at`, or of one that is not later than
 * the last, since a code is taken once (RFC 6238, 5.2).
 */
export function stepOfCode({ secret, code, at, lastStep }: TypedCode): number | undefined {
  const apart = generator(secret).validate({ token: code, timestamp: at.getTime(), window: stepsApart });
  if (apart === null) return undefined;
  const step = Math.floor(at.getTime() / 1_000 / stepSeconds) + apart;
  return lastStep !== null && step <= lastStep ? undefined : step;
}

const generator = (secret: string, label = 'office') =>
  new TOTP({
    issuer: 'Ringledger',
    label,
    algorithm: 'SHA1',
    digits: 6,
    period: stepSeconds,
    secret: Secret.fromBase32(secret),
  });
