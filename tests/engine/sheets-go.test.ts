import { describe, expect, it } from 'vitest';
import { recordText } from '../../src/engine/numbers/number-text.ts';
import { draftFaults, runningScore, scoreGo } from '../../src/engine/sheets/score-go.ts';
import type { Go } from '../../src/engine/sheets/types.ts';
import { faultsOf, maneuvers, marked, pattern, scored, total } from './sheets-examples.ts';

const three = maneuvers(3);
const clean: Go = { maneuvers: marked('0.5', '1', '-0.5'), extras: { form: '3' } };

describe('a go on a pattern sheet', () => {
  it('is base + maneuvers + form - penalties: 70 + 1 + 3 - (3 + 5) = 66', () => {
    const penalties = [{ code: 'minor', position: 2 }, { code: 'major' }];
    expect(total(pattern, three, { ...clean, penalties })).toBe('66');
  });

  it('takes the same penalty as often as it was entered', () => {
    const penalties = Array.from({ length: 4 }, () => ({ code: 'minor', position: 1 }));
    expect(total(pattern, three, { ...clean, penalties })).toBe('62');
  });

  it('multiplies a mark by the coefficient of its maneuver', () => {
    expect(total(pattern, maneuvers(3, ['1', '2', '0.5']), clean)).toBe('75.25');
  });

  it('shows each part that the score is the sum of', () => {
    const { parts } = scored(pattern, three, { ...clean, penalties: [{ code: 'severe', position: 3 }] });
    expect(parts.maneuvers.map(({ position, counts }) => [position, counts && recordText(counts)])).toEqual([
      [1, '0.5'],
      [2, '1'],
      [3, '-0.5'],
    ]);
    expect(parts.extras.map(({ code, counts }) => [code, recordText(counts)])).toEqual([['form', '3']]);
    expect(parts.penalties.map((one) => [one.code, one.position, recordText(one.points)])).toEqual([
      ['severe', 3, '10'],
    ]);
  });

  it('does not care in which order the maneuvers were marked', () => {
    const backwards = { ...clean, maneuvers: [...(clean.maneuvers ?? [])].reverse() };
    expect(scored(pattern, three, backwards)).toEqual(scored(pattern, three, clean));
  });

  it('never goes below the lower limit, and shows that it would have', () => {
    const penalties = Array.from({ length: 8 }, () => ({ code: 'severe' }));
    const { score, flags } = scored(pattern, three, { ...clean, penalties });
    expect(score && recordText(score)).toBe('0');
    expect(flags).toEqual([{ kind: 'lower-limit', sum: '-6' }]);
    expect(total({ ...pattern, lowest: null }, three, { ...clean, penalties })).toBe('-6');
  });

  it('is refused where the total is outside the range of the sheet', () => {
    const sheet = { ...pattern, totalRange: { low: '0', high: '73.5' } };
    expect(faultsOf(sheet, three, clean)).toEqual(['total_out_of_range ']);
    expect(faultsOf({ ...sheet, totalRange: { low: '0', high: '74' } }, three, clean)).toEqual([]);
  });
});

