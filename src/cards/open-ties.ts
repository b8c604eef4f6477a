/** Ties on one judge's own card: hers to break, shown to her until she has. */
import type { CardContent } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import type { CardRecord } from './card-record.ts';
import { finishedGoes } from './draft-content.ts';

type Ties = readonly (readonly string[])[];

/** In the order of the ids, so that the same card is always answered the same. */
export const sortedTies = (ties: Ties): string[][] => ties.map((tie) => [...tie].sort());

/** The open ties among what is finished on the card: a go with something missing has no score to be tied with. */
export function openTiesOn(card: CardRecord, content: CardContent): string[][] {
  const { sheet, maneuvers } = card;
  if (sheet.kind === 'places') {
    return sortedTies((content.ranking ?? []).filter((group) => group.length > 1));
  }
  const goes = finishedGoes(card, content.goes);
  const entries = Object.keys(goes).map((id) => ({ id, going: true }));
  const check = checkCard({ sheet, maneuvers, entries, content: { goes } });
  const open = check.ok ? check.card.openTies : [];
  return sortedTies(open.filter((tie) => !isBroken(tie, content.ownOrder ?? [])));
}

const isBroken = (tie: readonly string[], ownOrder: Ties): boolean =>
  ownOrder.some((order) => order.length === tie.length && tie.every((entry) => order.includes(entry)));
