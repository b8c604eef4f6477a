/** A class tabulated from its signed cards: what a posting would say now, and what still stands in its way. */
import { appliedRule } from '../engine/placing/applied-rule.ts';
import { checkRule } from '../engine/placing/check-rule.ts';
import { panelCard } from '../engine/placing/panel-card.ts';
import type { PanelCard, PlacingRule } from '../engine/placing/types.ts';
import { ruleFaultSentence } from '../engine/sentences/rule-sentences.ts';
import type { CardContent, CheckedCard } from '../engine/sheets/card-types.ts';
import { checkCard } from '../engine/sheets/check-card.ts';
import { isGoing, type LoadedClass, type LoadedSeat } from '../office/index.ts';
import { fingerprint } from '../platform/canonical-json.ts';
import { problem } from '../platform/problems/index.ts';
import { type ClassRecords, type RecordsWithCards, sittingJudges } from './class-records.ts';
import { type BodyEntry, type PostingBody, placingInput, postingBody } from './posting-body.ts';

export interface Tabulation {
  readonly records: ClassRecords;
  readonly body: PostingBody;
  /** SHA-256 of the body. */
  readonly bodyHash: string;
  readonly cards: readonly CountedCard[];
  /** Judges without a card that counts: not signed, or an entry came in since and it must be amended. */
  readonly missing: readonly MissingCard[];
  readonly changedSincePosting: boolean;
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
export interface CountedCard {
  readonly seat: LoadedSeat;
  readonly signed: CardOnRecord;
  readonly checked: CheckedCard;
  readonly onPanel: PanelCard;
}

export interface MissingCard {
  readonly seat: LoadedSeat;
  readonly why: 'not-signed' | 'to-be-amended';
}

/** Throws class_cannot_be_tabulated where rule, sheet and panel do not fit each other. */
export function tabulateClass(records: RecordsWithCards): Tabulation {
  const { ofClass, rulings, lastPosting } = records;
  const seats = sittingJudges(records);
  const rule = appliedRule({ ...ofClass, seats });
  const entries = ofClass.entries.map(({ id, backNumber, status }) => ({ id, backNumber, status }));
  const { cards, missing } = readCards(ofClass, { seats, entries, signed: records.signed });
  const isComplete = missing.length === 0;
  mustFit(ofClass, rule, isComplete ? seats : undefined);
  const { code, version } = ofClass.sheet.definition;
  const head = {
    classId: ofClass.id,
    classNumber: ofClass.number,
    sheet: { code, version, hash: ofClass.sheet.hash },
    panel: seats.map(({ id, seatOrder, role }) => ({ seatId: id, seatOrder, role })),
    entries,
    cards: cards.map(({ signed: { seatId, revisionId, revision, contentHash } }) => ({
      ...{ seatId, revisionId, revision, contentHash },
    })),
  };
  // A referee's panel says nothing before it is whole.
  const canPlace = isComplete || rule.merge.method !== 'two-judges-and-referee';
  const body = postingBody(
    head,
    placingInput(head, {
      cards: canPlace ? cards.map(({ onPanel }) => onPanel) : [],
      rule,
      decisions: rulings.map(({ id, kind, decision }) => ({ id, kind, order: decision.order })),
    }),
  );
  const bodyHash = fingerprint(body);
  return { records, body, bodyHash, cards, missing, changedSincePosting: lastPosting?.bodyHash !== bodyHash };
}

function mustFit(
  { sheet, maneuvers }: LoadedClass,
  rule: PlacingRule,
  seats: readonly LoadedSeat[] | undefined,
): void {
  const faults = checkRule(rule, {
    sheet: sheet.definition,
    maneuvers: maneuvers.length,
    seats: seats?.map(({ id, role }) => ({ judge: id, seat: role })),
  });
  if (faults.length === 0) return;
  const errors = faults.map((fault) => ({
    field: `/placingRule${fault.at}`,
    message: ruleFaultSentence(fault),
  }));
  throw problem('class_cannot_be_tabulated', { errors });
}

interface Signed {
  readonly seats: readonly LoadedSeat[];
  readonly entries: readonly BodyEntry[];
  readonly signed: readonly CardOnRecord[];
}

/** Each seat's signed card read against the entries that went. */
export function readCards(ofClass: LoadedClass, { seats, entries, signed }: Signed) {
  const cards: CountedCard[] = [];
  const missing: MissingCard[] = [];
  for (const seat of seats) {
    const card = signed.find(({ seatId }) => seatId === seat.id);
    const checked = card && readCard(ofClass, entries, card.content);
    if (card === undefined) missing.push({ seat, why: 'not-signed' });
    else if (checked === undefined) missing.push({ seat, why: 'to-be-amended' });
    else {
      const onPanel = panelCard({ judge: seat.id, seat: seat.role }, checked);
      cards.push({ seat, signed: card, checked, onPanel });
    }
  }
  return { cards, missing };
}

function readCard({ sheet, maneuvers }: LoadedClass, entries: readonly BodyEntry[], content: CardContent) {
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
