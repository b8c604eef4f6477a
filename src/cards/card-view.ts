/** The whole card as its judge sees it, before and after she has signed. */
import { z } from 'zod';
import type { Actor } from '../access/index.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import { canonicalText, hashOfText } from '../platform/canonical-json.ts';
import type { SqlTransaction } from '../platform/database.ts';
import {
  type CardRecord,
  cardForReading,
  type DraftGo,
  draftGoesOf,
  draftOrderOf,
  type EntryRecord,
  entriesOf,
  mustBreakTies,
} from './card-record.ts';
import { cardCheck } from './check-content.ts';
import { contentFromDrafts } from './draft-content.ts';
import { cardFaultsShown, cardTeller, isStillMissing } from './fault-words.ts';
import { fieldFault, goView, goViewSchema, type ShownGo } from './go-view.ts';
import { openTiesOn } from './open-ties.ts';
import { orderFaults } from './order-faults.ts';
import { orderView, orderViewSchema, type ShownOrder } from './order-view.ts';
import { revisionSchema, revisionView } from './revision-view.ts';
import { revisionOf, revisionsOf } from './revisions.ts';

export const cardViewSchema = z
  .strictObject({
    id: z.string(),
    showId: z.string(),
    classId: z.string(),
    seatId: z.string(),
    seatOrder: z.int(),
    role: z.enum(['judge', 'referee']),
    sheet: z.strictObject({ code: z.string(), version: z.int(), hash: z.string(), kind: z.string() }),
    state: z.enum(['draft', 'signed']),
    goes: z.array(goViewSchema).describe('In the order of go; everyone of the class, also who does not go.'),
    order: orderViewSchema
      .nullable()
      .describe("The judge's own order of ties, or her ranking; null: none yet."),
    openTies: z.array(z.array(z.string())).describe("Ties that are the judge's to break, by class entry."),
    tiesMustBeBroken: z
      .boolean()
      .describe(
        'true: the class merges places, the card is signed without open ties; false: they are flagged.',
      ),
    missing: z.array(fieldFault).describe('What is missing before the card can be signed, in words.'),
    faults: z.array(fieldFault).describe('What is wrong on the card so far, in words.'),
    mayBeSigned: z.boolean().describe('Draft only: nothing is missing or wrong, no tie is in the way.'),
    contentHash: z
      .string()
      .describe('SHA-256 of the canonical form (RFC 8785) of the content: signed, or as it would be.'),
    revisions: z.array(revisionSchema).describe('Signed revisions, the first first.'),
  })
  .meta({ id: 'Card' });
export type CardView = z.output<typeof cardViewSchema>;

export interface CardAsked {
  readonly cardId: string;
  readonly actor: Actor;
  readonly speech: Speech;
}

/** Throws not_found, other_show, other_seat, and card_hidden for the office until the card is signed. */
export async function readCardView(
  tx: SqlTransaction,
  { cardId, actor, speech }: CardAsked,
): Promise<CardView> {
  const card = await cardForReading(tx, cardId, actor);
  const entries = await entriesOf(tx, card);
  const shown =
    card.revision === null ? await draftOf(tx, card, entries) : await signedOf(tx, card, card.revision);
  const revisions = await revisionsOf(tx, card);
  return { ...cardView({ card, entries, shown, speech }), revisions: revisions.map(revisionView) };
}

/** What the card says: a draft with versions, or a signed revision. */
interface ShownCard {
  readonly content: CardContent;
  readonly goes: ReadonlyMap<string, ShownGo>;
  readonly order: ShownOrder | undefined;
}

async function draftOf(
  tx: SqlTransaction,
  card: CardRecord,
  entries: readonly EntryRecord[],
): Promise<ShownCard> {
  const goes = await draftGoesOf(tx, card);
  const order = await draftOrderOf(tx, card);
  const content = contentFromDrafts({ entries, goes, order });
  return { content, goes: new Map(goes.map((go: DraftGo) => [go.classEntryId, go])), order };
}

async function signedOf(tx: SqlTransaction, card: CardRecord, revision: number): Promise<ShownCard> {
  const signed = await revisionOf(tx, card, revision);
  if (signed === undefined) throw new Error('a signed card without its last revision');
  const { goes, ...order } = signed.content;
  const shown = new Map(Object.entries(goes).map(([id, go]) => [id, { content: go }] as const));
  return {
    content: signed.content,
    goes: shown,
    order: Object.keys(order).length > 0 ? { content: order } : undefined,
  };
}

interface CardToShow {
  readonly card: CardRecord;
  readonly entries: readonly EntryRecord[];
  readonly shown: ShownCard;
  readonly speech: Speech;
}

function cardView({ card, entries, shown, speech }: CardToShow): Omit<CardView, 'revisions'> {
  const { content, order } = shown;
  const openTies = openTiesOn(card, content);
  const tiesMustBeBroken = mustBreakTies(card);
  const found = faultsOf({ card, entries, shown, speech });
  const isDraft = card.revision === null;
  const tiesInTheWay = tiesMustBeBroken && openTies.length > 0;
  return {
    ...{
      id: card.id,
      showId: card.showId,
      classId: card.classId,
      seatId: card.seatId,
      seatOrder: card.seatOrder,
      role: card.role,
    },
    sheet: {
      ...{ code: card.sheetCode, version: card.sheetVersion },
      ...{ hash: card.sheetHash, kind: card.sheet.kind },
    },
    state: isDraft ? 'draft' : 'signed',
    goes: entries.map((entry) => goView({ card, entry, shown: shown.goes.get(entry.id), speech })),
    order: order === undefined ? null : orderView(order),
    openTies,
    tiesMustBeBroken,
    ...found,
    mayBeSigned: isDraft && !tiesInTheWay && found.missing.length + found.faults.length === 0,
    contentHash: card.contentHash ?? hashOfText(canonicalText(content)),
  };
}

/** The engine looks at the order of ties only once the goes stand; a judge wants to know before. */
function faultsOf({
  card,
  entries,
  shown: { content },
  speech,
}: CardToShow): Pick<CardView, 'missing' | 'faults'> {
  const check = cardCheck(card, entries, content);
  const all = check.ok ? [] : check.faults;
  const wrong = all.filter((fault) => !isStillMissing(fault));
  const teller = cardTeller({ maneuvers: card.maneuvers, entries }, speech);
  return {
    missing: cardFaultsShown(all.filter(isStillMissing), teller),
    faults: cardFaultsShown(wrong.length > 0 ? wrong : orderFaults(card, entries, content), teller),
  };
}
