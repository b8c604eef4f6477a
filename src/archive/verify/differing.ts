/** Two records compared member by member, so that a fault can say which one was changed. */
import { canonicalText } from '../../evidence/index.ts';

type Members = Readonly<Record<string, unknown>>;

/** Names of the members that differ, in the order of the alphabet; a missing one differs. */
export function differing(a: Members, b: Members): string[] {
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
  return names.filter((name) => textOf(a[name]) !== textOf(b[name]));
}

const textOf = (value: unknown): string => (value === undefined ? '' : canonicalText(value));

/** `jwsHash, revision`, or `undefined` where nothing differs. */
export function difference(a: Members, b: Members): string | undefined {
  const names = differing(a, b);
  return names.length === 0 ? undefined : names.join(', ');
}

/** Members of `expected` only: a line may say more than is asked of it. */
export function missingFrom(found: Members, expected: Members): string | undefined {
  const names = Object.keys(expected).filter((name) => textOf(found[name]) !== textOf(expected[name]));
  return names.length === 0 ? undefined : names.join(', ');
}
