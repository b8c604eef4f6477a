/** An order of go while it is changed by hand. Ids of class entries. */

/** Without who does not go any more; who was added meanwhile goes last. */
export const together = (mine: readonly string[], now: readonly string[]): readonly string[] => [
  ...mine.filter((id) => now.includes(id)),
  ...now.filter((id) => !mine.includes(id)),
];

export function moved(order: readonly string[], id: string, to: number): readonly string[] {
  const rest = order.filter((one) => one !== id);
  return [...rest.slice(0, to), id, ...rest.slice(to)];
}