describe('a mark that the sheet does not allow', () => {
  it.each([
    ['0.25', 'mark_off_step'],
    ['3.5', 'mark_out_of_range'],
    ['-3.5', 'mark_out_of_range'],
    ['NaN', 'mark_not_a_number'],
    ['Infinity', 'mark_not_a_number'],
    ['1e309', 'mark_not_a_number'],
    ['1e0', 'mark_not_a_number'],
    ['½', 'mark_not_a_number'],
    ['1/2', 'mark_not_a_number'],
    ['-0', 'mark_not_a_number'],
    ['-0.0', 'mark_not_a_number'],
    ['', 'mark_not_a_number'],
    [' 1', 'mark_not_a_number'],
    ['1\n', 'mark_not_a_number'],
    ['+1', 'mark_not_a_number'],
    ['01', 'mark_not_a_number'],
    ['.5', 'mark_not_a_number'],
    ['0x1', 'mark_not_a_number'],
    ['1,5', 'mark_not_a_number'],
    ['٣', 'mark_not_a_number'],
    ['0.(3)', 'mark_not_a_number'],
    ['9'.repeat(1_000_000), 'mark_not_a_number'],
    [`0.${'0'.repeat(100_000)}`, 'mark_not_a_number'],
  ])('%.20j is a fault, %s, and names its place', (mark, code) => {
    const result = scoreGo(pattern, three, { ...clean, maneuvers: marked('0', mark, '0') });
    expect(result).toMatchObject({
      ok: false,
      faults: [
        {
          ...{ code, at: '/maneuvers/1/mark', position: 2 },
          allowed: { kind: 'range', low: '-3', high: '3', step: '0.5' },
        },
      ],
    });
    expect(JSON.stringify(result).length).toBeLessThan(400);
  });

  it.each(['0', '0.0', '0.50', '-3', '3', '2.5', '1.500000000'])('%j is allowed', (mark) => {
    expect(faultsOf(pattern, three, { ...clean, maneuvers: marked('0', mark, '0') })).toEqual([]);
  });

  it('is a fault too where somebody hands in something that is not text', () => {
    const go = {
      ...clean,
      maneuvers: [{ position: 1, mark: 0.5 }, { position: 2 }, { position: 3, mark: null }],
    };
    expect(faultsOf(pattern, three, go as unknown as Go)).toEqual([
      'mark_not_a_number /maneuvers/0/mark',
      'mark_not_a_number /maneuvers/1/mark',
      'mark_not_a_number /maneuvers/2/mark',
    ]);
  });
});

describe('the faults of a go', () => {
  it('come all at once', () => {
    const go: Go = {
      maneuvers: [
        { position: 1, mark: '0.25' },
        { position: 1, mark: '0' },
        { position: 9, mark: '0' },
      ],
      extras: { form: '6', style: '1' },
      penalties: [
        { code: 'speeding', position: 1 },
        { code: 'minor', position: 7 },
      ],
      ruling: { code: 'no-show' },
      errorsOfCourse: 1,
      mark: '80',
    };
    expect(faultsOf(pattern, three, go).sort()).toEqual([
      'extra_unknown /extras/style',
      'maneuver_twice /maneuvers/1/position',
      'maneuver_unknown /maneuvers/2/position',
      'maneuver_unknown /penalties/1/position',
      'mark_missing /maneuvers',
      'mark_missing /maneuvers',
      'mark_off_step /maneuvers/0/mark',
      'mark_out_of_range /extras/form',
      'not_on_this_sheet /errorsOfCourse',
      'not_on_this_sheet /mark',
      'penalty_unknown /penalties/0/code',
      'ruling_unknown /ruling/code',
    ]);
  });

  it('name each maneuver that has no mark yet, and the form', () => {
    const result = scoreGo(pattern, three, { maneuvers: marked('0') });
    expect(result).toMatchObject({
      faults: [
        { code: 'mark_missing', position: 2 },
        { code: 'mark_missing', position: 3 },
        { code: 'extra_missing', at: '/extras/form' },
      ],
    });
  });

  it.each(['constructor', '__proto__', 'toString', 'hasOwnProperty'])(
    'take %s for an unknown code like any other',
    (code) => {
      const extras = JSON.parse(`{ "form": "1", ${JSON.stringify(code)}: "1" }`) as Record<string, string>;
      expect(faultsOf(pattern, three, { ...clean, extras })).toEqual([`extra_unknown /extras/${code}`]);
      const go = { ...clean, penalties: [{ code }], ruling: { code } } as unknown as Go;
      expect(faultsOf(pattern, three, go)).toEqual([
        'penalty_unknown /penalties/0/code',
        'ruling_unknown /ruling/code',
      ]);
    },
  );
});

