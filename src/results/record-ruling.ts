/** A tie decided outside the arithmetic: kept with who and why, for ever. */
import { told } from '../language/index.ts';
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { json } from '../platform/sql.ts';
import { type RulingOnRecord, takeClassRecords } from './class-records.ts';
import { rulingFingerprint } from './ruling-fingerprint.ts';
import { addRuling } from './statements.ts';
import { type Tabulation, tabulateClass } from './tabulate-class.ts';

export interface NewRuling {
  readonly kind: RulingOnRecord['kind'];
  readonly order: readonly (readonly string[])[];
  readonly decidedBy: string;
  readonly why: string;
  /** The office account that records it. */
  readonly recordedBy: string;
}

/**
 * Records the ruling and returns it. Throws not_found, class_cannot_be_tabulated, cards_missing, and
 * ruling_does_not_fit where its entries are not one tie that is open, or that an earlier ruling decided.
 */
export async function recordRuling(
  tx: Transaction,
  { parts, classId, ruling }: { parts: AppParts; classId: string; ruling: NewRuling },
): Promise<RulingOnRecord> {
  const tabulation = tabulateClass(await takeClassRecords(tx, classId));
  mustBeIn(tabulation);
  mustFit(ruling, tabulation);
  const { kind, order, decidedBy, why, recordedBy } = ruling;
  const [id, ruledAt, decision] = [parts.ids.next(), parts.clock.now(), { order }];
  const row = [id, classId, kind, order.flat(), json(decision), decidedBy, why, ruledAt, recordedBy];
  await tx.sql.rows(addRuling, row);
  const { showId } = tabulation.records.ofClass;
  const made = { id, kind, decision, decidedBy, why, ruledAt };
  const body = { classId, rulingId: id, kind, rulingHash: rulingFingerprint({ ...made, classId }) };
  await appendLine(parts, tx, { showId, type: 'ruling.made', body, at: ruledAt });
  return made;
}

/** The tie of today may be none once the last card is in. */
function mustBeIn({ missing }: Tabulation): void {
  if (missing.length === 0) return;
  const errors = missing.map(({ seat }) => ({
    field: '/order',
    message: told((speech) =>
      speech.say('card-of-judge-not-in', { judge: speech.say('name-judge', { number: seat.seatOrder }) }),
    ),
  }));
  throw problem('cards_missing', { detail: 'A tie is ruled on once every card is in.', errors });
}

type RulingFault = 'too-few' | 'twice' | 'declined' | 'share' | 'no-tie';

function mustFit({ kind, order }: NewRuling, { body, records }: Tabulation): void {
  const about = order.flat();
  const field = '/order';
  const refuse = (fault: RulingFault) => {
    const message = told((speech) => speech.say(`ruling-fault-${fault}`));
    return problem('ruling_does_not_fit', { errors: [{ field, message }] });
  };
  if (about.length < 2) throw refuse('too-few');
  if (new Set(about).size !== about.length) throw refuse('twice');
  if (kind === 'declined' && order.length > 1) throw refuse('declined');
  if (kind === 'share' && order.length > 1) throw refuse('share');
  const ties = body.results.flatMap(({ openTies }) => openTies.map(({ entries }) => entries));
  const earlier = records.rulings.map(({ decision }) => decision.order.flat());
  const isOne = [...ties, ...earlier].some(
    (tied) => tied.length === about.length && tied.every((id) => about.includes(id)),
  );
  if (!isOne) throw refuse('no-tie');
}
