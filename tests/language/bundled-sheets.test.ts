/** A family reads a penalty of a bundled sheet in its own language. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { labelWords } from '../../src/engine/sentences/score-sentences.ts';
import { makeSpeech } from '../../src/engine/sentences/speech.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { english, speeches } from '../../src/language/index.ts';

const folder = new URL('../../seed/sheets/', import.meta.url);
const sheets = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as ScoreSheet);

const labels = sheets.flatMap((sheet) => [
  ...('penalties' in sheet ? sheet.penalties : []),
  ...('extras' in sheet ? sheet.extras : []),
  ...('collectives' in sheet ? sheet.collectives : []),
]);

describe.each([...speeches])('the labels of the bundled sheets in "%s"', (_, speech) => {
  test('are each told', () => {
    const unknown = makeSpeech('none', []);
    for (const { label } of labels) {
      const told = labelWords(label, speech);
      if (speech === english) expect(told).toBe(label);
      else expect(told).not.toBe(labelWords(label, unknown));
    }
  });
});

test('a label that a show wrote itself stays as it is', () => {
  for (const speech of speeches.values()) expect(labelWords('Trot too fast', speech)).toBe('Trot too fast');
});
