import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkSheet } from '../../src/engine/sheets/check-sheet.ts';
import { runningScore, scoreGo } from '../../src/engine/sheets/score-go.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { scoreSheet } from '../../src/office/schemas/score-sheet.ts';
import { maneuvers } from './sheets-examples.ts';

const folder = new URL('../../seed/sheets/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const read = (name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as ScoreSheet;

describe('the score sheets that come with Ringledger', () => {
  it('cover each kind, and off pattern as below and as out', () => {
    const sheets = files.map(read);
    expect(new Set(sheets.map(({ kind }) => kind)).size).toBe(5);
    const offPattern = sheets.map(({ rulings }) => rulings['off-pattern']?.kind);
    expect(offPattern).toContain('placed-below');
    expect(offPattern).toContain('not-placed');
  });

  it.each(files)('%s has no fault, is what the API takes, and is named by its code', (name) => {
    const sheet = read(name);
    expect(checkSheet(sheet)).toEqual([]);
    expect(scoreSheet.parse(sheet)).toEqual(sheet);
    expect(`${sheet.code}.json`).toBe(name);
    expect(sheet.source).toMatch(/https?:\/\/|common practice, no source|from memory/);
  });

  it.each(files)('%s can be marked: nothing written is not wrong, and every penalty counts', (name) => {
    const sheet = read(name);
    const penalties = 'penalties' in sheet ? sheet.penalties.map(({ code }) => ({ code })) : [];
    const reading = runningScore(sheet, maneuvers(4), { penalties });
    expect(reading.faults.filter(({ code }) => !code.endsWith('_missing'))).toEqual([]);
    expect(reading.parts.penalties).toHaveLength(penalties.length);
  });

  it.each(files)('%s lets a judge disqualify without a mark', (name) => {
    const scored = scoreGo(read(name), maneuvers(4), { ruling: { code: 'disqualified' } });
    expect(scored).toMatchObject({ ok: true, score: { tier: 'not-placed', score: undefined } });
  });

  it('are all named in the index beside them', () => {
    const index = readFileSync(new URL('README.md', folder), 'utf8');
    for (const name of files) expect(index).toContain(`(${name})`);
  });
});
