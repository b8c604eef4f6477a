/** Published cards and results: the engine and the program must both give the published order. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readContest } from '../../../src/commands/contest/contest-form.ts';
import { placingInput } from '../../../src/commands/contest/contest-panel.ts';
import { recordText } from '../../../src/engine/numbers/number-text.ts';
import { placeClass } from '../../../src/engine/placing/place-class.ts';
import { replay } from '../../../src/engine/placing/replay.ts';
import { contestCases } from './published-case.ts';

const program = fileURLToPath(new URL('../../../src/commands/tabulate.ts', import.meta.url));
const cases = contestCases();

test('the folder holds published contests', () => {
  expect(cases.length).toBeGreaterThanOrEqual(9);
  for (const { source, address } of cases) expect([source, address]).not.toContain(undefined);
});

describe.each(cases)('$file ($source, $address)', ({ path, text, expected }) => {
  test('the engine places as published, and its reasons alone give that order', () => {
    const input = placingInput(readContest(text));
    const placing = placeClass(input);
    expect(Object.fromEntries(placing.placed.map(({ entry, place }) => [entry, place]))).toEqual(
      expected.places,
    );
    const totals = Object.fromEntries(
      placing.placed.map(({ entry, total }) => [entry, total && recordText(total)]),
    );
    if (expected.totals !== undefined) expect(totals).toEqual(expected.totals);
    const placeable = input.entries.filter((entry) => !isUnplaceable(placing, entry));
    const order = replay(placeable, placing.reasons).flat();
    expect(order.slice(0, placing.placed.length)).toEqual(placing.placed.map(({ entry }) => entry));
  });

  test('the program prints it', () => {
    const { stdout, stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', program, path], {
      encoding: 'utf8',
    });
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    const printed: {
      placings: { entry: string; place: number; total: string | null; tied: boolean; because: string[] }[];
    } = JSON.parse(stdout);
    expect(Object.fromEntries(printed.placings.map(({ entry, place }) => [entry, place]))).toEqual(
      expected.places,
    );
    if (expected.totals !== undefined) {
      expect(Object.fromEntries(printed.placings.map(({ entry, total }) => [entry, total]))).toEqual(
        expected.totals,
      );
    }
    expect(printed.placings.map(({ place }) => place)).toEqual(
      printed.placings.map(({ place }) => place).sort((a, b) => a - b),
    );
    for (const { because } of printed.placings) expect(because.join(' ')).toMatch(/\w.*\.$/);
  });
});

function isUnplaceable(placing: ReturnType<typeof placeClass>, entry: string): boolean {
  return placing.unplaced.some((one) => one.entry === entry && one.why.code !== 'beyond-places');
}
