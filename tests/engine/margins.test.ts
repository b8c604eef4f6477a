/** How close a placing was: examples, and a search of everything on small classes. */
import { describe, expect, test } from 'vitest';
import { type Margin, margins, usualMarginSetting } from '../../src/engine/agreement/margins.ts';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard, PlacingInput, TieBreak } from '../../src/engine/placing/types.ts';
import { marginSentence } from '../../src/engine/sentences/agreement-sentences.ts';
import { plainTeller } from '../../src/engine/sentences/words.ts';
import { english } from '../../src/language/index.ts';
import {
  chanceFrom,
  oneOf,
  type RankedClass,
  rankedClass,
  type ScoredClass,
  scoredClass,
} from './naive/generate-class.ts';
import { classOf, majority, ranked, rankSum, scored, total } from './panels.ts';

const firstMargin = (input: PlacingInput) => margins(input)[0];

describe('totals, by points', () => {
  test('half a point more than the difference, on any judge’s card, where a level total would be a tie', () => {
    const input = classOf(scored({ A: '71', B: '70' }, { A: '70', B: '70.5' }), total);
    // 141 against 140.5: half a point makes a tie, a whole point puts B ahead.
    expect(firstMargin(input)).toMatchObject({
      ahead: 'A',
      behind: 'B',
      place: 1,
      change: { by: 'points', size: '1' },
    });
    expect(firstMargin(input)?.change).toMatchObject({
      on: [
        { judge: 'judge 1', entry: 'B', direction: 'up' },
        { judge: 'judge 1', entry: 'A', direction: 'down' },
        { judge: 'judge 2', entry: 'B', direction: 'up' },
        { judge: 'judge 2', entry: 'A', direction: 'down' },
      ],
    });
  });

  test('half a point is enough where the tie judge would split the tie that it makes', () => {
    const ties: TieBreak[] = [{ code: 'tie-judge', judges: ['judge 2'], alternate: false }];
    const input = classOf(scored({ A: '71', B: '70' }, { A: '70', B: '70.5' }), total, { ties });
    const change = firstMargin(input)?.change;
    expect(change).toMatchObject({ by: 'points', size: '0.5' });
    const [margin] = margins(input);
    expect(margin && marginSentence(margin, plainTeller(english))).toBe(
      'Half a point on the card of judge 1 or judge 2 would have put B ahead of A.',
    );
  });

  test('a discarded score can make no difference: then the next one that counts must change', () => {
    const cards = scored(
      { A: '80', B: '70' },
      { A: '70', B: '71' },
      { A: '71', B: '70.5' },
      { A: '60', B: '60' },
    );
    const [margin] = margins(classOf(cards, { method: 'total', discard: 'high-and-low', noScore: 'zero' }));
    // A counts 70 + 71, B 70 + 70.5: what B lacks is 0.5 and a little.
    expect(margin?.change).toMatchObject({ by: 'points', size: '1' });
  });

  test('the end of the scale is respected', () => {
    const input = classOf(scored({ A: '100', B: '99' }, { A: '90', B: '80' }), total);
    const range = { low: '89', high: '100' };
    expect(margins(input, { step: '0.5', range, upTo: 1 })[0]?.change).toEqual({
      by: 'points',
      size: '11.5',
      on: [{ judge: 'judge 2', entry: 'B', direction: 'up' }],
    });
    expect(margins(input, { step: '0.5', range: { low: '89.5', high: '91' }, upTo: 1 })[0]?.change).toEqual({
      by: 'none',
      why: 'no-single-change',
    });
  });

  test('times: the least wins, so faster is better', () => {
    const timed = (times: Record<string, string>) =>
      cardFromScores(
        { judge: 'timer', better: 'lower' },
        new Map(
          Object.entries(times).map(([entry, score]) => [
            entry,
            { tier: 'kept-pattern', score: exact(score) },
          ]),
        ),
      );
    const input = classOf([timed({ A: '17.25', B: '17.31' })], total);
    expect(margins(input, { step: '0.01', range: null, upTo: 1 })[0]?.change).toMatchObject({
      by: 'points',
      size: '0.07',
    });
  });

  test('one judge’s own card is looked at by points where it has them', () => {
    const input = classOf(scored({ A: '71', B: '70' }), { method: 'separate' });
    expect(firstMargin(input)?.change).toMatchObject({ by: 'points', size: '1.5' });
  });
});

