/** The place that one judge's card gives an entry, with the score behind it where there is one. */
import { recordText } from '../numbers/number-text.ts';
import type { Measure } from './refine.ts';
import type { EntryId, PanelCard } from './types.ts';

export function placeOnCard({ judge, lines }: PanelCard, entry: EntryId): Measure {
  const line = lines.get(entry);
  const score = line?.score;
  return {
    value: line?.place,
    ...(score === undefined ? {} : { parts: [{ judge, value: recordText(score) }] }),
  };
}
