/** Each tie-break, the chain of them, and what is decided outside the arithmetic. */
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromScores, type ScoredLine } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type {
  LineParts,
  MergeRule,
  PanelCard,
  TieBreak,
  TieDecision,
} from '../../src/engine/placing/types.ts';
import { classOf, order, placesPanel, ranked, rankSum, scored, total } from './panels.ts';

interface Marks {
  readonly maneuvers?: readonly (string | undefined)[];
  readonly form?: string;
  readonly penalties?: readonly number[];
}

/** One card on which everyone has 70, with these parts; totals are tied. */
function cardOf70(judge: string, marks: Readonly<Record<string, Marks>>): PanelCard {
  const parts = ({ maneuvers = [], form, penalties = [] }: Marks): LineParts => ({
    maneuvers: new Map(
      maneuvers.flatMap((mark, index) => (mark === undefined ? [] : [[index + 1, exact(mark)] as const])),
    ),
    form: form === undefined ? undefined : exact(form),
    penaltyPoints: exact(penalties.reduce((sum, points) => sum + points, 0)),
    penaltyCount: penalties.length,
  });
  const lines = Object.entries(marks).map(([entry, one]): [string, ScoredLine] => [
    entry,
    { tier: 'kept-pattern', score: exact(70), parts: parts(one) },
  ]);
  return cardFromScores({ judge }, new Map(lines));
}

const tied = (cards: readonly PanelCard[], ...ties: TieBreak[]) => order(classOf(cards, total, { ties }));
const tieJudge = (...judges: string[]): TieBreak => ({ code: 'tie-judge', judges, alternate: false });

test('an empty chain leaves the tie standing, and says that it is open', () => {
  const { placed, openTies } = placeClass(classOf(scored({ A: '70', B: '70', C: '69' }), total));
  expect(placed.map(({ entry, place, tied: shares }) => ({ entry, place, shares }))).toEqual([
    { entry: 'A', place: 1, shares: true },
    { entry: 'B', place: 1, shares: true },
    { entry: 'C', place: 3, shares: false },
  ]);
  expect(openTies).toEqual([{ entries: ['A', 'B'], place: 1, waitsFor: 'chain-ended' }]);
});

describe('marks of maneuvers', () => {
  const cards = [
    cardOf70('judge 1', { A: { maneuvers: ['1', '0.5', '0'] }, B: { maneuvers: ['0', '0.5', '1'] } }),
    cardOf70('judge 2', { A: { maneuvers: ['0', '0', '0.5'] }, B: { maneuvers: ['0', '0.5', '0.5'] } }),
  ];

  test('are compared in the order that was named, added over the judges', () => {
    expect(tied(cards, { code: 'maneuvers', order: [1, 2, 3] })).toBe('A B');
    expect(tied(cards, { code: 'maneuvers', order: [3, 1] })).toBe('B A');
  });

  test('the next maneuver is looked at only where the first one tied', () => {
    const { reasons } = placeClass(classOf(cards, total, { ties: [{ code: 'maneuvers', order: [2, 1] }] }));
    expect(reasons.at(-1)?.basis).toEqual({ step: 'maneuver', position: 2 });
    expect(reasons.at(-1)?.compared.map(({ entry, value }) => [entry, value])).toEqual([
      ['A', '0.5'],
      ['B', '1'],
    ]);
  });

  test('a maneuver that none of the judges saw stands behind one that was marked, even by minus one', () => {
    const unseen = [cardOf70('judge 1', { A: { maneuvers: [undefined] }, B: { maneuvers: ['-1'] } })];
    expect(tied(unseen, { code: 'maneuvers', order: [1] })).toBe('B A');
    const nobody = [cardOf70('judge 1', { A: { maneuvers: [undefined] }, B: { maneuvers: [undefined] } })];
    expect(tied(nobody, { code: 'maneuvers', order: [1] })).toBe('A=B');
  });

  test('counting back from the highest mark, the first rank that differs decides', () => {
    const marked = [
      cardOf70('judge 1', { A: { maneuvers: ['1', '1.5', '-1'] }, B: { maneuvers: ['1.5', '0', '0.5'] } }),
    ];
    const { reasons } = placeClass(classOf(marked, total, { ties: [{ code: 'count-back' }] }));
    expect(tied(marked, { code: 'count-back' })).toBe('A B');
    expect(reasons.at(-1)?.basis).toEqual({ step: 'count-back', rank: 2 });
  });
});

