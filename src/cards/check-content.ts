/** May this card be signed? The engine says; here it becomes a refusal that names everything at once. */

import { openTieOnCard } from '../engine/sentences/fault-sentences.ts';
import type { CardContent, CardFault } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import { told } from '../language/index.ts';
import { isGoing } from '../office/index.ts';
import { type ProblemCode, problem } from '../platform/problems/index.ts';
import { type CardRecord, type EntryRecord, mustBreakTies } from './card-record.ts';
import { cardFaultFields, cardTeller, isStillMissing } from './fault-words.ts';
import { sortedTies } from './open-ties.ts';

export interface ContentToCheck {
  readonly card: CardRecord;
  readonly entries: readonly EntryRecord[];
  readonly content: CardContent;
  /** Where the content stands in the body; `''`: it was put together from the drafts. */
  readonly under: '' | '/content';
}

/** The ties that are left open. Throws card_incomplete, card_illegal, entry_not_going, card_has_open_ties. */
export function mustBeSignable({ card, entries, content, under }: ContentToCheck): string[][] {
  const check = cardCheck(card, entries, content);
  const named = { maneuvers: card.maneuvers, entries };
  if (!check.ok) {
    const errors = cardFaultFields(check.faults, named, under);
    throw problem(refusalFor(check.faults), { detail: `Faults on the card: ${errors.length}.`, errors });
  }
  const openTies = sortedTies(check.card.openTies);
  if (openTies.length > 0 && mustBreakTies(card)) {
    const at = `${under}/${card.sheet.kind === 'places' ? 'ranking' : 'ownOrder'}`;
    throw problem('card_has_open_ties', {
      errors: openTies.map((tie) => ({
        field: at,
        message: told((speech) => openTieOnCard(tie, cardTeller(named, speech))),
      })),
      more: { openTies },
    });
  }
  return openTies;
}

export const cardCheck = (card: CardRecord, entries: readonly EntryRecord[], content: CardContent) =>
  checkCard({
    sheet: card.sheet,
    maneuvers: card.maneuvers,
    entries: entries.map((entry) => ({ id: entry.id, going: isGoing(entry.status) })),
    content,
  });

/** A card on which something is missing is incomplete, whatever else is wrong with it. */
function refusalFor(faults: readonly CardFault[]): ProblemCode {
  if (faults.some(isStillMissing)) return 'card_incomplete';
  return faults.every(({ code }) => code === 'entry_not_going') ? 'entry_not_going' : 'card_illegal';
}
