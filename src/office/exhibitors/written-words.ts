/** Where a name stands in words that people wrote: reasons, remarks. Much of it is evidence, which nobody can change. */
import { z } from 'zod';
import type { SqlTransaction } from '../../platform/database.ts';
import type { Statement } from '../../platform/sql.ts';
import { id } from '../schemas/common.ts';

export const writtenPlaces = [
  'class-entry',
  'order-draw',
  'class-relation',
  'panel-seat',
  'card-draft',
  'card-revision',
  'paper-card',
  'ruling',
  'posting',
  'query',
] as const;

export const writtenPlace = z.strictObject({ record: z.enum(writtenPlaces), id });
export type WrittenPlace = z.infer<typeof writtenPlace>;

const find: Statement = {
  name: 'office.find-written-name',
  text: `
    WITH class AS (SELECT id FROM show_class WHERE show_id = $1::uuid),
    own_card AS (SELECT card.id FROM card JOIN class ON class.id = card.class_id),
    written (record, id, words) AS (
      SELECT 'class-entry', id, status_reason FROM class_entry WHERE show_id = $1::uuid
      UNION ALL SELECT 'order-draw', id, reason FROM order_draw WHERE class_id IN (SELECT id FROM class)
      UNION ALL SELECT 'class-relation', id, reason FROM class_relation WHERE show_id = $1::uuid
      UNION ALL SELECT 'panel-seat', id, withdrawn_why FROM panel_seat WHERE show_id = $1::uuid
      UNION ALL SELECT 'card-draft', card_id, content::text FROM card_draft_go WHERE card_id IN (SELECT id FROM own_card)
      UNION ALL SELECT 'card-revision', id, concat_ws(' ', content::text, amendment_reason)
                FROM card_revision WHERE card_id IN (SELECT id FROM own_card)
      UNION ALL SELECT 'paper-card', id, concat_ws(' ', reason, withdrawn_why)
                FROM paper_card WHERE class_id IN (SELECT id FROM class)
      UNION ALL SELECT 'ruling', id, concat_ws(' ', decided_by, why) FROM ruling WHERE class_id IN (SELECT id FROM class)
      UNION ALL SELECT 'posting', id, reason FROM posting WHERE class_id IN (SELECT id FROM class)
      UNION ALL SELECT 'query', id, concat_ws(' ', words, reached_by) FROM query WHERE show_id = $1::uuid
      UNION ALL SELECT 'query', query_id, answer.words
                FROM query_answer answer JOIN query ON query.id = answer.query_id WHERE show_id = $1::uuid)
    SELECT DISTINCT record, id FROM written WHERE words ~* $2 ORDER BY record, id`,
};

/** Any word of the name, as a whole word and in any case; "Ada" is not found in "Canada". */
export async function whereWritten(
  tx: SqlTransaction,
  { showId, name }: { readonly showId: string; readonly name: string },
): Promise<WrittenPlace[]> {
  const words = name.split(/\s+/u).filter((word) => [...word].length > 1);
  if (words.length === 0) return [];
  return tx.sql.rows<WrittenPlace>(find, [showId, `\\m(${words.map(literal).join('|')})\\M`]);
}

/** For a regular expression of PostgreSQL, where a backslash before any sign but a letter or digit takes it as it is. */
const literal = (word: string): string => word.replace(/[^\p{L}\p{M}\p{N}]/gu, '\\$&');
