/**
 * The judge breaks the ties on her own card at her discretion (AQHA 2014 Handbook SHW370.1). She may order
 * only entries that are really tied, and a whole tie at a time: an order never moves a score.
 */
import { cardFault } from './card-faults.ts';
import type { CardFault, CardGroup } from './card-types.ts';

export function ownOrderFaults(
  ownOrder: readonly (readonly string[])[],
  order: readonly CardGroup[],
): readonly CardFault[] {
  const ties = new Map(order.flatMap((group) => group.entries.map((entry) => [entry, group] as const)));
  const seen = new Set<string>();
  return ownOrder.flatMap((entries, index) => {
    const tie = ties.get(entries[0] ?? '');
    const whole =
      tie !== undefined &&
      tie.tier !== 'not-placed' &&
      tie.entries.length > 1 &&
      entries.length === tie.entries.length &&
      new Set(entries).size === entries.length &&
      entries.every((entry) => tie.entries.includes(entry) && !seen.has(entry));
    for (const entry of entries) seen.add(entry);
    if (whole) return [];
    const isTied = tie !== undefined && tie.entries.length > 1;
    const allowed = { kind: 'tie', entries: isTied ? tie.entries : [] } as const;
    return [
      cardFault('own_order_not_a_tie', entries[0], {
        at: `/ownOrder/${index}`,
        written: entries.join(', '),
        allowed,
      }),
    ];
  });
}
