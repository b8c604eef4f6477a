/** The lines of a ledger that answer a question of the office, in their order. */
import type { LineActor } from '../evidence/index.ts';
import type { Sql, Statement } from '../platform/sql.ts';
import { eventCatalogue, lineTypes } from './event-catalogue.ts';
import type { LedgerQuery } from './ledger-schemas.ts';
import { headOf } from './read-lines.ts';

interface FoundLine {
  readonly sequence: number;
  readonly type: string;
  readonly at: Date;
  readonly actor: LineActor;
  readonly body: Record<string, unknown>;
  readonly previousHash: string | null;
  readonly seal: string;
  readonly hash: string;
}

const find: Statement = {
  name: 'ledger.find-lines',
  text: `
    SELECT sequence, type, at, actor, body, previous_hash AS "previousHash", hash, seal FROM ledger_line
    WHERE ledger_id = $1::uuid AND sequence > $2
      AND ($4::text[] IS NULL OR type = ANY ($4))
      AND ($5::text IS NULL OR body ->> 'classId' = $5)
      AND ($6::text IS NULL OR $6 IN (actor ->> 'account', actor ->> 'phone', actor ->> 'person'))
      AND ($7::timestamptz IS NULL OR at >= $7)
      AND ($8::timestamptz IS NULL OR at < $8)
    ORDER BY sequence LIMIT $3`,
};

/** `ledgerId`: a show, or `ofTheService`. */
export async function findLines(sql: Sql, ledgerId: string, query: LedgerQuery) {
  const { after, limit, type, classId, actor, from, to } = query;
  const filters = [type ?? null, classId ?? null, actor ?? null, from ?? null, to ?? null];
  const found = await sql.rows<FoundLine>(find, [ledgerId, after, limit + 1, ...filters]);
  const shown = found.slice(0, limit);
  const items = shown.map((line) => ({ ...line, what: meaningOf(line.type), at: line.at.toISOString() }));
  const nextAfter = found.length > limit ? (shown.at(-1)?.sequence ?? null) : null;
  return { ledgerId, items, nextAfter, head: await presentHead(sql, ledgerId) };
}

/** `{ sequence: 0, hash: null }` where there is no line yet. */
export const presentHead = async (sql: Sql, ledgerId: string) =>
  (await headOf(sql, ledgerId)) ?? { sequence: 0, hash: null };

function meaningOf(type: string): string {
  const known = lineTypes.find((one) => one === type);
  return known === undefined ? 'Something that this version does not know.' : eventCatalogue[known].what;
}