describe('places', () => {
  test('one place on one card, moved up or down, and whose', () => {
    const input = classOf(ranked('A B C', 'A B C', 'B A C'), rankSum);
    expect(firstMargin(input)).toEqual({
      ahead: 'A',
      behind: 'B',
      place: 1,
      change: {
        by: 'places',
        size: 1,
        on: [
          { judge: 'judge 1', entry: 'B', direction: 'up' },
          { judge: 'judge 1', entry: 'A', direction: 'down' },
          { judge: 'judge 2', entry: 'B', direction: 'up' },
          { judge: 'judge 2', entry: 'A', direction: 'down' },
        ],
      },
    });
  });

  test('where no one judge could have done it, that is said', () => {
    const [margin] = margins(classOf(ranked('A B', 'A B', 'A B', 'A B', 'A B'), majority));
    expect(margin?.change).toEqual({ by: 'none', why: 'no-single-change' });
    expect(margin && marginSentence(margin, plainTeller(english))).toBe(
      "No single change on one judge's card would have put B ahead of A.",
    );
  });

  test('the referee’s card counts too', () => {
    const [one, two, three] = ranked('A B C', 'B A C', 'A C B');
    const cards = [one, two, three && { ...three, seat: 'referee' as const }].flatMap((card) => card ?? []);
    const change = firstMargin(classOf(cards, { method: 'two-judges-and-referee' }))?.change;
    expect(change).toMatchObject({ by: 'places', size: 1, on: [{ judge: 'judge 1' }, { judge: 'judge 1' }] });
  });

  test('an entry left off can come onto the end of a card: one place', () => {
    const points: MergeRule = {
      method: 'place-points',
      points: ['5', '4', '3', '2', '1'],
      unplaced: '0',
      cardTies: 'better',
      discard: 'none',
    };
    // 14, 9, 4 and 3 points for A, B, D and C.
    const input = classOf(ranked('A B C', 'A D', 'B A'), points);
    expect(margins(input).at(-1)).toMatchObject({
      ahead: 'D',
      behind: 'C',
      change: {
        by: 'places',
        size: 1,
        on: [
          { judge: 'judge 2', entry: 'C', direction: 'up' },
          { judge: 'judge 3', entry: 'C', direction: 'up' },
        ],
      },
    });
  });
});

describe('which pairs', () => {
  test('entries that share a place have no margin between them, and each has one with the next', () => {
    const found = margins(classOf(scored({ A: '70', B: '70', C: '69' }), total));
    expect(found.map(({ ahead, behind }) => `${ahead}${behind}`)).toEqual(['AC', 'BC']);
  });

  test('only as many pairs as are asked for', () => {
    const input = classOf(ranked('A B C D E'), rankSum);
    expect(margins(input, { ...usualMarginSetting, upTo: 2 }).map(({ place }) => place)).toEqual([1, 2]);
  });

  test('no mark puts an entry that was placed below ahead of one that kept the pattern', () => {
    const card = (judge: string) =>
      cardFromScores(
        { judge },
        new Map([
          ['A', { tier: 'kept-pattern', score: exact('60') }],
          ['B', { tier: 'placed-below', score: exact('75') }],
        ]),
      );
    const [margin] = margins(classOf([card('judge 1'), card('judge 2')], total));
    expect(margin?.change).toEqual({ by: 'none', why: 'status' });
    expect(margin && marginSentence(margin, plainTeller(english))).toBe(
      'B was placed below all who kept the pattern, so no mark could have put B ahead of A.',
    );
  });

  test('a place beyond those given is no margin', () => {
    expect(
      margins(classOf(ranked('A B C'), rankSum, { placesGiven: 2 })).map(({ behind }) => behind),
    ).toEqual(['B']);
  });
});

describe('in words', () => {
  const margin = (change: Margin['change']): Margin => ({ ahead: '214', behind: '118', place: 1, change });
  const on = [{ judge: 'judge 2', entry: '118', direction: 'up' as const }];

  test.each<[Margin['change'], string]>([
    [{ by: 'points', size: '0.5', on }, "Half a point on judge 2's card would have put 118 ahead of 214."],
    [{ by: 'points', size: '1', on }, "One point on judge 2's card would have put 118 ahead of 214."],
    [{ by: 'points', size: '2.5', on }, "2.5 points on judge 2's card would have put 118 ahead of 214."],
    [{ by: 'places', size: 1, on }, "One place on judge 2's card would have put 118 ahead of 214."],
    [{ by: 'places', size: 3, on }, "Three places on judge 2's card would have put 118 ahead of 214."],
  ])('%j', (change, sentence) => expect(marginSentence(margin(change), plainTeller(english))).toBe(sentence));
});

