/** What this phone is, out of its key and what is kept. */
import type { DayClass } from './day-types.ts';
import type { DayState } from './desk-types.ts';
import type { KeptPhone } from './records.ts';

/** `gate`: it is paired, and has no seats. */
export type KeyState = 'here' | 'none' | 'gate';

interface Known {
  readonly key: KeyState;
  readonly thumbprint: string | undefined;
  readonly phone: KeptPhone | undefined;
  readonly classes: readonly DayClass[];
}

export function dayStateOf({ key, thumbprint, phone, classes }: Known): DayState {
  if (key === 'gate') return { is: 'gate-phone' };
  const head = phone?.phone ?? null;
  const day = head === null ? undefined : { phone: head, classes };
  const ended = phone?.ended ?? null;
  if (key === 'none') {
    // The page that pairs threw the key of an ended pairing away; the work is here all the same.
    if (day !== undefined) return { is: 'revoked', day, problem: ended ?? withoutKey };
    return { is: 'not-paired', because: ended };
  }
  // What is kept is of another key: whose phone this is now the service says first.
  if (phone !== undefined && phone.thumbprint !== thumbprint) return { is: 'paired-no-day', because: null };
  if (day === undefined) {
    return ended === null ? { is: 'paired-no-day', because: null } : { is: 'not-paired', because: ended };
  }
  if (ended !== null) return { is: 'revoked', day, problem: ended };
  return { is: 'here', day, heardAt: phone?.heardAt ?? '' };
}

/** Not from the service: the key of this phone is gone, so nobody can ask it. */
const withoutKey = {
  code: 'phone_key_gone',
  title: 'This phone has no key any more',
  whatToDo: 'Ask the show office for a new code and pair again. What was written is kept.',
};
