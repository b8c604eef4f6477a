/** A card as the verbs work on it: loaded, or loaded and locked, with the right to touch it checked. */
import { type Actor, mustHoldSeat, reachesShow } from '../access/index.ts';
import { mergesPlaces } from '../engine/placing/merges/reads.ts';
import type { PlacingRule } from '../engine/placing/types.ts';
import type { Go, ScoreSheet, SheetManeuver } from '../engine/sheets/types.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { CardOrder } from './card-schemas.ts';
import * as statements from './card-statements.ts';

export { isBlank } from '../engine/sheets/content-from-drafts.ts';

export interface CardRecord {
  readonly id: string;
  readonly classId: string;
  readonly seatId: string;
  readonly showId: string;
  readonly createdAt: Date;
  readonly seatOrder: number;
  readonly role: 'judge' | 'referee';
  readonly withdrawnAt: Date | null;
  readonly classStatus: string;
  readonly placingRule: PlacingRule;
  readonly sheetCode: string;
  readonly sheetVersion: number;
  /** Fingerprint of the sheet's definition. */
  readonly sheetHash: string;
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  /** Of the last signed revision; `null`: the card is not signed. */
  readonly revision: number | null;
  readonly contentHash: string | null;
}

/** One entry of the class of a card. */
export interface EntryRecord {
  readonly id: string;
  readonly backNumber: number;
  readonly goPosition: number | null;
  readonly status: string;
  /** When its status or its place in the order last changed. */
  readonly changedAt: Date;
}

/** Something of a draft with the version that two phones go by. */
export interface Draft<Content> {
  readonly content: Content;
  readonly version: number;
  readonly savedAt: Date;
}
export type DraftGo = Draft<Go> & { readonly classEntryId: string };

/**
 * May the card be signed with open ties on it? Not where the class merges by place, or where the card is a
 * ranking; where scores are added they do no harm to others, and are only flagged.
 */
export const mustBreakTies = ({ sheet, placingRule }: Pick<CardRecord, 'sheet' | 'placingRule'>): boolean =>
  sheet.kind === 'places' || mergesPlaces(placingRule.merge);

/** The card for someone who may see it. Throws not_found, other_show, other_seat, card_hidden. */
export async function cardForReading(tx: SqlTransaction, cardId: string, actor: Actor): Promise<CardRecord> {
  const card = await loadCard(tx, cardId, actor);
  if (actor.as === 'office' && card.revision === null) throw problem('card_hidden');
  return card;
}

/**
 * The card, locked until the transaction ends, for the judge or scribe who writes it.
 * Throws not_found, other_show, other_seat, seat_withdrawn, class_not_open.
 */
export async function cardForWriting(tx: SqlTransaction, cardId: string, actor: Actor): Promise<CardRecord> {
  await tx.sql.row(statements.lockCard, [cardId]);
  const card = await loadCard(tx, cardId, actor);
  if (card.withdrawnAt !== null) throw problem('seat_withdrawn');
  if (card.classStatus !== 'open')
    throw problem('class_not_open', { detail: `The class is ${card.classStatus}.` });
  return card;
}

/** Throws card_already_signed. */
export function mustBeUnsigned({ revision }: CardRecord): void {
  if (revision !== null) throw problem('card_already_signed', { more: { revision } });
}

async function loadCard(tx: SqlTransaction, cardId: string, actor: Actor): Promise<CardRecord> {
  const card = await tx.sql.row<CardRecord>(statements.readCard, [cardId]);
  if (card === undefined) throw problem('not_found', { detail: 'There is no such card.' });
  if (!reachesShow(actor, card.showId)) throw problem('other_show');
  mustHoldSeat(actor, card.seatId);
  return card;
}

export const entriesOf = (
  tx: SqlTransaction,
  { classId }: Pick<CardRecord, 'classId'>,
): Promise<EntryRecord[]> => tx.sql.rows<EntryRecord>(statements.readEntries, [classId]);

export const draftGoesOf = (tx: SqlTransaction, { id }: CardRecord): Promise<DraftGo[]> =>
  tx.sql.rows<DraftGo>(statements.readDraftGoes, [id]);

export const draftOrderOf = (tx: SqlTransaction, { id }: CardRecord): Promise<Draft<CardOrder> | undefined> =>
  tx.sql.row<Draft<CardOrder>>(statements.readDraftOrder, [id]);
