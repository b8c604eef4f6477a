/** The classes of a show and where each of them stands: what exhibitors look at all day. */
import { isPractice, shownName } from '../office/index.ts';
import { problem } from '../platform/problems/index.ts';
import type { Sql } from '../platform/sql.ts';
import type { PostingSummary } from './class-records.ts';
import { type ClassState, classState } from './class-state.ts';
import { readClassesOnBoard, readClassOnBoard, readShow, readShowBoard } from './statements.ts';

interface BoardShow {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly timeZone: string;
  readonly kind: string;
}

interface BoardRow {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly ring: string | null;
  readonly status: string;
  readonly scheduledAt: Date | null;
  readonly calledAt: Date | null;
  readonly drawn: boolean;
  readonly seats: number;
  readonly signed: number;
  readonly draftGoes: number;
  readonly postingVersion: number | null;
  readonly postingState: PostingSummary['state'] | null;
  readonly postedAt: Date | null;
}

/** Throws not_found. */
export async function readBoard(sql: Sql, showId: string) {
  const show = await sql.row<BoardShow>(readShow, [showId]);
  if (show === undefined) throw problem('not_found', { detail: 'There is no such show.' });
  const rows = await sql.rows<BoardRow>(readShowBoard, [showId]);
  return { show: boardHead(show), classes: rows.map(boardLine) };
}

const boardHead = (show: BoardShow) => {
  const { id, place, timeZone } = show;
  return { id, name: shownName(show), place, timeZone, practice: isPractice(show) };
};

/** Some classes, in the order of the program. */
export async function readBoardLines(sql: Sql, classIds: readonly string[]) {
  return (await sql.rows<BoardRow>(readClassesOnBoard, [[...classIds]])).map(boardLine);
}

/** Throws not_found. */
export async function readClassState(sql: Sql, classId: string): Promise<ClassState> {
  const row = await sql.row<BoardRow>(readClassOnBoard, [classId]);
  if (row === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  return stateOf(row);
}

const stateOf = (row: BoardRow): ClassState =>
  classState({ ...row, called: row.calledAt !== null, lastPosting: row.postingState ?? undefined });

function boardLine(row: BoardRow) {
  const { id, number, name, ring, scheduledAt, seats, signed, postingVersion, postedAt } = row;
  return {
    id,
    number,
    name,
    ring,
    scheduledAt: scheduledAt?.toISOString() ?? null,
    state: stateOf(row),
    cardsIn: signed,
    cardsExpected: seats,
    postingVersion,
    postedAt: postedAt?.toISOString() ?? null,
  };
}