test('form and effectiveness: the higher, added over the judges', () => {
  const cards = [
    cardOf70('judge 1', { A: { form: '3' }, B: { form: '4' } }),
    cardOf70('judge 2', { A: { form: '4' }, B: { form: '2.5' } }),
  ];
  expect(tied(cards, { code: 'form' })).toBe('A B');
});

test('penalties: the fewest points, or the fewest in number', () => {
  const cards = [
    cardOf70('judge 1', { A: { penalties: [3, 3] }, B: { penalties: [10] }, C: { penalties: [] } }),
  ];
  expect(tied(cards, { code: 'penalties', count: 'points' })).toBe('C A B');
  expect(tied(cards, { code: 'penalties', count: 'number' })).toBe('C B A');
});

describe('tie judges', () => {
  const cards = scored({ A: '71', B: '70' }, { A: '70', B: '71' });

  /** AMHA 2018 World Championship programme p. 12: call judge, then the second call judge, then the third. */
  test('the first one’s card decides, and the next one’s where it is tied there', () => {
    expect(tied(cards, tieJudge('judge 2', 'judge 1'))).toBe('B A');
    const level = scored({ A: '70', B: '70' }, { A: '70', B: '71' }, { A: '71', B: '70' });
    expect(tied(level, tieJudge('judge 1', 'judge 3'))).toBe('A B');
  });

  /** IHSA Western Scoring Explanation: judge 1 in odd-numbered classes, judge 2 in even-numbered ones. */
  test.each([
    [1, 'A B'],
    [2, 'B A'],
    [3, 'A B'],
    [12, 'B A'],
  ])('in turn by the number of the class: class %i', (classNumber, expected) => {
    const ties: TieBreak[] = [{ code: 'tie-judge', judges: ['judge 1', 'judge 2'], alternate: true }];
    expect(order(classOf(cards, total, { ties, classNumber }))).toBe(expected);
  });

  test('an entry that the tie judge left off stands behind one on the card', () => {
    const points: MergeRule = {
      method: 'place-points',
      points: ['2', '1'],
      unplaced: '0',
      cardTies: 'better',
      discard: 'none',
    };
    expect(order(classOf(ranked('A', 'B A', 'C B'), points, { ties: [tieJudge('judge 1')] }))).toBe('A B C');
    expect(order(classOf(ranked('A', 'B'), points, { ties: [tieJudge('judge 2')] }))).toBe('B A');
  });
});

test('the best single place', () => {
  const cards = ranked('A B C', 'C B A');
  expect(order(classOf(cards, rankSum))).toBe('A=B=C');
  expect(order(classOf(cards, rankSum, { ties: [{ code: 'best-single-place' }] }))).toBe('A=C B');
});

test('the most firsts, then the most seconds', () => {
  const ties: TieBreak[] = [{ code: 'most-firsts' }];
  expect(order(classOf(placesPanel({ A: [1, 1, 7], B: [1, 4, 4] }), rankSum))).toBe('A=B');
  expect(order(classOf(placesPanel({ A: [1, 1, 7], B: [1, 4, 4] }), rankSum, { ties }))).toBe('A B');
  const seconds = classOf(placesPanel({ A: [1, 2, 6], B: [1, 4, 4] }), rankSum, { ties });
  expect(order(seconds)).toBe('A B');
  expect(placeClass(seconds).reasons.at(-1)?.basis).toEqual({ step: 'most-places', at: 2 });
});

