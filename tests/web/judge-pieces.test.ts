/** What the screens of the judge are made of: keys out of a sheet's data, places, two versions of a go, news of a class. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Go } from '../../src/engine/sheets/types.ts';
import { changesBetween } from '../../src/web/judge/class/changes.ts';
import { partsOf, pickedGo } from '../../src/web/judge/conflict/differences.ts';
import type { DayClass, DayEntry } from '../../src/web/judge/desk/day-types.ts';
import { markLayout } from '../../src/web/judge/go/mark-layout.ts';
import { stepsOf } from '../../src/web/judge/go/steps.ts';
import { clockSeconds, clockText } from '../../src/web/judge/go/stop-watch.ts';
import {
  leveled,
  movedPlace,
  placedNext,
  placeOf,
  putBefore,
  takenOut,
} from '../../src/web/judge/places/ranking.ts';

describe('marks lie under the thumb as the sheet has them', () => {
  it('around zero: what adds above, what takes beneath, nearest to zero first', () => {
    expect(markLayout({ low: '-1.5', high: '1.5', step: '0.5' })).toEqual({
      is: 'balance',
      above: ['0.5', '1', '1.5'],
      beneath: ['-0.5', '-1', '-1.5'],
    });
  });

  it.each([
    ['0', '10', '0.5', 7, 21],
    ['0', '5', '0.5', 6, 11],
    ['1', '3', '1', 3, 3],
  ])('%s to %s by %s: %i columns of %i marks', (low, high, step, columns, count) => {
    const layout = markLayout({ low, high, step });
    expect(layout.is === 'rows' && [layout.columns, layout.marks.length]).toEqual([columns, count]);
  });

  it('0 to 100 by halves: the ten first, then the mark; every mark is there once', () => {
    const layout = markLayout({ low: '0', high: '100', step: '0.5' });
    const marks = layout.is === 'tens' ? layout.tens.flatMap((ten) => ten.marks) : [];
    expect(new Set(marks).size).toBe(201);
    expect(marks).toHaveLength(201);
  });

  it('a time is typed', () => {
    expect(markLayout({ low: '0.001', high: '999.999', step: '0.001' })).toEqual({ is: 'typed' });
  });
});

describe('places of a rail class', () => {
  it('are tapped one after the other, moved, set level, taken out', () => {
    const tapped = ['a', 'b', 'c'].reduce<readonly (readonly string[])[]>(placedNext, []);
    expect(movedPlace(tapped, 'c', -1)).toEqual([['a'], ['c'], ['b']]);
    expect(leveled(tapped, 'b')).toEqual([['a', 'b'], ['c']]);
    expect(placeOf(leveled(tapped, 'b'), 1)).toBe(3);
    expect(movedPlace([['a', 'b'], ['c']], 'b', 1)).toEqual([['a'], ['b'], ['c']]);
    expect(putBefore(tapped, 'c', 'a')).toEqual([['c'], ['a'], ['b']]);
    expect(takenOut(tapped, 'b')).toEqual([['a'], ['c']]);
  });

  it('whatever is done, nobody is lost, doubled, or invented', () => {
    const entry = fc.constantFrom('a', 'b', 'c', 'd');
    const step = fc.tuple(fc.constantFrom('up', 'down', 'level', 'before'), entry, fc.option(entry));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        let ranking: readonly (readonly string[])[] = [['a'], ['b'], ['c'], ['d']];
        for (const [what, one, other] of steps) {
          if (what === 'level') ranking = leveled(ranking, one);
          else if (what === 'before') ranking = putBefore(ranking, one, other);
          else ranking = movedPlace(ranking, one, what === 'up' ? -1 : 1);
        }
        expect(ranking.flat().sort()).toEqual(['a', 'b', 'c', 'd']);
        expect(ranking.every((level) => level.length > 0)).toBe(true);
      }),
    );
  });
});

describe('two versions of a go', () => {
  const range = { low: '-3', high: '3', step: '0.5' };
  const steps = stepsOf(
    {
      ...{ kind: 'pattern', code: 'x', version: 1, title: 'X', source: 'x', rulings: {}, base: '70' },
      ...{ maneuver: range, extras: [], penalties: [], notSeen: 'left-out', lowest: null, totalRange: null },
    },
    [1, 2].map((position) => ({ position, name: `Part ${position}`, coefficient: '1' })),
  );
  const mine: Go = {
    maneuvers: [
      { position: 1, mark: '1' },
      { position: 2, mark: '0', remark: 'late' },
    ],
    penalties: [{ code: 'cone-hit', position: 2 }],
  };
  const theirs: Go = { maneuvers: [{ position: 1, mark: '-1' }], ruling: { code: 'off-pattern' } };

  it('what differs is marked, penalties and remarks with their maneuver', () => {
    const parts = partsOf(steps, mine, theirs);
    expect(parts.filter(({ differs }) => differs).map(({ key }) => key)).toEqual([
      'maneuver-1',
      'maneuver-2',
      'ruling',
    ]);
    expect(partsOf(steps, mine, mine).some(({ differs }) => differs)).toBe(false);
  });

  it('are put together part by part, as she picks', () => {
    const parts = partsOf(steps, mine, theirs);
    const picks = { 'maneuver-1': 'theirs', 'maneuver-2': 'mine', ruling: 'theirs' } as const;
    expect(pickedGo({ parts, mine, theirs, picks })).toEqual({
      maneuvers: [
        { position: 1, mark: '-1' },
        { position: 2, mark: '0', remark: 'late' },
      ],
      penalties: [{ code: 'cone-hit', position: 2 }],
      ruling: { code: 'off-pattern' },
    });
    expect(pickedGo({ parts, mine, theirs, picks: {} })).toEqual(mine);
  });
});

describe('the time of a video', () => {
  it.each([
    [0, '0:00'],
    [83, '1:23'],
    [3_723, '1:02:03'],
  ])('%i seconds are %s, and back', (seconds, text) => {
    expect(clockText(seconds)).toBe(text);
    expect(clockSeconds(text)).toBe(seconds);
  });

  it.each(['', '1:99', 'abc', '1:2:3:4', '-1'])('%j is no time', (text) => {
    expect(clockSeconds(text)).toBeUndefined();
  });
});

describe('news of a class', () => {
  const entry = (backNumber: number, more: Partial<DayEntry> = {}): DayEntry => ({
    ...{
      classEntryId: `entry ${backNumber}`,
      backNumber,
      goPosition: null,
      status: 'entered',
      videoUrl: null,
    },
    ...more,
  });
  const classOf = (...entries: DayEntry[]) => ({ entries }) as unknown as DayClass;

  it('late adds and scratches are told; a check-in at the gate is not', () => {
    const before = classOf(entry(1), entry(2), entry(3), entry(5));
    const after = classOf(
      entry(1, { status: 'checked-in' }),
      entry(2, { status: 'scratched' }),
      entry(4),
      entry(5, { goPosition: 9 }),
    );
    expect(changesBetween(before, after)).toEqual([
      { kind: 'status', backNumber: 2, status: 'scratched' },
      { kind: 'added', backNumber: 4 },
      { kind: 'moved', backNumber: 5 },
      { kind: 'gone', backNumber: 3 },
    ]);
  });
});