test('300 entries before nine judges have ten first margins, by points and by places', {
  timeout: 300_000,
}, () => {
  const chance = chanceFrom(300);
  const entries = Array.from({ length: 300 }, (_, index) => String(index + 1));
  const cards = scored(
    ...Array.from({ length: 9 }, () =>
      Object.fromEntries(entries.map((entry) => [entry, String(60 + Math.floor(chance() * 60) / 2)])),
    ),
  );
  for (const merge of [total, rankSum, majority]) {
    expect(margins(classOf(cards, merge)).length).toBe(10);
  }
});

const chains: [readonly TieBreak[], ...(readonly TieBreak[])[]] = [
  [],
  [{ code: 'tie-judge', judges: ['judge 1'], alternate: false }],
  [{ code: 'head-to-head' }, { code: 'most-firsts' }],
  [{ code: 'best-single-place' }, { code: 'draw', seed: 'margins' }],
];

describe('a search of every single change finds the same', () => {
  test('on 1,500 small classes merged by place, by every method', { timeout: 300_000 }, () => {
    const chance = chanceFrom(1_957);
    let impossible = 0;
    for (let made = 0; made < 1_500; made += 1) {
      const shown = small(rankedClass, chance);
      const unlisted = oneOf(chance, ['next', 'mean', '2']);
      const cardTies = oneOf<'better' | 'mean'>(chance, ['better', 'mean']);
      const discard = oneOf<'none' | 'high-and-low'>(chance, ['none', 'high-and-low']);
      const merge = oneOf<MergeRule>(chance, [
        { method: 'rank-sum', cardTies, unlisted, discard },
        {
          method: 'place-points',
          points: oneOf(chance, [
            ['10', '6', '3'],
            ['1', '2', '1'],
          ]),
          unplaced: '0',
          cardTies,
          discard,
        },
        {
          method: 'majority',
          cardTies,
          unlisted,
          equalMajorities: oneOf<'totals' | 'next-places' | 'average'>(chance, [
            'totals',
            'next-places',
            'average',
          ]),
        },
        { method: 'pairwise' },
        ...(shown.cards.length === 3 ? [{ method: 'two-judges-and-referee' } as const] : []),
      ]);
      const panel = panelOf(shown, merge);
      const input = classOf(panel, merge, { ties: oneOf(chance, chains) });
      for (const { ahead, behind, change } of margins(input)) {
        const expected = leastMove(shown, input, { ahead, behind });
        const found =
          change.by === 'places' ? { size: change.size, on: change.on.map(asText).sort() } : undefined;
        expect({ shown, merge, ahead, behind, found }).toEqual({
          shown,
          merge,
          ahead,
          behind,
          found: expected,
        });
        if (expected === undefined) impossible += 1;
      }
    }
    expect(impossible).toBeGreaterThan(50);
  });

  test('on 500 small classes of scores', { timeout: 300_000 }, () => {
    const chance = chanceFrom(2_016);
    let impossible = 0;
    for (let made = 0; made < 500; made += 1) {
      const shown = small(scoredClass, chance);
      const noScore = oneOf<'zero' | 'not-placed' | 'mean'>(chance, ['zero', 'not-placed', 'mean']);
      const discard = oneOf<'none' | 'high-and-low'>(chance, ['none', 'high-and-low']);
      const merge = oneOf<MergeRule>(chance, [
        { method: 'total', discard, noScore },
        { method: 'mean', discard, noScore, round: oneOf(chance, [null, { places: 0, mode: 'half-up' }]) },
      ]);
      const input = classOf(scoreCards(shown), merge, { ties: oneOf(chance, chains) });
      const range = { low: '55', high: '100' };
      for (const { ahead, behind, change } of margins(input, { step: '1', range, upTo: 10 })) {
        const expected = leastPoints(shown, input, { ahead, behind });
        const found =
          change.by === 'points'
            ? { size: Number(change.size), on: change.on.map(asText).sort() }
            : undefined;
        expect({ shown, merge, ahead, behind, found }).toEqual({
          shown,
          merge,
          ahead,
          behind,
          found: expected,
        });
        if (expected === undefined) impossible += 1;
      }
    }
    expect(impossible).toBeGreaterThan(5);
  });
});

/** At most five entries and five judges, so that everything can be tried. */
function small<T extends RankedClass | ScoredClass>(
  make: (chance: () => number) => T,
  chance: () => number,
): T {
  for (;;) {
    const shown = make(chance);
    if (shown.entries.length <= 5 && shown.cards.length <= 5) return shown;
  }
}

const asText = ({ judge, entry, direction }: { judge: string; entry: string; direction: string }) =>
  `${judge} ${entry} ${direction}`;

