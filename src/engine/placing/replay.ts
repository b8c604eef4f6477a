/** The placing again, from the reasons alone: no cards, no rules, only the numbers that were compared. */
import { fromRecordText } from '../numbers/number-text.ts';
import { splitByValue } from './refine.ts';
import type { EntryId, Reason } from './types.ts';

/**
 * Ordered groups of tied entries. `entries`: all that may be placed.
 * Throws a RangeError where a reason compares entries that an earlier one had already parted.
 */
export function replay(
  entries: readonly EntryId[],
  reasons: readonly Reason[],
): readonly (readonly EntryId[])[] {
  let groups: (readonly EntryId[])[] = [entries];
  for (const { compared, better, splits } of reasons) {
    const among = new Set(compared.map(({ entry }) => entry));
    const at = groups.findIndex((group) => compared.every(({ entry }) => group.includes(entry)));
    const group = groups[at];
    if (group === undefined) throw new RangeError('these entries were not tied');
    const measured = [
      ...compared.map(({ entry, value }) => ({
        entry,
        value: value === null ? undefined : fromRecordText(value),
      })),
      ...group.filter((entry) => !among.has(entry)).map((entry) => ({ entry, value: undefined })),
    ];
    groups = [...groups.slice(0, at), ...splitByValue(measured, better, splits), ...groups.slice(at + 1)];
  }
  return groups;
}
