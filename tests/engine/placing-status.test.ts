/** Status before score: who kept the pattern, who is placed below, who may not be placed; and classes at the edge. */
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromScores, type ScoredLine } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard, PlacingRule } from '../../src/engine/placing/types.ts';
import type { RulingCode } from '../../src/engine/sheets/types.ts';
import { chanceFrom } from './naive/generate-class.ts';
import { classOf, majority, ranked, rankSum, scored, total } from './panels.ts';

/** `'70'` kept the pattern, `'75 below'` is placed below, `'disqualified'` is ruled out. */
function card(judge: string, goes: Readonly<Record<string, string>>): PanelCard {
  const lines = new Map<string, ScoredLine>();
  const ruledOut = new Map<string, RulingCode | undefined>();
  for (const [entry, go] of Object.entries(goes)) {
    const [score = '', below] = go.split(' ');
    if (/^\d/.test(score))
      lines.set(entry, { tier: below === undefined ? 'kept-pattern' : 'placed-below', score: exact(score) });
    else ruledOut.set(entry, go === 'disqualified' ? 'disqualified' : 'off-pattern');
  }
  return cardFromScores({ judge, ruledOut }, lines);
}

const panel = (...goes: readonly Readonly<Record<string, string>>[]) =>
  goes.map((one, index) => card(`judge ${index + 1}`, one));

function placed(cards: readonly PanelCard[], merge: MergeRule, rest: Partial<PlacingRule> = {}) {
  const { placed: lines, unplaced } = placeClass(classOf(cards, merge, rest));
  return {
    order: lines.map(({ entry }) => entry).join(' '),
    out: unplaced.map(({ entry }) => entry).join(' '),
  };
}

describe('placed below', () => {
  /** MFTHBA Rulebook 2025, printed p. 95: off pattern should not place above one that completed the pattern correctly. */
  test('an off-pattern go stands below all who kept the pattern, whatever its score', () => {
    expect(placed(panel({ A: '90 below', B: '60', C: '61' }), total).order).toBe('C B A');
    expect(placed(panel({ A: '90 below', B: '60', C: '61' }), rankSum).order).toBe('C B A');
  });

  test('among themselves those placed below stand by their scores', () => {
    expect(placed(panel({ A: '70 below', B: '72 below', C: '60' }), total).order).toBe('C B A');
  });

  test('where scores are added one judge’s ruling holds; where cards are merged by place it must be all', () => {
    const cards = panel({ A: '90 below', B: '60' }, { A: '90', B: '60' }, { A: '90', B: '60' });
    expect(placed(cards, total).order).toBe('B A');
    expect(placed(cards, rankSum).order).toBe('A B');
  });

  test.each([
    ['any', 'B A'],
    ['majority', 'A B'],
    ['all', 'A B'],
  ] as const)('or as the class says: %s, ruled by one of three', (rulingHolds, order) => {
    const cards = panel({ A: '90 below', B: '60' }, { A: '90', B: '60' }, { A: '90', B: '60' });
    expect(placed(cards, total, { rulingHolds }).order).toBe(order);
  });

  test('two of three are a majority', () => {
    const cards = panel({ A: '90 below', B: '60' }, { A: '90 below', B: '60' }, { A: '90', B: '60' });
    expect(placed(cards, total, { rulingHolds: 'majority' }).order).toBe('B A');
  });

  test('where cards are merged by place two of three are not enough, unless the class says so', () => {
    const cards = panel(
      { A: '90 below', B: '60' },
      { A: '90 below', B: '60' },
      { A: '90', B: '60', C: '50' },
    );
    const merge = { ...rankSum, unlisted: '9' };
    expect(placed(cards, merge).order).toBe('B A C');
    expect(placed(cards, merge, { rulingHolds: 'majority' }).order).toBe('B C A');
  });

  test('judges who left the entry off have not spoken: all of the others are enough', () => {
    // Left off counts nothing here, so by the sum of places alone A would be first: 4 against 5.
    const cards = panel(
      { A: '90 below', B: '60' },
      { A: '90 below', B: '60' },
      { B: '60' },
      { B: '60' },
      { B: '60' },
    );
    expect(placed(cards, { ...rankSum, unlisted: '0' }).order).toBe('B A');
    expect(placed(cards, { ...rankSum, unlisted: '0' }, { rulingHolds: 'majority' }).order).toBe('B A');
  });

  test('a judge who ruled the entry out speaks against it as well', () => {
    const cards = panel({ A: 'disqualified', B: '60' }, { A: '90 below', B: '60' }, { A: '90', B: '60' });
    expect(placed(cards, total, { rulingHolds: 'majority' })).toEqual({ order: 'B A', out: '' });
  });

  test('the reason names the judges who ruled', () => {
    const { reasons } = placeClass(classOf(panel({ A: '90 below', B: '60' }, { A: '90', B: '60' }), total));
    expect(reasons[0]).toMatchObject({
      basis: { step: 'status' },
      compared: [
        { entry: 'B', value: '0' },
        { entry: 'A', value: '1', parts: [{ judge: 'judge 1' }] },
      ],
    });
  });
});

