/** What a family reads at the rail: every kind of reason, word for word. */
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores, type ScoredLine } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { LineParts, PanelCard, PlacingInput, TieBreak } from '../../src/engine/placing/types.ts';
import { because, noteSentence, whyUnplaced } from '../../src/engine/sentences/placing-sentences.ts';
import { plainTeller, type Teller } from '../../src/engine/sentences/words.ts';
import { english } from '../../src/language/index.ts';
import { classOf, majority, placesPanel, ranked, rankSum, scored, total } from './panels.ts';

const plain = plainTeller(english);

function why(input: PlacingInput, entry: string, teller: Teller = plain): string {
  return because(placeClass(input), entry, teller).join(' ');
}

describe('how the cards were merged', () => {
  test('scores added', () => {
    const input = classOf(scored({ '118': '70.5', '214': '71' }, { '118': '72', '214': '71' }), total);
    expect(why(input, '118')).toBe('First: 70.5 + 72 = 142.5.');
    expect(why(classOf(scored({ '118': '70.5', '214': '70' }), total), '118')).toBe('First: 70.5.');
  });

  test('scores added, with the highest and the lowest discarded', () => {
    const two = scored(
      { '118': '70', '214': '60' },
      { '118': '74', '214': '60' },
      { '118': '72', '214': '60' },
      { '118': '69', '214': '60' },
    );
    expect(why(classOf(two, { ...total, discard: 'high-and-low' }), '118')).toBe(
      "First: 70 + 72 = 142 (judge 2's 74, the highest, discarded; judge 4's 69, the lowest, discarded).",
    );
  });

  test('a mean, and a mean that does not end', () => {
    const input = classOf(scored({ A: '70', B: '60' }, { A: '71', B: '60' }, { A: '73', B: '60' }), {
      method: 'mean',
      discard: 'none',
      noScore: 'zero',
      round: null,
    });
    expect(why(input, 'A')).toBe('First: mean of 70, 71 and 73 = 71.333.');
  });

  test('a missing score, and what it counts as', () => {
    const cards = scored({ A: '70', B: '70' }, { A: '71', B: '71' }, { A: '72' });
    expect(why(classOf(cards, { ...total, noScore: 'mean' }), 'B')).toBe(
      'Second: 70 + 71 + 70.5 = 211.5 (no score from judge 3: counts 70.5).',
    );
  });

  test('places added, and a card that left the entry off', () => {
    expect(why(classOf(ranked('A B C', 'B A'), rankSum), 'C')).toBe(
      'Third: places 3 and 3 add up to 6 (left off by judge 2: counts 3).',
    );
  });

  test('a card that counts half shows it, so that the sum can be followed', () => {
    const cards = [
      cardFromRanking({ judge: 'phase 1', weight: exact('0.5') }, [['A'], ['B']]),
      cardFromRanking({ judge: 'phase 2' }, [['B'], ['A']]),
    ];
    expect(why(classOf(cards, rankSum), 'B')).toBe('First: places 0.5 × 2 and 1 add up to 2.');
  });

  test('points for places', () => {
    const input = classOf(ranked('A B', 'B A'), {
      method: 'place-points',
      points: ['10', '9'],
      unplaced: '0',
      cardTies: 'better',
      discard: 'none',
    });
    expect(why(input, 'A')).toBe(
      'First: 10 + 9 = 19 points. Tied with B: nothing in the rule of this class splits them, so they share the place.',
    );
  });

  test('a majority, and what the next one lacked', () => {
    const input = classOf(ranked('214 118 300', '118 214 300', '214 300 118'), majority);
    expect(why(input, '214')).toBe('First: two of three judges had 214 first; 118 had only one.');
    expect(why(input, '118')).toBe('Second: two of three judges had 118 second or better; 300 had only one.');
  });

  test('no majority at all', () => {
    expect(why(classOf(ranked('A B', 'A', 'A'), majority), 'B')).toBe(
      'Second: one of three judges placed B, and a majority needs two.',
    );
  });

  test('equal majorities', () => {
    const input = classOf(placesPanel({ A: [2, 2, 9], B: [1, 2, 10] }), majority);
    expect(why(input, 'A')).toBe(
      'Second: two of three judges had A second or better. Tied with B; behind by the total of the places second or better, the least first (A: 4, B: 3).',
    );
  });

  const refereed = (...rankings: string[]) =>
    ranked(...rankings).map(
      (card, index): PanelCard => (index === 2 ? { ...card, judge: 'the referee', seat: 'referee' } : card),
    );

  test('two judges and a referee: who was called, by whom, and over whom', () => {
    const input = classOf(refereed('A B C', 'B A C', 'C B A'), { method: 'two-judges-and-referee' });
    expect(why(input, 'B')).toBe('First: the judges differed between B and A, and the referee had B higher.');
    expect(why(input, 'A')).toBe('Second: both judges had A next.');
    expect(why(input, 'C')).toBe('Third: the only entry left.');
    const short = classOf(refereed('A B', 'B A', 'B'), { method: 'two-judges-and-referee' });
    expect(why(short, 'A')).toBe(
      'Second: the judges differed between A and B, and the referee had B higher.',
    );
    const neither = classOf(refereed('A B', 'B A', ''), { method: 'two-judges-and-referee' });
    expect(why(neither, 'A')).toContain(
      'First: the judges differed between A and B, and the referee had none of them higher.',
    );
  });

  test('one by one', () => {
    const input = classOf(ranked('A B C', 'A C B', 'C B A'), { method: 'pairwise' });
    expect(why(input, 'A')).toBe(
      'First: compared one by one, the judges had A ahead of or level with two other entries.',
    );
    expect(why(input, 'B')).toBe('Third: compared one by one, the judges had B behind every other entry.');
  });

  test('one card by itself', () => {
    expect(why(classOf(scored({ A: '70', B: '69' }), { method: 'separate' }), 'B')).toBe(
      'Second: judge 1 had it 2nd with 69.',
    );
    expect(why(classOf(ranked('A B'), { method: 'separate' }), 'A')).toBe('First: judge 1 had it 1st.');
  });

  test('nobody to compare with', () => {
    expect(why(classOf(scored({ A: '70' }), total), 'A')).toBe('First: the only entry placed.');
    expect(because(placeClass(classOf(scored({ A: '70' }), total)), 'Z', plain)).toEqual([]);
  });
});

