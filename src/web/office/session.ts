/** Whose session this window has, and what waits while it has to begin anew. */
import { signal } from '@preact/signals';
import type { Answer } from '../shared/api.ts';
import { forgetToken, keepToken, keptToken } from '../shared/office-client.ts';

export type CurrentSession = Answer<'/v1/sessions/current'>;

/** `undefined`: nobody is signed in, or it is not known yet. */
export const session = signal<CurrentSession | undefined>(undefined);

/** Is there a token in this window? Whether it is still good, the service says. */
export const tokenHeld = signal(keptToken() !== undefined);

/** The session ended while somebody was at work: she signs in over what she had typed. */
export const signInNeeded = signal(false);

let waiting: ((signedIn: boolean) => void)[] = [];

/** Resolves with `true` once there is a session again, with `false` where she leaves it. */
export function signInAgain(): Promise<boolean> {
  signInNeeded.value = true;
  return new Promise((resolve) => {
    waiting.push(resolve);
  });
}

/** Whatever waited is sent with the new token. */
export function sessionBegan(token: string): void {
  keepToken(token);
  tokenHeld.value = true;
  letGo(true);
}

export const signInLeft = (): void => letGo(false);

function letGo(signedIn: boolean): void {
  signInNeeded.value = false;
  const waited = waiting;
  waiting = [];
  for (const resolve of waited) resolve(signedIn);
}

/** Nothing of the session stays in this window. */
export function forgetSession(): void {
  forgetToken();
  tokenHeld.value = false;
  session.value = undefined;
  letGo(false);
}
