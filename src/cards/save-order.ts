/** The judge orders the ties on her own card, or ranks a rail class: saved as a draft until she signs. */
import type { Actor } from '../access/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { sameContent } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { json } from '../platform/sql.ts';
import {
  cardForWriting,
  type Draft,
  draftGoesOf,
  draftOrderOf,
  entriesOf,
  mustBeUnsigned,
} from './card-record.ts';
import type { CardOrder } from './card-schemas.ts';
import * as statements from './card-statements.ts';
import { contentFromDrafts } from './draft-content.ts';
import { mustBeSeen, type SeenVersion } from './draft-versions.ts';
import { cardFaultFields } from './fault-words.ts';
import { orderFaults } from './order-faults.ts';

export interface OrderToSave {
  readonly cardId: string;
  readonly actor: Actor;
  readonly seen: SeenVersion;
  readonly order: CardOrder;
}

/**
 * Saves the order; an empty one takes it back. Only what is tied on the card so far can be ordered.
 * Throws card_illegal, card_already_signed, draft_changed_meanwhile.
 */
export async function saveOrder(
  parts: AppParts,
  tx: SqlTransaction,
  { cardId, actor, seen, order }: OrderToSave,
): Promise<Draft<CardOrder>> {
  const card = await cardForWriting(tx, cardId, actor);
  mustBeUnsigned(card);
  const stored = await draftOrderOf(tx, card);
  if (stored !== undefined && sameContent(stored.content, order)) return stored;
  mustBeSeen(stored, { seen, sent: order, blank: isEmpty });
  const entries = await entriesOf(tx, card);
  const { goes } = contentFromDrafts({ entries, goes: await draftGoesOf(tx, card), order: undefined });
  const faults = orderFaults(card, entries, { goes, ...order });
  if (faults.length > 0) {
    const named = { maneuvers: card.maneuvers, entries };
    throw problem('card_illegal', { errors: cardFaultFields(faults, named) });
  }
  const savedAt = parts.clock.now();
  const kept = await tx.sql.row<{ version: number }>(statements.saveDraftOrder, [
    ...[card.id, json(order), savedAt],
  ]);
  if (kept === undefined) throw new Error('the order was not kept');
  return { content: order, version: kept.version, savedAt };
}

const isEmpty = ({ ownOrder = [], ranking = [] }: CardOrder): boolean =>
  ownOrder.length === 0 && ranking.length === 0;
