import { describe, expect, it } from 'vitest';
import { recordText } from '../../src/engine/numbers/number-text.ts';
import { runningScore } from '../../src/engine/sheets/score-go.ts';
import type { Go, PercentageSheet } from '../../src/engine/sheets/types.ts';
import {
  faultsOf,
  maneuvers,
  marked,
  oneMark,
  percentage,
  places,
  scored,
  timed,
  total,
} from './sheets-examples.ts';

describe('a dressage test', () => {
  const test = maneuvers(3, ['1', '2', '1']);
  const go: Go = { maneuvers: marked('6.5', '7', '6'), extras: { gaits: '6.5' } };

  it('is marks times coefficients of the highest possible, in percent: 39.5 of 60', () => {
    const { score, parts } = scored(percentage, test, go);
    expect(score && recordText(score)).toBe('395/6');
    expect(parts.maximum && recordText(parts.maximum)).toBe('60');
  });

  it('is rounded as the sheet says: 65.8333... to three places, half up, down and to two', () => {
    const rounded = (roundJudge: PercentageSheet['roundJudge']) =>
      total({ ...percentage, roundJudge }, test, go);
    expect(rounded({ places: 3, mode: 'half-up' })).toBe('65.833');
    expect(rounded({ places: 2, mode: 'half-up' })).toBe('65.83');
    expect(rounded({ places: 0, mode: 'half-up' })).toBe('66');
    expect(rounded({ places: 0, mode: 'down' })).toBe('65');
  });

  const withErrors = (errorsOfCourse: number, rule: Partial<PercentageSheet['errorsOfCourse']> = {}) =>
    scored({ ...percentage, errorsOfCourse: { ...percentage.errorsOfCourse, ...rule } }, test, {
      ...go,
      errorsOfCourse,
    });
  const taken = (...of: Parameters<typeof withErrors>) => recordText(withErrors(...of).parts.errorsOfCourse);

  it('loses 2 for the first error of course, and 2 + 4 for two where they add up', () => {
    expect([taken(0), taken(1), taken(2)]).toEqual(['0', '2', '6']);
    const { score } = withErrors(1);
    expect(score && recordText(score)).toBe('62.5');
  });

  it('loses only what the last error takes where they do not add up', () => {
    expect([taken(1, { cumulative: false }), taken(2, { cumulative: false })]).toEqual(['2', '4']);
  });

  it('loses percent instead of points where the sheet says so', () => {
    const { score } = withErrors(2, { from: 'percentage', takes: ['0.5', '1'], cumulative: true });
    expect(score && recordText(score)).toBe('193/3');
  });

  it('is eliminated by one error more than the sheet lists, whatever marks are missing', () => {
    expect(withErrors(3)).toMatchObject({ tier: 'not-placed', score: undefined });
    const bare = scored(percentage, test, { errorsOfCourse: 3 });
    expect(bare.parts.ruling).toEqual({ code: 'eliminated', effect: { kind: 'not-placed' } });
  });

  it.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, -0, 1e300])(
    'refuses %d errors of course',
    (count) => {
      expect(faultsOf(percentage, test, { ...go, errorsOfCourse: count })).toEqual([
        'errors_not_a_count /errorsOfCourse',
      ]);
    },
  );

  it('leaves a maneuver that was not seen out of the sum and out of the highest possible', () => {
    const { score, parts, flags } = scored(percentage, test, { ...go, maneuvers: marked('6.5', null, '6') });
    expect(parts.maximum && recordText(parts.maximum)).toBe('40');
    expect(score && recordText(score)).toBe('63.75');
    expect(flags).toEqual([{ kind: 'not-seen', position: 2, treatedAs: 'left-out' }]);
  });

  it('keeps it in the highest possible where not seen counts as not shown', () => {
    const strict = { ...percentage, notSeen: 'absent' } as const;
    const unseen: Go = { ...go, maneuvers: marked('6.5', null, '6') };
    expect(faultsOf(strict, test, unseen)).toEqual(['ruling_missing /ruling']);
    const { score } = scored(strict, test, { ...unseen, ruling: { code: 'off-pattern' } });
    expect(score && recordText(score)).toBe('42.5');
  });

  it('of which nothing was seen has no percentage and is a fault, not a zero', () => {
    const bare = { ...percentage, collectives: [] };
    expect(faultsOf(bare, test, { maneuvers: marked(null, null, null) })).toEqual([
      'mark_missing /maneuvers',
    ]);
  });

  it('shows the percentage of the marks so far, and none before the first', () => {
    const { score } = runningScore(percentage, test, { maneuvers: marked('6.5') });
    expect(score && recordText(score)).toBe('65');
    expect(runningScore(percentage, test, {}).score).toBeUndefined();
  });
});

describe('one mark for the whole go', () => {
  it('is that mark less the penalties', () => {
    expect(total(oneMark, [], { mark: '84.5', penalties: [{ code: 'major' }] })).toBe('80');
  });

  it('is missing, out of range or off the step, and says so', () => {
    expect(faultsOf(oneMark, [], {})).toEqual(['mark_missing /mark']);
    expect(faultsOf(oneMark, [], { mark: '100.5' })).toEqual(['mark_out_of_range /mark']);
    expect(faultsOf(oneMark, [], { mark: '80.25' })).toEqual(['mark_off_step /mark']);
    expect(faultsOf(oneMark, [], { ruling: { code: 'disqualified' } })).toEqual([]);
  });

  it('has no place for marks of maneuvers', () => {
    const go: Go = { mark: '80', maneuvers: marked('1') };
    expect(faultsOf(oneMark, maneuvers(1), go)).toEqual(['not_on_this_sheet /maneuvers']);
  });
});

describe('a time', () => {
  it('is the seconds with the penalty seconds added, and less is better', () => {
    const { score, better } = scored(timed, [], {
      measure: '17.482',
      penalties: [{ code: 'knock' }, { code: 'knock' }],
    });
    expect([score && recordText(score), better]).toEqual(['27.482', 'lower']);
  });

  it('is made longer by a ruling that takes points off', () => {
    expect(total(timed, [], { measure: '17.482', ruling: { code: 'excused' } })).toBe('27.482');
  });

  it('is no time at zero, below a thousandth, or missing', () => {
    expect(faultsOf(timed, [], {})).toEqual(['measure_missing /measure']);
    expect(faultsOf(timed, [], { measure: '0' })).toEqual(['mark_out_of_range /measure']);
    expect(faultsOf(timed, [], { measure: '17.4825' })).toEqual(['mark_off_step /measure']);
    expect(scored(timed, [], { ruling: { code: 'off-pattern' } }).tier).toBe('not-placed');
  });
});

describe('a go in a rail class', () => {
  it('has no score, and a ruling only', () => {
    expect(scored(places, [], {})).toMatchObject({ tier: 'kept-pattern', score: undefined });
    expect(scored(places, [], { ruling: { code: 'disqualified' } })).toMatchObject({ tier: 'not-placed' });
    expect(faultsOf(places, [], { mark: '80', penalties: [{ code: 'minor' }] })).toEqual([
      'not_on_this_sheet /penalties',
      'not_on_this_sheet /mark',
    ]);
  });
});