function panelOf({ cards }: RankedClass, { method }: MergeRule): PanelCard[] {
  return cards.map((ranking, index) =>
    cardFromRanking(
      {
        judge: `judge ${index + 1}`,
        seat: method === 'two-judges-and-referee' && index === 2 ? 'referee' : 'judge',
      },
      ranking,
    ),
  );
}

const scoreCards = ({ cards }: ScoredClass) =>
  cards.map((scores, index) =>
    cardFromScores(
      { judge: `judge ${index + 1}` },
      new Map(
        [...scores].map(
          ([entry, half]) => [entry, { tier: 'kept-pattern', score: exact(half).div(2) }] as const,
        ),
      ),
    ),
  );

function isSwapped(
  input: PlacingInput,
  cards: readonly PanelCard[],
  { ahead, behind }: { ahead: string; behind: string },
): boolean {
  const { placed } = placeClass({ ...input, cards });
  const place = (entry: string) =>
    placed.find((one) => one.entry === entry)?.place ?? Number.POSITIVE_INFINITY;
  return place(behind) < place(ahead);
}

interface Found {
  readonly size: number;
  readonly on: string;
}

function smallest(found: readonly Found[]): { size: number; on: string[] } | undefined {
  if (found.length === 0) return undefined;
  const size = Math.min(...found.map((one) => one.size));
  return {
    size,
    on: found
      .filter((one) => one.size === size)
      .map(({ on }) => on)
      .sort(),
  };
}

/** Takes each of the two out of each ranking and puts it back alone in every gap. */
function leastMove(shown: RankedClass, input: PlacingInput, pair: { ahead: string; behind: string }) {
  const found: Found[] = [];
  shown.cards.forEach((ranking, at) => {
    for (const [entry, direction] of [
      [pair.behind, 'up'],
      [pair.ahead, 'down'],
    ] as const) {
      const others = ranking
        .map((group) => group.filter((one) => one !== entry))
        .filter((group) => group.length > 0);
      const before = relations(ranking, entry);
      for (let gap = 0; gap <= others.length; gap += 1) {
        const moved = [...others.slice(0, gap), [entry], ...others.slice(gap)];
        const after = relations(moved, entry);
        const changed = [...after].filter(([other, relation]) => relation !== (before.get(other) ?? 1));
        const wrongWay = changed.some(
          ([other, relation]) => (direction === 'up') === relation > (before.get(other) ?? 1),
        );
        const cameOn = ranking.flat().includes(entry) ? 0 : 1;
        if (wrongWay || changed.length + cameOn === 0 || (direction === 'down' && cameOn === 1)) continue;
        const cards = panelOf({ ...shown, cards: shown.cards.with(at, moved) }, input.rule.merge);
        if (!isSwapped(input, cards, pair)) continue;
        found.push({ size: changed.length + cameOn, on: `judge ${at + 1} ${entry} ${direction}` });
      }
    }
  });
  return smallest(smallestOfEach(found));
}

/** For each other entry on the card: -1, it stands behind `entry`; 0 tied; 1 ahead. All are ahead of one left off. */
function relations(ranking: readonly (readonly string[])[], entry: string): Map<string, number> {
  const own = ranking.findIndex((group) => group.includes(entry));
  return new Map(
    ranking.flatMap((group, index) =>
      group.filter((one) => one !== entry).map((one) => [one, own < 0 ? 1 : Math.sign(own - index)] as const),
    ),
  );
}

function leastPoints(shown: ScoredClass, input: PlacingInput, pair: { ahead: string; behind: string }) {
  const found: Found[] = [];
  shown.cards.forEach((scores, at) => {
    for (const [entry, direction] of [
      [pair.behind, 'up'],
      [pair.ahead, 'down'],
    ] as const) {
      const half = scores.get(entry);
      if (half === undefined) continue;
      for (let size = 1; size <= 60; size += 1) {
        const next = half + (direction === 'up' ? 2 : -2) * size;
        if (next > 200 || next < 110) break;
        const cards = scoreCards({
          ...shown,
          cards: shown.cards.with(at, new Map([...scores, [entry, next]])),
        });
        if (!isSwapped(input, cards, pair)) continue;
        found.push({ size, on: `judge ${at + 1} ${entry} ${direction}` });
        break;
      }
    }
  });
  return smallest(found);
}

function smallestOfEach(found: readonly Found[]): Found[] {
  const least = new Map<string, Found>();
  for (const one of found)
    if ((least.get(one.on)?.size ?? Number.POSITIVE_INFINITY) > one.size) least.set(one.on, one);
  return [...least.values()];
}
