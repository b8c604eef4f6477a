/** A class tabulated from its signed cards: what a posting would say now, and what still stands in its way. */
import { checkRule } from '../engine/placing/check-rule.ts';
import { panelCard } from '../engine/placing/panel-card.ts';
import type { PanelCard } from '../engine/placing/types.ts';
import { ruleFaultSentence } from '../engine/sentences/rule-sentences.ts';
import type { CardContent, CheckedCard } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import { fingerprint } from '../platform/canonical-json.ts';
import { problem } from '../platform/problems/index.ts';
import { appliedRule } from './applied-rule.ts';
import type { ClassRecords, Seat } from './class-records.ts';
import { type PostingBody, placingInput, postingBody, went } from './posting-body.ts';

export interface Tabulation {
  readonly records: ClassRecords;
  readonly body: PostingBody;
  /** SHA-256 of the body. */
  readonly bodyHash: string;
  readonly cards: readonly CountedCard[];
  /** Seats without a card that counts: not signed, or an entry came in since and it must be amended. */
  readonly missing: readonly MissingCard[];
  readonly changedSincePosting: boolean;
}

/** A signed card, read against the entries that went. */
export interface CountedCard {
  readonly seat: Seat;
  readonly content: CardContent;
  readonly checked: CheckedCard;
  readonly onPanel: PanelCard;
}

export interface MissingCard {
  readonly seat: Seat;
  readonly why: 'not-signed' | 'to-be-amended';
}

/** Throws class_cannot_be_tabulated where rule, sheet and panel do not fit each other. */
export function tabulateClass(records: ClassRecords): Tabulation {
  const { head, seats, entries, rulings } = records;
  const rule = appliedRule({ ...head, rule: head.placingRule, seats });
  const { cards, missing } = readCards(records);
  mustFit(records, rule, missing.length === 0);
  const decisions = rulings.map(({ id, kind, decision }) => ({ id, kind, order: decision.order }));
  const parts = {
    classId: head.id,
    classNumber: head.number,
    sheet: { code: head.sheetCode, version: head.sheetVersion, hash: head.sheetHash },
    panel: seats.map(({ id, seatOrder, role }) => ({ seatId: id, seatOrder, role })),
    entries: entries.map(({ id, backNumber, status }) => ({ id, backNumber, status })),
    cards: cards.map(({ seat }) => ({
      seatId: seat.id,
      revisionId: seat.revisionId ?? '',
      revision: seat.revision ?? 0,
      contentHash: seat.contentHash ?? '',
    })),
  };
  const onPanel = cards.map((card) => card.onPanel);
  const placeable = rule.merge.method !== 'two-judges-and-referee' || missing.length === 0;
  const input = placingInput({ body: parts, cards: placeable ? onPanel : [], rule, decisions });
  const body = postingBody(parts, input);
  const bodyHash = fingerprint(body);
  const { lastPosting } = records;
  return { records, body, bodyHash, cards, missing, changedSincePosting: lastPosting?.bodyHash !== bodyHash };
}

function mustFit({ head, seats }: ClassRecords, rule: PostingBody['rule'], complete: boolean): void {
  const faults = checkRule(rule, {
    sheet: head.sheet,
    maneuvers: head.maneuvers.length,
    seats: complete ? seats.map(({ id, role }) => ({ judge: id, seat: role })) : undefined,
  });
  if (faults.length === 0) return;
  const errors = faults.map((fault) => ({
    field: `/placingRule${fault.at}`,
    message: ruleFaultSentence(fault),
  }));
  throw problem('class_cannot_be_tabulated', { errors });
}

/** Each seat's signed card read against the entries that went. */
export function readCards(records: Pick<ClassRecords, 'head' | 'seats' | 'entries'>) {
  const read = records.seats.map((seat) => readCard(records, seat));
  return {
    cards: read.filter((card): card is CountedCard => 'checked' in card),
    missing: read.filter((card): card is MissingCard => 'why' in card),
  };
}

function readCard(records: Pick<ClassRecords, 'head' | 'entries'>, seat: Seat): CountedCard | MissingCard {
  if (seat.content === null) return { seat, why: 'not-signed' };
  const { head, entries } = records;
  const content = withoutScratched(
    seat.content,
    new Set(entries.filter(({ status }) => went(status)).map(({ id }) => id)),
  );
  const check = checkCard({
    sheet: head.sheet,
    maneuvers: head.maneuvers,
    entries: entries.map(({ id, status }) => ({ id, going: went(status) })),
    content,
  });
  if (!check.ok) return { seat, why: 'to-be-amended' };
  return {
    seat,
    content,
    checked: check.card,
    onPanel: panelCard({ judge: seat.id, seat: seat.role }, check.card),
  };
}

/** Who was scratched after the card was signed no longer stands on it: the others close up. */
function withoutScratched(content: CardContent, going: ReadonlySet<string>): CardContent {
  const still = (groups: readonly (readonly string[])[]) =>
    groups.map((group) => group.filter((id) => going.has(id))).filter((group) => group.length > 0);
  const { goes, ownOrder, ranking } = content;
  return {
    goes: Object.fromEntries(Object.entries(goes).filter(([id]) => going.has(id))),
    ...(ownOrder === undefined ? {} : { ownOrder: still(ownOrder).filter((group) => group.length > 1) }),
    ...(ranking === undefined ? {} : { ranking: still(ranking) }),
  };
}
