/** The classes of some entries, each with where it stands and, once it is posted, with the places in it. */

import type { Sql, Statement } from '../platform/sql.ts';
import { readBoardLines } from '../results/index.ts';

/** Where one entry stands in one result of a posted class; `judge` where each judge is placed separately. */
interface PlaceInResult {
  readonly judge: { readonly seatId: string; readonly seatOrder: number; readonly name: string } | null;
  readonly place: number | null;
  /** Of so many that are placed. */
  readonly of: number;
  readonly tied: boolean;
  /** Record text; `null` where there is none. */
  readonly total: string | null;
}

interface ClassEntryRow {
  readonly entryId: string;
  readonly classEntryId: string;
  readonly classId: string;
  readonly discipline: string;
  readonly division: string | null;
  readonly publishCards: 'never' | 'with-posting' | 'when-official';
  readonly goPosition: number | null;
  readonly status: string;
  readonly posting: {
    readonly id: string;
    readonly version: number;
    readonly state: 'provisional' | 'official' | 'corrected';
    readonly postedAt: string;
  } | null;
  readonly results: PlaceInResult[];
}

/** The posting holds ids and back numbers; what one entry got is picked out of the last one. */
const readClassEntries: Statement = {
  name: 'look-up.read-class-entries',
  text: `
    SELECT class_entry.entry_id AS "entryId", class_entry.id AS "classEntryId", class_entry.class_id AS "classId",
           show_class.discipline, show_class.division, show_class.publish_cards AS "publishCards",
           class_entry.go_position AS "goPosition", class_entry.status,
           CASE WHEN last.id IS NOT NULL THEN jsonb_build_object(
             'id', last.id, 'version', last.version, 'state', last.state,
             'postedAt', to_char(last.posted_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) END AS posting,
           coalesce(places.results, '[]'::jsonb) AS results
    FROM class_entry
    JOIN show_class ON show_class.id = class_entry.class_id
    LEFT JOIN LATERAL (SELECT id, version, state, posted_at, snapshot FROM posting
                       WHERE class_id = class_entry.class_id ORDER BY version DESC LIMIT 1) last ON true
    LEFT JOIN LATERAL (
      SELECT jsonb_agg(jsonb_build_object(
               'judge', CASE WHEN seat.id IS NOT NULL THEN jsonb_build_object(
                 'seatId', seat.id, 'seatOrder', seat.seat_order, 'name', person.name) END,
               'place', mine.line -> 'place', 'total', mine.line -> 'total',
               'tied', coalesce(mine.line -> 'tied', 'false'::jsonb),
               'of', jsonb_array_length(one.result -> 'placed')) ORDER BY one.at) AS results
      FROM jsonb_array_elements(last.snapshot -> 'results') WITH ORDINALITY AS one (result, at)
      LEFT JOIN panel_seat seat ON seat.id = (one.result ->> 'judge')::uuid
      LEFT JOIN person ON person.id = seat.person_id
      LEFT JOIN LATERAL (SELECT line FROM jsonb_array_elements(one.result -> 'placed') line
                         WHERE line ->> 'entry' = class_entry.id::text) mine ON true) places ON true
    WHERE class_entry.entry_id = ANY ($1::uuid[]) AND class_entry.status <> 'moved'`,
};

type BoardLine = Awaited<ReturnType<typeof readBoardLines>>[number];

/** By entry, in the order of the program. */
export async function classLinesOf(
  sql: Sql,
  entryIds: readonly string[],
): Promise<(entryId: string) => ClassLine[]> {
  const rows = await sql.rows<ClassEntryRow>(readClassEntries, [entryIds]);
  const classes = await readBoardLines(sql, [...new Set(rows.map(({ classId }) => classId))]);
  return (entryId) => {
    const own = rows.filter((row) => row.entryId === entryId);
    return classes.flatMap((line) => own.filter(({ classId }) => classId === line.id).map(lineWith(line)));
  };
}

const lineWith =
  ({ id: classId, number, name, ring, scheduledAt, state }: BoardLine) =>
  ({ classEntryId, discipline, division, publishCards, ...row }: ClassEntryRow) => ({
    ...{ classId, classEntryId, number, name, discipline, division, publishCards, ring, scheduledAt, state },
    ...{ goPosition: row.goPosition, status: row.status, posting: row.posting, results: row.results },
  });

export type ClassLine = ReturnType<ReturnType<typeof lineWith>>;
