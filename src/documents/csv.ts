/**
 * Tables as CSV (RFC 4180): comma, CRLF, every cell in quotes, UTF-8 with the mark by which Excel knows it.
 *
 * A spreadsheet runs a cell that begins with = + - @, a tab, a line end or a NUL as a formula, and a horse may be called
 * `=HYPERLINK(...)`. Such a cell begins with an apostrophe here, which spreadsheets show as text (OWASP, "CSV
 * Injection"; ASVS 5.0, 1.2.10). A plain number stays one: "-1.5" is a score and runs nothing.
 */
import { stringify } from 'csv-stringify/sync';

/** With the full-width forms, which some spreadsheets read as the plain ones. */
const formulaStart = /^[=+\-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20]/u;
const plainNumber = /^-?\d+(\.\d+)?$/;

export type Cell = string | number | null;

/** One row for each record, in the order of the columns; `null` is an empty cell. */
export function csvText<Column extends string>(
  columns: readonly Column[],
  rows: readonly Readonly<Record<Column, Cell>>[],
): string {
  return stringify([[...columns], ...rows.map((row) => columns.map((column) => row[column]))], {
    bom: true,
    quoted: true,
    record_delimiter: 'windows',
    cast: { string: withoutFormula },
  });
}

function withoutFormula(text: string): string {
  return formulaStart.test(text) && !plainNumber.test(text) ? `'${text}` : text;
}
