/** One go is saved as far as it is written, by the judge or her scribe; either may overtake the other. */

import type { Actor } from '../access/index.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { draftFaults } from '../engine/sheets/score-go.ts';
import type { Go } from '../engine/sheets/types.ts';
import { isGoing } from '../office/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { sameContent } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { json } from '../platform/sql.ts';
import {
  type CardRecord,
  cardForWriting,
  type DraftGo,
  type EntryRecord,
  isBlank,
  mustBeUnsigned,
} from './card-record.ts';
import * as statements from './card-statements.ts';
import { mustBeSeen, type SeenVersion } from './draft-versions.ts';
import { goFaultFields } from './fault-words.ts';
import { type GoView, goView } from './go-view.ts';

export interface GoAddress {
  readonly cardId: string;
  readonly classEntryId: string;
  readonly actor: Actor;
  /** The version that the sender has seen. */
  readonly seen: SeenVersion;
}

/**
 * Saves the draft of one go. What is missing is fine in a draft, what is wrong is not. The same go again is
 * answered as it stands, so that a phone may send it as often as it likes.
 * Throws go_not_on_sheet, entry_not_going, go_not_in_class, card_already_signed, draft_changed_meanwhile.
 */
export async function saveGo(
  parts: AppParts,
  tx: SqlTransaction,
  { address, go, speech }: { readonly address: GoAddress; readonly go: Go; readonly speech: Speech },
): Promise<GoView> {
  const { card, entry, stored } = await goForWriting(tx, address);
  mustFitSheet(card, entry, go);
  if (stored !== undefined && sameContent(stored.content, go))
    return goView({ card, entry, shown: stored, speech });
  mustBeSeen(stored, { seen: address.seen, sent: go, blank: isBlank });
  const savedAt = parts.clock.now();
  const version = await keepGo(tx, { card, entry, go, savedAt });
  return goView({ card, entry, shown: { content: go, savedAt, version }, speech });
}

/** Wipes the draft of one go. Its version goes on, so that nobody mistakes a new draft for an old one. */
export async function wipeGo(parts: AppParts, tx: SqlTransaction, address: GoAddress): Promise<void> {
  const { card, entry, stored } = await goForWriting(tx, address);
  if (stored === undefined || isBlank(stored.content)) return;
  if (address.seen === undefined) throw problem('if_match_required');
  mustBeSeen(stored, { seen: address.seen, sent: {}, blank: isBlank });
  await keepGo(tx, { card, entry, go: {}, savedAt: parts.clock.now() });
}

interface KeptGo {
  readonly card: CardRecord;
  readonly entry: EntryRecord;
  readonly go: Go;
  readonly savedAt: Date;
}

async function keepGo(tx: SqlTransaction, { card, entry, go, savedAt }: KeptGo): Promise<number> {
  const kept = await tx.sql.row<{ version: number }>(statements.saveDraftGo, [
    ...[card.id, entry.id, card.classId, json(go), savedAt],
  ]);
  if (kept === undefined) throw new Error('the draft was not kept');
  return kept.version;
}

async function goForWriting(tx: SqlTransaction, { cardId, classEntryId, actor }: GoAddress) {
  const card = await cardForWriting(tx, cardId, actor);
  mustBeUnsigned(card);
  const entry = await tx.sql.row<EntryRecord>(statements.readEntry, [card.classId, classEntryId]);
  if (entry === undefined) throw problem('go_not_in_class');
  if (!isGoing(entry.status)) {
    throw problem('entry_not_going', { detail: `Back number ${entry.backNumber} is ${entry.status}.` });
  }
  const stored = await tx.sql.row<DraftGo>(statements.readDraftGo, [card.id, entry.id]);
  return { card, entry, stored };
}

function mustFitSheet(card: CardRecord, entry: EntryRecord, go: Go): void {
  const faults = draftFaults(card.sheet, card.maneuvers, go);
  if (faults.length === 0) return;
  throw problem('go_not_on_sheet', {
    detail: `Back number ${entry.backNumber}: ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}.`,
    errors: goFaultFields(faults, { maneuvers: card.maneuvers, entries: [entry] }),
  });
}
