/** Signed cards read against the entries that went: the same for a preview, a posting, and a check of one. */
import { panelCard } from '../engine/placing/panel-card.ts';
import type { PanelCard } from '../engine/placing/types.ts';
import type { CardContent, CheckedCard } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import type { ScoreSheet, SheetManeuver } from '../engine/sheets/types.ts';
import { isGoing } from '../office/offline.ts';
import type { BodyEntry } from './posting-body.ts';

/** What the cards of a class are marked on. */
export interface MarkedOn {
  readonly sheet: { readonly definition: ScoreSheet };
  readonly maneuvers: readonly SheetManeuver[];
}

/** A seat of the panel, as far as reading its card needs it. */
export interface PanelPlace {
  readonly id: string;
  readonly role: 'judge' | 'referee';
}

/** One signed card. */
export interface CardOnRecord {
  readonly seatId: string;
  readonly revisionId: string;
  readonly revision: number;
  readonly contentHash: string;
  readonly content: CardContent;
}

/** A signed card, read against the entries that went. */
export interface CountedCard<Seat extends PanelPlace> {
  readonly seat: Seat;
  readonly signed: CardOnRecord;
  readonly checked: CheckedCard;
  readonly onPanel: PanelCard;
}

export interface MissingCard<Seat extends PanelPlace> {
  readonly seat: Seat;
  readonly why: 'not-signed' | 'to-be-amended';
}

interface Signed<Seat extends PanelPlace> {
  readonly seats: readonly Seat[];
  readonly entries: readonly BodyEntry[];
  readonly signed: readonly CardOnRecord[];
}

/** In the order of the seats. */
export function readCards<Seat extends PanelPlace>(
  markedOn: MarkedOn,
  { seats, entries, signed }: Signed<Seat>,
) {
  const cards: CountedCard<Seat>[] = [];
  const missing: MissingCard<Seat>[] = [];
  for (const seat of seats) {
    const card = signed.find(({ seatId }) => seatId === seat.id);
    const checked = card && readCard(markedOn, entries, card.content);
    if (card === undefined) missing.push({ seat, why: 'not-signed' });
    else if (checked === undefined) missing.push({ seat, why: 'to-be-amended' });
    else {
      const onPanel = panelCard({ judge: seat.id, seat: seat.role }, checked);
      cards.push({ seat, signed: card, checked, onPanel });
    }
  }
  return { cards, missing };
}

function readCard({ sheet, maneuvers }: MarkedOn, entries: readonly BodyEntry[], content: CardContent) {
  const going = entries.map(({ id, status }) => ({ id, going: isGoing(status) }));
  const still = withoutScratched(content, new Set(going.flatMap((entry) => (entry.going ? [entry.id] : []))));
  const check = checkCard({ sheet: sheet.definition, maneuvers, entries: going, content: still });
  return check.ok ? check.card : undefined;
}

/** Who was scratched after the card was signed no longer stands on it: the others close up. */
function withoutScratched({ goes, ownOrder, ranking }: CardContent, going: ReadonlySet<string>): CardContent {
  const still = (groups: readonly (readonly string[])[]) =>
    groups.map((group) => group.filter((id) => going.has(id))).filter((group) => group.length > 0);
  return {
    goes: Object.fromEntries(Object.entries(goes).filter(([id]) => going.has(id))),
    ...(ownOrder === undefined ? {} : { ownOrder: still(ownOrder).filter((group) => group.length > 1) }),
    ...(ranking === undefined ? {} : { ranking: still(ranking) }),
  };
}
