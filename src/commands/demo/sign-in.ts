/** Somebody of the demo's office signs in, with the log-in that the demo keeps. */
import { Secret, TOTP } from 'otpauth';
import { type Api, bare, Refused } from './api.ts';
import type { LogIn } from './kept-files.ts';

const stepMilliseconds = 30_000;

/** What her authenticator app would show (RFC 6238, the usual settings). */
export function codeNow(secret: string, aheadMilliseconds = 0): string {
  return new TOTP({ secret: Secret.fromBase32(secret) }).generate({
    timestamp: Date.now() + aheadMilliseconds,
  });
}

/** The session that she has, or a new one. Throws Refused. */
export async function sessionOf(api: Api, logIn: LogIn): Promise<string> {
  const as = bare(api.address, logIn.session);
  const goesOn = await api.ask({ method: 'GET', path: '/sessions/current', as }).then(
    () => true,
    (error: unknown) => (error instanceof Refused ? false : Promise.reject(error)),
  );
  return goesOn ? logIn.session : signIn(api, logIn);
}

/** A code is taken once: where this one was used a moment ago, the next is taken, which the service knows already. */
async function signIn(api: Api, logIn: LogIn): Promise<string> {
  try {
    return await signInWith(api, logIn, codeNow(logIn.totpSecret));
  } catch (error) {
    if (!(error instanceof Refused) || error.problem.code !== 'sign_in_refused') throw error;
    return signInWith(api, logIn, codeNow(logIn.totpSecret, stepMilliseconds));
  }
}

async function signInWith(api: Api, { signIn: name, password }: LogIn, totpCode: string): Promise<string> {
  const body = { signIn: name, password, totpCode };
  const begun = await api.ask<{ token: string }>({ method: 'POST', path: '/sessions', body });
  return begun.body.token;
}