describe('how a tie was split', () => {
  const parts = (form: string, penalties: number, marks: string[]): LineParts => ({
    maneuvers: new Map(marks.map((mark, index) => [index + 1, exact(mark)])),
    form: exact(form),
    penaltyPoints: exact(penalties),
    penaltyCount: penalties === 0 ? 0 : 1,
  });
  const line = (one: LineParts): ScoredLine => ({ tier: 'kept-pattern', score: exact(70), parts: one });
  const cards = [
    cardFromScores(
      { judge: 'judge 1' },
      new Map([
        ['A', line(parts('3', 5, ['1', '0']))],
        ['B', line(parts('4', 3, ['0.5', '1']))],
      ]),
    ),
  ];
  const tie = (...ties: TieBreak[]) =>
    why(classOf(cards, total, { ties }), 'A')
      .replace('First: 70. ', '')
      .replace('Second: 70. ', '');

  test.each<[TieBreak, string]>([
    [{ code: 'maneuvers', order: [1] }, 'Tied with B; ahead by the marks on maneuver 1 (A: 1, B: 0.5).'],
    [{ code: 'count-back' }, 'Tied with B; behind by the second highest maneuver mark (A: 0, B: 0.5).'],
    [{ code: 'form' }, 'Tied with B; behind by form and effectiveness (A: 3, B: 4).'],
    [
      { code: 'penalties', count: 'points' },
      'Tied with B; behind by points in penalties, the fewest first (A: 5, B: 3).',
    ],
  ])('%j', (rule, sentence) => expect(tie(rule)).toBe(sentence));

  test('by tie judge, by best place, by firsts, between the tied', () => {
    const level = scored({ A: '71', B: '70' }, { A: '70', B: '71' });
    expect(
      why(
        classOf(level, total, { ties: [{ code: 'tie-judge', judges: ['judge 2'], alternate: false }] }),
        'B',
      ),
    ).toBe('First: 70 + 71 = 141. Tied with A; ahead by the card of judge 2, tie judge (B: 1st, A: 2nd).');
    const places = placesPanel({ A: [1, 4, 4], B: [3, 3, 3] });
    expect(why(classOf(places, rankSum, { ties: [{ code: 'best-single-place' }] }), 'A')).toBe(
      'First: places 1, 4 and 4 add up to 9. Tied with B; ahead by the best place with any judge (A: 1st, B: 3rd).',
    );
    expect(why(classOf(places, rankSum, { ties: [{ code: 'head-to-head' }] }), 'A')).toBe(
      'Second: places 1, 4 and 4 add up to 9. Tied with B; behind by the number of tied entries that more judges had it ahead of (A: 0, B: 1).',
    );
  });

  test('of many tied entries the nearest three are named and the rest counted', () => {
    const many = scored(Object.fromEntries('ABCDEFG'.split('').map((entry) => [entry, '70'])));
    expect(why(classOf(many, total, { ties: [{ code: 'draw', seed: 'x' }] }), 'D')).toMatch(
      /^\w+: 70\. Tied with [A-G], [A-G], [A-G] and 3 more; placed \w+ of the seven by lot from the announced seed "x"\.$/,
    );
  });

  test('by a recorded decision: who decided stands beside it', () => {
    const level = scored({ A: '70', B: '70', C: '70' });
    const input = classOf(level, total, {
      ties: [{ code: 'run-off' }],
      decisions: [{ id: 'r1', kind: 'run-off', order: [['B'], ['A', 'C']] }],
    });
    const decision = (id: string) => `recorded by the show manager (${id})`;
    const teller: Teller = { speech: english, names: { ...plain.names, decision } };
    expect(why(input, 'B', teller)).toBe(
      'First: 70. Tied with A and C; placed first of the three by a run-off, recorded by the show manager (r1).',
    );
    expect(why(input, 'A', teller)).toBe(
      'Second: 70. Tied with B and C; placed second of the three by a run-off, recorded by the show manager (r1). Tied with C, and they share the place.',
    );
  });

  test('while a run-off is waited for', () => {
    const level = scored({ A: '70', B: '70' });
    expect(why(classOf(level, total, { ties: [{ code: 'run-off' }] }), 'A')).toBe(
      'First: 70. Tied with B: a run-off will decide, unless it is declined.',
    );
  });

  test('shared by rule', () => {
    const level = scored({ A: '70', B: '70' });
    expect(why(classOf(level, total, { ties: [{ code: 'share' }] }), 'A')).toBe(
      'First: 70. Tied with B, and they share the place.',
    );
  });
});

