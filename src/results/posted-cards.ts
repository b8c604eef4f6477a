/** The cards that a posting was made from, as they were signed then: later amendments do not show through. */

import type { CardContent } from '../engine/sheets/card-types.ts';
import type { Sql } from '../platform/sql.ts';
import type { ClassRecords, Seat } from './class-records.ts';
import type { PostingBody } from './posting-body.ts';
import { readRevisions } from './statements.ts';
import { type CountedCard, readCards } from './tabulate-class.ts';

interface PostedRevision {
  readonly id: string;
  readonly revision: number;
  readonly content: CardContent;
  readonly seatId: string;
}

/** In the order of the panel. */
export async function postedCards(
  sql: Sql,
  records: ClassRecords,
  body: PostingBody,
): Promise<CountedCard[]> {
  const ids = body.cards.map(({ revisionId }) => revisionId);
  const revisions = new Map(
    (await sql.rows<PostedRevision>(readRevisions, [ids])).map((one) => [one.seatId, one]),
  );
  const then = new Map(body.entries.map((entry) => [entry.id, entry.status]));
  const entries = records.entries.flatMap((entry) => {
    const status = then.get(entry.id);
    return status === undefined ? [] : [{ ...entry, status }];
  });
  const seats = records.everySeat.flatMap((seat): Seat[] => {
    const signed = revisions.get(seat.id);
    if (signed === undefined) return [];
    return [{ ...seat, revisionId: signed.id, revision: signed.revision, content: signed.content }];
  });
  return readCards({ ...records, entries, seats }).cards;
}
