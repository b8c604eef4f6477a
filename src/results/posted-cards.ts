/** The cards that a posting was made from, as they were signed then: later amendments do not show through. */
import type { LoadedSeat } from '../office/index.ts';
import type { ClassRecords, Reader } from './class-records.ts';
import type { PostingBody } from './posting-body.ts';
import { type CardOnRecord, type CountedCard, readCards } from './read-cards.ts';
import { readRevisions } from './statements.ts';

/** In the order of the panel; judges who have withdrawn since among them. */
export async function postedCards(
  reader: Reader,
  { ofClass }: ClassRecords,
  body: PostingBody,
): Promise<CountedCard<LoadedSeat>[]> {
  const ids = body.cards.map(({ revisionId }) => revisionId);
  const signed = await reader.sql.rows<CardOnRecord>(readRevisions, [ids]);
  return readCards(ofClass, { seats: ofClass.seats, entries: body.entries, signed }).cards;
}
