/** All of one show as it stands at one moment. */
import { kidOf } from '../../evidence/index.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Sql, Statement } from '../../platform/sql.ts';
import type { Archive, UnsignedArchive } from '../form/archive.ts';
import { readStatement, type StoredTable } from '../stored/table.ts';
import { keyTable, lineTable, sheetTable, showTable, tables } from '../stored/tables.ts';

/** What others commit in the meantime is not seen: cards, ledger and head are of one moment. */
const oneMoment: Statement = {
  name: 'archive.one-moment',
  text: 'SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY',
};

export type ShowRecords = Omit<UnsignedArchive, 'form' | 'names' | 'exportedAt'>;

/** Takes the isolation of `tx`, so it must be the first that is done in it. Throws not_found. */
export async function readShow({ sql }: SqlTransaction, showId: string): Promise<ShowRecords> {
  await sql.rows(oneMoment);
  const show = await sql.row<Archive['show']>(readStatement(showTable), [showId]);
  if (show === undefined) throw problem('not_found', { detail: 'There is no such show.' });
  const lists = await readLists(sql, showId);
  const sealed = await sql.rows<Archive['lines'][number] & { ledgerId: string }>(readStatement(lineTable), [
    showId,
  ]);
  const lines = sealed.map(({ ledgerId: _, ...line }) => line);
  const sheets = await sql.rows<Archive['sheets'][number]>(readStatement(sheetTable), [showId]);
  const keys = await readKeys(sql, [
    ...lines.map(({ seal }) => seal),
    ...lists.postings.map(({ jws }) => jws),
  ]);
  const last = lines.at(-1);
  if (last === undefined) throw new Error('a show without a ledger');
  return { head: { sequence: last.sequence, hash: last.hash }, show, ...lists, sheets, lines, keys };
}

type Lists = { [Name in keyof typeof tables]: Archive[Name] };

async function readLists(sql: Sql, showId: string): Promise<Lists> {
  const lists: Record<string, unknown> = {};
  for (const [list, stored] of Object.entries(tables)) {
    lists[list] = await sql.rows(readStatement(stored as StoredTable<unknown>), [showId]);
  }
  // Each list was read by the description of its own rows.
  return lists as unknown as Lists;
}

/** The public keys that something of the show was signed by. */
function readKeys(sql: Sql, signed: readonly string[]): Promise<Archive['keys']> {
  const kids = new Set(signed.map(kidOf));
  return sql.rows<Archive['keys'][number]>(readStatement(keyTable), [[...kids]]);
}
