/** Is the judge's own order, or her ranking, right as far as the card is written? */

import type { CardContent, CardFault } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import { isGoing } from '../office/index.ts';
import type { CardRecord, EntryRecord } from './card-record.ts';
import { finishedGoes } from './draft-content.ts';
import { isStillMissing } from './fault-words.ts';

/** What is wrong, not what is missing: a go that is not finished is not tied with anything yet. */
export function orderFaults(
  card: CardRecord,
  entries: readonly EntryRecord[],
  content: CardContent,
): readonly CardFault[] {
  const { sheet, maneuvers } = card;
  const goes = finishedGoes(card, content.goes);
  const finished = entries.filter((entry) => isGoing(entry.status) && Object.hasOwn(goes, entry.id));
  const onCard = sheet.kind === 'places' ? entries : finished;
  const check = checkCard({
    sheet,
    maneuvers,
    entries: onCard.map((entry) => ({ id: entry.id, going: isGoing(entry.status) })),
    content: { ...content, goes },
  });
  return check.ok ? [] : check.faults.filter((fault) => !isStillMissing(fault));
}
