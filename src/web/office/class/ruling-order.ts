/** `(['a', 'b', 'c'], [2, 1, 2])` -> `[['b'], ['a', 'c']]`: best group first; the same rank shares it. */
export function groupsOf(ids: readonly string[], ranks: readonly number[]): string[][] {
  const wanted = [...new Set(ranks)].sort((one, other) => one - other);
  return wanted.map((rank) => ids.filter((_id, at) => ranks[at] === rank));
}
