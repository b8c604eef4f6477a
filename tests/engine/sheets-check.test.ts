import { describe, expect, it } from 'vitest';
import { checkManeuvers } from '../../src/engine/sheets/check-maneuvers.ts';
import { checkSheet } from '../../src/engine/sheets/check-sheet.ts';
import type { MarkRange, PatternSheet, ScoreSheet } from '../../src/engine/sheets/types.ts';
import { maneuvers, oneMark, pattern, percentage, places, timed } from './sheets-examples.ts';

const faults = (sheet: ScoreSheet) => checkSheet(sheet).map(({ code, at }) => `${code} ${at}`);
const withRange = (maneuver: MarkRange) => faults({ ...pattern, maneuver });

describe('a score sheet', () => {
  it.each([pattern, percentage, oneMark, places, timed])('of kind $kind without faults has none', (sheet) => {
    expect(faults(sheet)).toEqual([]);
  });

  it('marks in steps that are positive and that reach the high end', () => {
    expect(withRange({ low: '-3', high: '3', step: '0' })).toEqual(['not_positive /maneuver/step']);
    expect(withRange({ low: '-3', high: '3', step: '-1' })).toEqual(['not_positive /maneuver/step']);
    expect(withRange({ low: '3', high: '-3', step: '0.5' })).toEqual(['range_upside_down /maneuver']);
    expect(withRange({ low: '-3', high: '3', step: '0.7' })).toEqual(['high_off_step /maneuver/high']);
    expect(withRange({ low: '1', high: '1', step: '0.5' })).toEqual([]);
    expect(withRange({ low: 'low', high: '1e3', step: '½' })).toEqual([
      'not_a_decimal /maneuver/low',
      'not_a_decimal /maneuver/high',
      'not_a_decimal /maneuver/step',
    ]);
  });

  it('has each code once, and takes off more than nothing', () => {
    const [minor] = pattern.penalties;
    const [form] = pattern.extras;
    const sheet: PatternSheet = {
      ...pattern,
      penalties: minor ? [minor, { ...minor, points: '0' }] : [],
      extras: form ? [form, { ...form, coefficient: '-1' }] : [],
    };
    expect(faults(sheet).sort()).toEqual([
      'code_twice /extras/1/code',
      'code_twice /penalties/1/code',
      'not_positive /extras/1/coefficient',
      'not_positive /penalties/1/points',
    ]);
  });

  it('has a lower limit that an ordinary go does not meet, and that its range allows', () => {
    expect(faults({ ...pattern, lowest: '71' })).toEqual(['lowest_above_base /lowest']);
    expect(faults({ ...pattern, totalRange: { low: '10', high: '60' } })).toEqual([
      'lowest_outside_total_range /lowest',
      'base_outside_total_range /base',
    ]);
    expect(faults({ ...pattern, totalRange: { low: '100', high: '0' } })).toContain(
      'range_upside_down /totalRange',
    );
  });

  it('needs a ruling to give where not seen counts as not shown', () => {
    expect(faults({ ...pattern, notSeen: 'absent', rulings: {} })).toEqual(['absent_needs_rulings /notSeen']);
  });

  it('gives rulings only effects that it can carry out', () => {
    const rulings = {
      'off-pattern': { kind: 'placed-below' },
      excused: { kind: 'takes-points-off', points: '0' },
    } as const;
    expect(faults({ ...places, rulings })).toEqual([
      'effect_not_on_this_sheet /rulings/off-pattern',
      'effect_not_on_this_sheet /rulings/excused',
      'not_positive /rulings/excused/points',
    ]);
    const strange = { ...pattern.rulings, napping: { kind: 'not-placed' } } as PatternSheet['rulings'];
    expect(faults({ ...pattern, rulings: strange })).toEqual(['ruling_unknown /rulings/napping']);
  });

  it('of marks out of a maximum has a maximum, and no marks below zero', () => {
    const range = { low: '-1', high: '0', step: '0.5' };
    expect(faults({ ...percentage, maneuver: range })).toEqual([
      'below_zero /maneuver/low',
      'not_positive /maneuver/high',
    ]);
  });

  it('lists errors of course that never take less than the error before', () => {
    const errorsOfCourse = { takes: ['4', '2', '0'], from: 'points', cumulative: false } as const;
    expect(faults({ ...percentage, errorsOfCourse })).toEqual([
      'not_positive /errorsOfCourse/takes/2',
      'errors_go_down /errorsOfCourse/takes/1',
      'errors_go_down /errorsOfCourse/takes/2',
    ]);
    expect(
      faults({ ...percentage, errorsOfCourse: { ...errorsOfCourse, takes: ['4', '2'], cumulative: true } }),
    ).toEqual([]);
  });

  it('counts places, versions and digits in whole numbers', () => {
    expect(faults({ ...places, first: 0 })).toEqual(['not_positive /first']);
    expect(faults({ ...places, first: 2.5 })).toEqual(['not_a_whole_number /first']);
    expect(faults({ ...places, version: 0 })).toEqual(['not_positive /version']);
    expect(faults({ ...percentage, roundJudge: { places: -1, mode: 'down' } })).toEqual([
      'below_zero /roundJudge/places',
    ]);
  });
});

describe('the maneuvers of a pattern', () => {
  const found = (list: ReturnType<typeof maneuvers>, sheet: ScoreSheet = pattern) =>
    checkManeuvers(sheet, list).map(({ code, at }) => `${code} ${at}`);

  it('count from 1 without a gap, in any order, each once', () => {
    const [first, second, third] = maneuvers(3);
    if (!first || !second || !third) throw new Error('three maneuvers');
    expect(found([third, first, second])).toEqual([]);
    expect(found([first, third])).toEqual(['position_gap /1/position']);
    expect(found([first, first])).toEqual(['position_twice /1/position']);
    expect(found([{ ...first, position: 0 }])).toEqual(['not_positive /0/position']);
  });

  it('have names and positive coefficients', () => {
    const [first] = maneuvers(1);
    if (!first) throw new Error('one maneuver');
    expect(found([{ ...first, name: ' ', coefficient: '0' }])).toEqual([
      'name_empty /0/name',
      'not_positive /0/coefficient',
    ]);
  });

  it('are needed where maneuvers are marked, and only there', () => {
    expect(found([])).toEqual(['no_maneuvers ']);
    expect(found([], percentage)).toEqual(['no_maneuvers ']);
    for (const sheet of [oneMark, places, timed]) expect(found([], sheet)).toEqual([]);
  });
});
