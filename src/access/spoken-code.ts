/**
 * Codes that people read aloud and type: digits of Crockford's base 32 (https://www.crockford.com/base32.html), which has
 * no I, L, O and U, 5 bits each, drawn by the system's generator and written in groups.
 */
import { randomInt } from 'node:crypto';

const digits = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

export interface CodeForm {
  readonly groups: number;
  readonly groupLength: number;
}

/** A new code of that form: `XK7P-4M2Q` for two groups of four. */
export function drawSpokenCode({ groups, groupLength }: CodeForm): string {
  const group = () =>
    Array.from({ length: groupLength }, () => digits[randomInt(digits.length)] ?? '').join('');
  return Array.from({ length: groups }, group).join('-');
}

/**
 * A code as someone typed it, as it is written; `undefined`: it is none. Small letters, blanks and dashes do not matter,
 * and as Crockford says an I or L is read as 1, an O as 0. A U is no digit, so it was misread.
 */
export function readSpokenCode(typed: string, { groups, groupLength }: CodeForm): string | undefined {
  const text = typed.toUpperCase().replace(/[\s-]/g, '').replace(/[IL]/g, '1').replaceAll('O', '0');
  if (text.length !== groups * groupLength) return undefined;
  if (![...text].every((digit) => digits.includes(digit))) return undefined;
  return (text.match(new RegExp(`.{${groupLength}}`, 'g')) ?? []).join('-');
}