describe('status and notes', () => {
  const below = cardFromScores(
    {
      judge: 'judge 1',
      ruledOut: new Map([
        ['C', 'off-pattern'],
        ['D', undefined],
      ]),
    },
    new Map([
      ['A', { tier: 'kept-pattern', score: exact(60) }],
      [
        'B',
        {
          tier: 'placed-below',
          score: exact(75),
          flags: [{ kind: 'not-seen', position: 2, treatedAs: 'left-out' }],
        },
      ],
    ]),
  );

  test('placed below, and above', () => {
    const input = classOf([below], total);
    expect(why(input, 'A')).toBe('First: A kept the pattern, and stands above all who did not.');
    expect(why(input, 'B')).toBe(
      'Second: placed below all who kept the pattern, as ruled by judge 1. Judge 1 could not see maneuver 2; it is left out of that score, neither a zero nor a fault.',
    );
  });

  test('not placed', () => {
    const { unplaced } = placeClass(classOf([below], total, { entries: ['A', 'B', 'C', 'D', 'E'] }));
    expect(unplaced.map((one) => whyUnplaced(one, plain))).toEqual([
      'C may not be placed: ruled off pattern by judge 1.',
      'D may not be placed: ruled out by judge 1.',
      "E is on no judge's card.",
    ]);
    expect(
      whyUnplaced({ entry: 'A', why: { code: 'no-score', judges: ['judge 1', 'judge 2'] } }, plain),
    ).toBe("A has no score from judge 1 and judge 2, and every judge's score is needed.");
    expect(whyUnplaced({ entry: 'A', why: { code: 'beyond-places', placesGiven: 1 } }, plain)).toBe(
      'Only one place is given in this class.',
    );
    expect(whyUnplaced({ entry: 'A', why: { code: 'beyond-places', placesGiven: 10 } }, plain)).toBe(
      'Only 10 places are given in this class.',
    );
  });

  test('what a judge’s card says beside the numbers', () => {
    const note = (flag: Parameters<typeof noteSentence>[0]['flag']) =>
      noteSentence({ entry: 'A', judge: 'judge 1', flag }, plain);
    expect(note({ kind: 'not-seen', position: 2, treatedAs: 'absent' })).toBe(
      'Judge 1 could not see maneuver 2; it is judged as not shown, and the judge ruled on the pattern.',
    );
    expect(note({ kind: 'score-stands', ruling: 'off-pattern' })).toBe(
      "Judge 1 noted off pattern; at the judge's discretion the score stands.",
    );
    expect(note({ kind: 'lower-limit', sum: '-3' })).toBe(
      "Judge 1's marks add up to −3, which counts as the lowest score of the sheet.",
    );
  });
});
