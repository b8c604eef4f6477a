/** The records of an archive, written as they stood: what is named before what names it. */
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { type FieldFault, problem } from '../../platform/problems/index.ts';
import { json, type Sql, type Statement } from '../../platform/sql.ts';
import type { Archive } from '../form/archive.ts';
import { type StoredTable, writeStatement } from '../stored/table.ts';
import { lineTable, sheetTable, showTable, tables } from '../stored/tables.ts';

const findShow: Statement = { name: 'archive.find-show', text: 'SELECT id FROM show WHERE id = $1::uuid' };
const findPhones: Statement = {
  name: 'archive.find-phones',
  text: 'SELECT thumbprint FROM phone WHERE thumbprint = ANY ($1::text[])',
};
const setHead: Statement = {
  name: 'archive.set-head',
  text: 'UPDATE ledger_head SET sequence = $2, hash = $3 WHERE ledger_id = $1::uuid',
};
/** A key that is known here, as our own or from another archive, stays as it is. */
const addKey: Statement = {
  name: 'archive.add-key',
  text: `INSERT INTO signing_key (kid, jwk, source, added_at) VALUES ($1, $2::jsonb, 'imported', $3)
         ON CONFLICT (kid) DO NOTHING`,
};

/** Throws archive_conflicts. */
export async function writeShow(
  { clock, keys: own }: AppParts,
  { sql }: SqlTransaction,
  archive: Archive,
): Promise<void> {
  await mustBeOnlyHere(sql, archive);
  const sheetIds = await settleSheets(sql, archive.sheets);
  const rehearsed = await sql.row(findShow, [archive.show.rehearsalOfId]);
  const rehearsalOfId = rehearsed === undefined ? null : archive.show.rehearsalOfId;
  await write(sql, showTable, [{ ...archive.show, rehearsalOfId }]);
  const onSheet = <Row extends { readonly sheetId: string }>(rows: readonly Row[]) =>
    rows.map((row) => ({ ...row, sheetId: sheetIds.get(row.sheetId) ?? row.sheetId }));
  const lists = { ...archive, classes: onSheet(archive.classes), cards: onSheet(archive.cards) };
  for (const [list, stored] of Object.entries(tables)) {
    await write(sql, stored as StoredTable<unknown>, lists[list as keyof typeof tables]);
  }
  await write(
    sql,
    lineTable,
    archive.lines.map((line) => ({ ...line, ledgerId: archive.show.id })),
  );
  await sql.rows(setHead, [archive.show.id, archive.head.sequence, archive.head.hash]);
  for (const { kid, jwk } of archive.keys) {
    if (!own.publicKeys.some((key) => key.kid === kid)) await sql.rows(addKey, [kid, json(jwk), clock.now()]);
  }
}

async function write<Row>(sql: Sql, stored: StoredTable<Row>, rows: readonly unknown[]): Promise<void> {
  if (rows.length > 0) await sql.rows(writeStatement(stored), [json(rows)]);
}

/** A phone belongs to one show. */
async function mustBeOnlyHere(sql: Sql, { phones }: Archive): Promise<void> {
  const found = await sql.rows<{ thumbprint: string }>(findPhones, [
    phones.map(({ thumbprint }) => thumbprint),
  ]);
  const taken = new Set(found.map(({ thumbprint }) => thumbprint));
  const errors: FieldFault[] = phones.flatMap(({ thumbprint }, index) =>
    taken.has(thumbprint)
      ? [{ field: `/phones/${index}`, message: 'a phone with this key is paired with another show here' }]
      : [],
  );
  if (errors.length > 0) throw problem('archive_conflicts', { errors });
}

interface KnownSheet {
  readonly id: string;
  readonly hash: string;
}

const findSheet: Statement = {
  name: 'archive.find-sheet',
  text: 'SELECT id, hash FROM score_sheet WHERE code = $1 AND version = $2',
};

/** Score sheets belong to no show. By its id in the archive: the id here, of one that was there or is added. */
async function settleSheets(sql: Sql, sheets: Archive['sheets']): Promise<ReadonlyMap<string, string>> {
  const ids = new Map<string, string>();
  for (const [index, sheet] of sheets.entries()) {
    const known = await sql.row<KnownSheet>(findSheet, [sheet.code, sheet.version]);
    if (known !== undefined && known.hash !== sheet.hash) {
      const message = `${sheet.code}, version ${sheet.version}, is another sheet here`;
      throw problem('archive_conflicts', { errors: [{ field: `/sheets/${index}`, message }] });
    }
    if (known === undefined) await write(sql, sheetTable, [{ ...sheet, origin: 'added' }]);
    ids.set(sheet.id, known?.id ?? sheet.id);
  }
  return ids;
}