describe('majority of the judges between the tied', () => {
  test('more judges have one ahead of the other', () => {
    const scores = scored({ A: '71', B: '70.5' }, { A: '70.5', B: '70' }, { A: '70', B: '71' });
    expect(tied(scores, { code: 'head-to-head' })).toBe('A B');
  });

  test('as many judges one way as the other put neither ahead', () => {
    const level: MergeRule = {
      method: 'place-points',
      points: ['1', '1', '1'],
      unplaced: '0',
      cardTies: 'better',
      discard: 'none',
    };
    // A is ahead of C with both judges; A and B, and B and C, are one to one.
    expect(order(classOf(ranked('A C B', 'B A C'), level, { ties: [{ code: 'head-to-head' }] }))).toBe(
      'A B=C',
    );
  });

  test('of three who beat each other in a ring none comes first: the tie stands', () => {
    expect(
      order(classOf(ranked('A B C', 'B C A', 'C A B'), rankSum, { ties: [{ code: 'head-to-head' }] })),
    ).toBe('A=B=C');
  });
});

test('the discarded scores are brought back', () => {
  // 141 each without the highest and the lowest; all four: A 282, B 283.
  const cards = scored(
    { A: '70', B: '70' },
    { A: '71', B: '71' },
    { A: '72', B: '73' },
    { A: '69', B: '69' },
  );
  expect(order(classOf(cards, { ...total, discard: 'high-and-low' }))).toBe('A=B');
  expect(
    order(classOf(cards, { ...total, discard: 'high-and-low' }, { ties: [{ code: 'discarded' }] })),
  ).toBe('B A');
  expect(order(classOf(cards.slice(0, 1), total, { ties: [{ code: 'discarded' }] }))).toBe('A=B');
});

describe('a draw by lot', () => {
  const cards = scored({ A: '70', B: '70', C: '70', D: '69' });

  test('is repeated by anyone who knows the seed: SHA-256 of seed, line feed, entry, the least first', () => {
    const seed = 'saturday 14 june, first class';
    const hash = (entry: string) => createHash('sha256').update(`${seed}:${entry}`).digest('hex');
    const byHand = ['A', 'B', 'C'].sort((a, b) => (hash(a) < hash(b) ? -1 : 1));
    const { placed, reasons } = placeClass(classOf(cards, total, { ties: [{ code: 'draw', seed }] }));
    expect(placed.map(({ entry }) => entry)).toEqual([...byHand, 'D']);
    const drawn = reasons.find(({ basis }) => basis.step === 'draw');
    expect(
      Object.fromEntries((drawn?.compared ?? []).map(({ entry, value }) => [entry, BigInt(value ?? 0)])),
    ).toEqual(Object.fromEntries(['A', 'B', 'C'].map((entry) => [entry, BigInt(`0x${hash(entry)}`)])));
  });

  test('another seed can give another order, the same seed never', () => {
    const orders = new Set(
      Array.from({ length: 40 }, (_, index) => tied(cards, { code: 'draw', seed: `seed ${index}` })),
    );
    expect(orders.size).toBe(6);
    expect(tied(cards, { code: 'draw', seed: 'x' })).toBe(tied([...cards], { code: 'draw', seed: 'x' }));
  });
});

