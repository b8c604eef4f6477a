/** A class tabulated from its signed cards: what a posting would say now, and what still stands in its way. */
import { appliedRule } from '../engine/placing/applied-rule.ts';
import { checkRule } from '../engine/placing/check-rule.ts';
import type { PlacingRule } from '../engine/placing/types.ts';
import { ruleFaultSentence } from '../engine/sentences/rule-sentences.ts';
import { told } from '../language/index.ts';
import type { LoadedClass, LoadedSeat } from '../office/index.ts';
import { fingerprint } from '../platform/canonical-json.ts';
import { problem } from '../platform/problems/index.ts';
import { type ClassRecords, type RecordsWithCards, sittingJudges } from './class-records.ts';
import { type PostingBody, placingInput, postingBody } from './posting-body.ts';
import { type CountedCard, type MissingCard, readCards } from './read-cards.ts';

export interface Tabulation {
  readonly records: ClassRecords;
  readonly body: PostingBody;
  /** SHA-256 of the body. */
  readonly bodyHash: string;
  readonly cards: readonly CountedCard<LoadedSeat>[];
  /** Judges without a card that counts: not signed, or an entry came in since and it must be amended. */
  readonly missing: readonly MissingCard<LoadedSeat>[];
  readonly changedSincePosting: boolean;
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
    message: told((speech) => ruleFaultSentence(fault, speech)),
  }));
  throw problem('class_cannot_be_tabulated', { errors });
}
