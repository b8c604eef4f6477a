/** An order of go that somebody sets by hand: one entry at a time moves, all others close up. Pure. */

/** `to`: where it stands afterwards, from 0; beyond the ends it stays at the end. */
export function moved(order: readonly string[], id: string, to: number): readonly string[] {
  const rest = order.filter((one) => one !== id);
  if (rest.length === order.length) return order;
  const at = Math.min(Math.max(to, 0), rest.length);
  return [...rest.slice(0, at), id, ...rest.slice(at)];
}

/** Whose turn it is other than before, for saying what a change does. */
export const whoMoved = (before: readonly string[], after: readonly string[]): readonly string[] =>
  after.filter((id, index) => before[index] !== id);

/** Entries that came or went while the order was being set: it has to hold each of them once. */
export function broughtUpToDate(order: readonly string[], going: readonly string[]): readonly string[] {
  const still = order.filter((id) => going.includes(id));
  return [...still, ...going.filter((id) => !order.includes(id))];
}