describe('a ruling', () => {
  const ruled = (code: NonNullable<Go['ruling']>['code']): Go => ({ ...clean, ruling: { code } });

  it('that places below keeps the score and changes the status', () => {
    const { tier, score } = scored(pattern, three, ruled('off-pattern'));
    expect([tier, score && recordText(score)]).toEqual(['placed-below', '74']);
  });

  it('that bars from a place leaves no score, and the marks may be missing', () => {
    expect(scored(pattern, three, ruled('disqualified'))).toMatchObject({
      tier: 'not-placed',
      score: undefined,
    });
    const bare = scored(pattern, three, { ruling: { code: 'disqualified' } });
    expect(bare).toMatchObject({ tier: 'not-placed', score: undefined, flags: [] });
    expect(bare.parts.ruling).toEqual({ code: 'disqualified', effect: { kind: 'not-placed' } });
  });

  it('that bars from a place does not make a wrong mark right', () => {
    const go: Go = { maneuvers: marked('0.25'), ruling: { code: 'disqualified' } };
    expect(faultsOf(pattern, three, go)).toEqual(['mark_off_step /maneuvers/0/mark']);
  });

  it('that bars from a place needs no total inside the range', () => {
    const sheet = { ...pattern, totalRange: { low: '0', high: '72' } };
    expect(faultsOf(sheet, three, ruled('disqualified'))).toEqual([]);
  });

  it('takes points off where the sheet says so', () => {
    expect(total(pattern, three, ruled('excused'))).toBe('61.5');
  });

  it('at the discretion of the judge leaves the score, flagged', () => {
    const { tier, score, flags } = scored(pattern, three, ruled('retired'));
    expect([tier, score && recordText(score)]).toEqual(['kept-pattern', '74']);
    expect(flags).toEqual([{ kind: 'score-stands', ruling: 'retired' }]);
  });
});

describe('a maneuver that was not seen', () => {
  const unseen: Go = { ...clean, maneuvers: marked('0.5', null, '-0.5') };

  it('is left out, flagged, and is no zero', () => {
    const { score, flags, parts } = scored(pattern, three, unseen);
    expect(score && recordText(score)).toBe('73');
    expect(flags).toEqual([{ kind: 'not-seen', position: 2, treatedAs: 'left-out' }]);
    expect(parts.maneuvers[1]).toEqual({ position: 2, mark: undefined, counts: undefined });
  });

  const strict = { ...pattern, notSeen: 'absent' } as const;

  it('that counts as not shown leaves the go incomplete until the judge rules on the pattern', () => {
    expect(faultsOf(strict, three, unseen)).toEqual(['ruling_missing /ruling']);
    const { tier, score, flags, parts } = scored(strict, three, {
      ...unseen,
      ruling: { code: 'off-pattern' },
    });
    expect([tier, score && recordText(score)]).toEqual(['placed-below', '73']);
    expect(flags).toEqual([{ kind: 'not-seen', position: 2, treatedAs: 'absent' }]);
    expect(parts.maneuvers[1]?.counts && recordText(parts.maneuvers[1].counts)).toBe('0');
  });
});

describe('a go that is still being written', () => {
  it('has only faults of what is wrong, not of what is missing', () => {
    expect(draftFaults(pattern, three, {})).toEqual([]);
    expect(draftFaults(pattern, three, { maneuvers: marked('0.25', '1') })).toMatchObject([
      { code: 'mark_off_step', position: 1 },
    ]);
  });

  it('has a total so far, and says what is missing', () => {
    const running = runningScore(pattern, three, {
      maneuvers: marked('0.5'),
      penalties: [{ code: 'minor' }],
    });
    expect(running.score && recordText(running.score)).toBe('67.5');
    expect(running.faults.map(({ code, position }) => [code, position])).toEqual([
      ['mark_missing', 2],
      ['mark_missing', 3],
      ['extra_missing', undefined],
    ]);
  });

  it('leaves a wrong mark out of the total so far', () => {
    const running = runningScore(pattern, three, { maneuvers: marked('99', '1') });
    expect(running.score && recordText(running.score)).toBe('71');
  });
});