describe('not placed', () => {
  test('one who was disqualified has no place, and it is said who ruled what', () => {
    const { unplaced } = placeClass(
      classOf(panel({ A: 'disqualified', B: '60' }, { A: '80', B: '60' }), total),
    );
    expect(unplaced).toEqual([
      { entry: 'A', why: { code: 'ruled-out', judges: ['judge 1'], rulings: ['disqualified'] } },
    ]);
  });

  test('where places are merged, a judge who did so has only left the entry off the card', () => {
    const cards = panel({ A: 'disqualified', B: '60', C: '50' }, { A: '80', B: '60', C: '50' });
    expect(placed(cards, rankSum)).toEqual({ order: 'B A C', out: '' });
    expect(placed(cards, majority, { rulingHolds: 'any' })).toEqual({ order: 'B C', out: 'A' });
  });

  test('all disqualified: nobody is placed, and everyone is named', () => {
    expect(placed(panel({ A: 'disqualified', B: 'disqualified' }), total)).toEqual({ order: '', out: 'A B' });
    expect(placed(panel({ A: 'disqualified', B: 'disqualified' }), majority)).toEqual({
      order: '',
      out: 'A B',
    });
  });

  test('an entry on no card has no place', () => {
    const { unplaced } = placeClass(classOf(ranked('A B'), rankSum, { entries: ['A', 'B', 'Z'] }));
    expect(unplaced).toEqual([{ entry: 'Z', why: { code: 'on-no-card' } }]);
  });
});

describe('places given', () => {
  test('only so many are placed; the rest are named with how many there are', () => {
    const { placed: lines, unplaced } = placeClass(classOf(ranked('A B C D'), rankSum, { placesGiven: 3 }));
    expect(lines.map(({ entry }) => entry)).toEqual(['A', 'B', 'C']);
    expect(unplaced).toEqual([{ entry: 'D', why: { code: 'beyond-places', placesGiven: 3 } }]);
  });

  test('a tie for the last place given is given to all who share it', () => {
    const {
      placed: lines,
      unplaced,
      openTies,
    } = placeClass(classOf(ranked('A B=C D=E'), rankSum, { placesGiven: 2 }));
    expect(lines.map(({ entry, place }) => `${entry}${place}`)).toEqual(['A1', 'B2', 'C2']);
    expect(unplaced.map(({ entry }) => entry)).toEqual(['D', 'E']);
    expect(openTies.map(({ place }) => place)).toEqual([2]);
  });
});

describe('classes at the edge', () => {
  test('one entry is first', () => {
    for (const merge of [total, rankSum, majority, { method: 'pairwise' } as const]) {
      expect(placeClass(classOf(scored({ A: '70' }), merge)).placed).toMatchObject([
        { entry: 'A', place: 1, tied: false },
      ]);
    }
  });

  test('no entry: an empty result', () => {
    expect(placeClass(classOf(ranked(''), rankSum))).toEqual({
      placed: [],
      unplaced: [],
      reasons: [],
      notes: [],
      openTies: [],
    });
  });

  test('no card: nobody can be placed, and everyone is named', () => {
    const { placed: lines, unplaced } = placeClass(classOf([], rankSum, { entries: ['A'] }));
    expect(lines).toEqual([]);
    expect(unplaced).toEqual([{ entry: 'A', why: { code: 'on-no-card' } }]);
  });

  const chance = chanceFrom(9);
  const entries = Array.from({ length: 300 }, (_, index) => String(index + 1));
  const cards = scored(
    ...Array.from({ length: 9 }, () =>
      Object.fromEntries(entries.map((entry) => [entry, String(60 + Math.floor(chance() * 40) / 2)])),
    ),
  );
  const points: MergeRule = {
    method: 'place-points',
    points: ['10', '9', '8'],
    unplaced: '0',
    cardTies: 'mean',
    discard: 'high-and-low',
  };
  const methods: MergeRule[] = [
    total,
    { ...total, discard: 'high-and-low' },
    rankSum,
    majority,
    points,
    { method: 'pairwise' },
  ];

  test.each(methods)('300 entries before nine judges are all placed: $method', (merge) => {
    const { placed: lines } = placeClass(
      classOf(cards, merge, {
        ties: [{ code: 'head-to-head' }, { code: 'most-firsts' }, { code: 'draw', seed: 'x' }],
      }),
    );
    expect(lines.map(({ place }) => place)).toEqual(entries.map((_, index) => index + 1));
  });
});

test('what a judge could not see goes with the result', () => {
  const line: ScoredLine = {
    tier: 'kept-pattern',
    score: exact(70),
    flags: [{ kind: 'not-seen', position: 3, treatedAs: 'left-out' }],
  };
  const { notes } = placeClass(
    classOf([cardFromScores({ judge: 'judge 1' }, new Map([['A', line]]))], total),
  );
  expect(notes).toEqual([
    { entry: 'A', judge: 'judge 1', flag: { kind: 'not-seen', position: 3, treatedAs: 'left-out' } },
  ]);
});
