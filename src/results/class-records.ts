/** All that is on record about a class, as tabulating, posting and reading need it. */
import type { PlacingRule, TieDecision } from '../engine/placing/types.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { ScoreSheet, SheetManeuver } from '../engine/sheets/types.ts';
import { type PublicNameForm, publicName } from '../office/index.ts';
import { problem } from '../platform/problems/index.ts';
import type { Sql } from '../platform/sql.ts';
import { type ClassState, classState } from './class-state.ts';
import type { PostingBody } from './posting-body.ts';
import { readClass, readEntries, readLastPosting, readRulings, readSeats } from './statements.ts';

export interface ClassRecords {
  readonly head: ClassHead;
  /** Whose cards count: the judges who have not withdrawn. */
  readonly seats: readonly Seat[];
  /** Those who withdrew too, whom an earlier posting may name. */
  readonly everySeat: readonly Seat[];
  readonly entries: readonly EntryOnRecord[];
  readonly rulings: readonly RulingOnRecord[];
  readonly lastPosting: PostingOnRecord | undefined;
}

export interface ClassHead {
  readonly id: string;
  readonly showId: string;
  readonly number: number;
  readonly name: string;
  readonly discipline: string;
  readonly division: string | null;
  readonly youth: boolean;
  readonly status: string;
  readonly placingRule: PlacingRule;
  readonly placesGiven: number | null;
  readonly drawSeed: string;
  readonly publishCards: 'never' | 'with-posting' | 'when-official';
  readonly calledAt: Date | null;
  readonly sheetCode: string;
  readonly sheetVersion: number;
  readonly sheetHash: string;
  readonly sheet: ScoreSheet;
  readonly minorPublicName: PublicNameForm;
  readonly firstDay: string;
  readonly drawn: boolean;
  readonly maneuvers: readonly SheetManeuver[];
}

/** The last four are `null` until the card is signed. */
export interface Seat {
  readonly id: string;
  readonly seatOrder: number;
  readonly role: 'judge' | 'referee';
  readonly callOrder: number | null;
  readonly tieOrder: number | null;
  readonly judge: string;
  /** Left the panel: the card stays as evidence and counts no more. */
  readonly withdrawn: boolean;
  readonly draftGoes: number;
  readonly revisionId: string | null;
  readonly revision: number | null;
  readonly content: CardContent | null;
  readonly contentHash: string | null;
}

export interface EntryOnRecord {
  readonly id: string;
  readonly status: string;
  readonly goPosition: number | null;
  readonly backNumber: number;
  readonly name: string;
  readonly bornOn: string | null;
  readonly publicName: PublicNameForm | null;
}

export interface RulingOnRecord {
  readonly id: string;
  readonly kind: TieDecision['kind'];
  readonly decision: { readonly order: readonly (readonly string[])[] };
  readonly decidedBy: string;
  readonly why: string;
  readonly ruledAt: Date;
}

export interface PostingSummary {
  readonly id: string;
  readonly classId: string;
  readonly version: number;
  readonly state: 'provisional' | 'official' | 'corrected';
  readonly reason: string | null;
  readonly postedAt: Date;
  readonly bodyHash: string;
  readonly ruleHash: string;
}

export interface PostingOnRecord extends PostingSummary {
  readonly body: PostingBody;
}

/** Throws not_found. */
export async function loadClassRecords(sql: Sql, classId: string): Promise<ClassRecords> {
  const head = await sql.row<ClassHead>(readClass, [classId]);
  if (head === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  const everySeat = await sql.rows<Seat>(readSeats, [classId]);
  return {
    head,
    seats: everySeat.filter(({ withdrawn }) => !withdrawn),
    everySeat,
    entries: await sql.rows<EntryOnRecord>(readEntries, [classId]),
    rulings: await sql.rows<RulingOnRecord>(readRulings, [classId]),
    lastPosting: await sql.row<PostingOnRecord>(readLastPosting, [classId]),
  };
}

/** How an entry may be called in public. */
export function shownName({ head }: ClassRecords, entry: EntryOnRecord): string {
  const { backNumber } = entry;
  const { minorPublicName, firstDay, youth } = head;
  return publicName(entry, { backNumber, minorPublicName, firstDay, youthClass: youth });
}

export function stateOf({ head, seats, lastPosting }: ClassRecords): ClassState {
  const unsigned = seats.filter(({ revisionId }) => revisionId === null);
  return classState({
    status: head.status,
    drawn: head.drawn,
    called: head.calledAt !== null,
    seats: seats.length,
    signed: seats.length - unsigned.length,
    draftGoes: unsigned.reduce((goes, seat) => goes + seat.draftGoes, 0),
    lastPosting: lastPosting?.state,
  });
}