describe('decisions outside the arithmetic', () => {
  const cards = scored({ A: '70', B: '70', C: '70', D: '69' });
  const decide = (kind: TieDecision['kind'], ...groups: string[][]): TieDecision => ({
    id: `${kind} of ${groups.flat().join('')}`,
    kind,
    order: groups,
  });
  const withDecisions = (ties: TieBreak[], ...decisions: TieDecision[]) =>
    classOf(cards, total, { ties, decisions });

  test('a run-off in the chain makes the tie wait, and nothing after it is asked', () => {
    const input = withDecisions([{ code: 'run-off' }, { code: 'draw', seed: 'x' }]);
    expect(order(input)).toBe('A=B=C D');
    expect(placeClass(input).openTies).toEqual([{ entries: ['A', 'B', 'C'], place: 1, waitsFor: 'run-off' }]);
  });

  test('its recorded order decides, and is named as the reason', () => {
    const input = withDecisions([{ code: 'run-off' }], decide('run-off', ['B'], ['C'], ['A']));
    expect(order(input)).toBe('B C A D');
    expect(placeClass(input).openTies).toEqual([]);
    expect(placeClass(input).reasons.at(-1)?.basis).toEqual({
      step: 'decision',
      id: 'run-off of BCA',
      kind: 'run-off',
    });
  });

  test('declined, the chain goes on', () => {
    const declined = decide('declined', ['A', 'B', 'C']);
    const drawn = withDecisions([{ code: 'run-off' }, { code: 'draw', seed: 'x' }], declined);
    expect(order(drawn)).toBe(tied(cards, { code: 'draw', seed: 'x' }));
    expect(placeClass(withDecisions([{ code: 'run-off' }, { code: 'share' }], declined)).openTies).toEqual(
      [],
    );
  });

  /** NRHA handbook, Rules for judging B(2), in part from memory: one who declines where another wants to run forfeits first. */
  test('a run-off among some: the others of the tie stand behind as it was recorded', () => {
    expect(order(withDecisions([{ code: 'run-off' }], decide('run-off', ['B'], ['A'], ['C'])))).toBe(
      'B A C D',
    );
    expect(order(withDecisions([{ code: 'run-off' }], decide('run-off', ['B'], ['A', 'C'])))).toBe('B A=C D');
  });

  test('co-champions: a decision to share the place is final', () => {
    const input = withDecisions([], decide('share', ['A', 'B', 'C']));
    expect(order(input)).toBe('A=B=C D');
    expect(placeClass(input).openTies).toEqual([]);
  });

  test('without a run-off in the chain a decision stands at its end', () => {
    expect(order(withDecisions([], decide('coin', ['C'], ['A'], ['B'])))).toBe('C A B D');
    expect(order(withDecisions([{ code: 'share' }], decide('judge', ['C'], ['A'], ['B'])))).toBe('C A B D');
  });

  test('of two decisions about the same entries the later stands', () => {
    expect(
      order(withDecisions([], decide('judge', ['A'], ['B'], ['C']), decide('re-work', ['C'], ['B'], ['A']))),
    ).toBe('C B A D');
  });

  test('a decision about entries that are not tied changes nothing', () => {
    expect(order(withDecisions([], decide('judge', ['D'], ['A'])))).toBe('A=B=C D');
  });

  test('share ends the chain: the tie is final, and none is open', () => {
    const input = withDecisions([{ code: 'share' }]);
    expect(order(input)).toBe('A=B=C D');
    expect(placeClass(input).openTies).toEqual([]);
  });
});

describe('after a split', () => {
  // Each beats the next in a ring, so head-to-head says nothing of the three; form parts C from the others.
  const forms: Readonly<Record<string, string>> = { A: '5', B: '5', C: '3' };
  const ring = [
    ['A', 'B', 'C'],
    ['B', 'C', 'A'],
    ['C', 'A', 'B'],
  ].map((ranking, index) => {
    const lines = ranking.map((entry, at): [string, ScoredLine] => {
      const parts: LineParts = {
        maneuvers: new Map(),
        form: exact(forms[entry] ?? '0'),
        penaltyPoints: exact(0),
        penaltyCount: 0,
      };
      return [entry, { tier: 'kept-pattern', score: exact(72 - at), parts }];
    });
    return cardFromScores({ judge: `judge ${index + 1}` }, new Map(lines));
  });
  const ties: TieBreak[] = [{ code: 'head-to-head' }, { code: 'form' }];

  test('those still tied go on at the same step: the tie stands', () => {
    expect(order(classOf(ring, total, { ties, afterSplit: 'go-on' }))).toBe('A=B C');
  });

  test('or start the chain again: between the two of them more judges have A ahead', () => {
    expect(order(classOf(ring, total, { ties, afterSplit: 'start-again' }))).toBe('A B C');
  });
});
