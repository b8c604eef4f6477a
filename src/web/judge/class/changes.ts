/** What the office changed in a class while it was judged: who came, who was taken out. */
import type { DayClass } from '../desk/day-types.ts';

export type ClassChange =
  | { readonly kind: 'added' | 'gone' | 'moved'; readonly backNumber: number }
  | { readonly kind: 'status'; readonly backNumber: number; readonly status: string };

export function changesBetween(before: DayClass, after: DayClass): readonly ClassChange[] {
  const [old, now] = [byId(before), byId(after)];
  const changes: ClassChange[] = [];
  for (const [id, { backNumber, status, goPosition }] of now) {
    const was = old.get(id);
    if (was === undefined) changes.push({ kind: 'added', backNumber });
    // The gate checks entries in all day: that is no news to a judge.
    else if (was.status !== status && status !== 'checked-in')
      changes.push({ kind: 'status', backNumber, status });
    else if (was.goPosition !== goPosition && goPosition !== null)
      changes.push({ kind: 'moved', backNumber });
  }
  for (const [id, { backNumber }] of old) if (!now.has(id)) changes.push({ kind: 'gone', backNumber });
  return changes;
}

const byId = ({ entries }: DayClass) => new Map(entries.map((entry) => [entry.classEntryId, entry]));
