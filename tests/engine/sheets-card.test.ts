import { describe, expect, it } from 'vitest';
import { recordText } from '../../src/engine/numbers/number-text.ts';
import { panelCard } from '../../src/engine/placing/panel-card.ts';
import type { CardContent, CheckedCard } from '../../src/engine/sheets/card-types.ts';
import { checkCard } from '../../src/engine/sheets/check-card.ts';
import type { Go, ScoreSheet } from '../../src/engine/sheets/types.ts';
import { maneuvers, marked, pattern, places, timed } from './sheets-examples.ts';

const one = maneuvers(1);
const go = (mark: string, more: Go = {}): Go => ({ maneuvers: marked(mark), extras: { form: '0' }, ...more });
const entriesOf = (going: string, scratched = '') => [
  ...[...going].map((id) => ({ id, going: true })),
  ...[...scratched].map((id) => ({ id, going: false })),
];

interface Case {
  readonly sheet?: ScoreSheet;
  readonly going: string;
  readonly scratched?: string;
  readonly content: CardContent;
}

const check = ({ sheet = pattern, going, scratched, content }: Case) =>
  checkCard({ sheet, maneuvers: one, entries: entriesOf(going, scratched), content });

const faults = (given: Case): string[] => {
  const result = check(given);
  return result.ok ? [] : result.faults.map(({ code, entry, at }) => `${code} ${entry} ${at}`);
};

function card(given: Case): CheckedCard {
  const result = check(given);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.card;
}

const orderOf = ({ order }: CheckedCard) =>
  order.map(({ tier, score, entries }) => `${tier} ${score ? recordText(score) : '-'} ${entries.join(' ')}`);

describe('a card of scores', () => {
  it('stands in order of status first and score second, with its ties', () => {
    const goes = {
      a: go('1'),
      b: go('3', { ruling: { code: 'off-pattern' } }),
      c: go('1'),
      d: { ruling: { code: 'disqualified' } } as const,
      e: go('-2'),
    };
    const checked = card({ going: 'abcde', content: { goes } });
    expect(orderOf(checked)).toEqual([
      'kept-pattern 71 a c',
      'kept-pattern 68 e',
      'placed-below 73 b',
      'not-placed - d',
    ]);
    expect(checked.openTies).toEqual([['a', 'c']]);
  });

  it('does not call entries tied that have the same score and another status', () => {
    const goes = { a: go('1'), b: go('1', { ruling: { code: 'off-pattern' } }) };
    expect(card({ going: 'ab', content: { goes } }).openTies).toEqual([]);
  });

  it('does not call those that may not be placed tied', () => {
    const out: Go = { ruling: { code: 'disqualified' } };
    expect(card({ going: 'ab', content: { goes: { a: out, b: out } } }).openTies).toEqual([]);
  });

  it('puts the least time first', () => {
    const goes = { a: { measure: '18.001' }, b: { measure: '17.999' } };
    expect(orderOf(card({ sheet: timed, going: 'ab', content: { goes } }))).toEqual([
      'kept-pattern 17.999 b',
      'kept-pattern 18.001 a',
    ]);
  });

  it('is refused with every fault of every entry at once', () => {
    const goes = { a: go('0.25'), s: go('1'), x: go('1'), c: { extras: { form: '0' } } };
    expect(faults({ going: 'abc', scratched: 's', content: { goes, ranking: [['a']] } })).toEqual([
      'mark_off_step a /goes/a/maneuvers/0/mark',
      'entry_not_going s /goes/s',
      'entry_unknown x /goes/x',
      'mark_missing c /goes/c/maneuvers',
      'entry_missing b /goes/b',
      'not_on_this_sheet undefined /ranking',
    ]);
  });

  it('may leave off an entry that does not go', () => {
    expect(faults({ going: 'a', scratched: 's', content: { goes: { a: go('1') } } })).toEqual([]);
  });

  it('of a class in which nobody goes is empty and signed', () => {
    expect(card({ going: '', scratched: 's', content: { goes: {} } }).order).toEqual([]);
  });

  it('writes ids in pointers as RFC 6901 has it', () => {
    const result = checkCard({
      sheet: pattern,
      maneuvers: one,
      entries: [{ id: 'a/b~c', going: true }],
      content: { goes: {} },
    });
    expect(result).toMatchObject({ faults: [{ code: 'entry_missing', at: '/goes/a~1b~0c' }] });
  });

  it('takes an entry called __proto__ for an entry', () => {
    const goes = JSON.parse('{"__proto__": {"maneuvers": []}}') as CardContent['goes'];
    expect(faults({ going: '', content: { goes } })).toEqual(['entry_unknown __proto__ /goes/__proto__']);
  });
});

describe("the judge's own order of her ties", () => {
  const goes = { a: go('1'), b: go('1'), c: go('1'), d: go('0') };
  const withOrder = (...ownOrder: string[][]): Case => ({ going: 'abcd', content: { goes, ownOrder } });

  it('breaks a tie, and changes places but no score', () => {
    const checked = card(withOrder(['c', 'a', 'b']));
    expect(checked.openTies).toEqual([]);
    const { lines } = panelCard({ judge: 'j' }, checked);
    expect([...lines].map(([entry, { place, holders }]) => [entry, recordText(place), holders])).toEqual([
      ['c', '1', 1],
      ['a', '2', 1],
      ['b', '3', 1],
      ['d', '4', 1],
    ]);
    expect(new Set(['a', 'b', 'c'].map((entry) => lines.get(entry)?.score?.toFraction())).size).toBe(1);
  });

  it.each([
    ['entries that are not tied', [['a', 'd']]],
    ['only some of a tie', [['a', 'b']]],
    ['more than the tie', [['a', 'b', 'c', 'd']]],
    ['an entry twice', [['a', 'a', 'b']]],
    [
      'a tie twice',
      [
        ['a', 'b', 'c'],
        ['c', 'b', 'a'],
      ],
    ],
    ['nobody', [[]]],
    ['one that is alone', [['d']]],
    ['a stranger', [['x', 'a', 'b']]],
  ])('may not name %s', (_, ownOrder) => {
    const index = ownOrder.length - 1;
    const found = faults(withOrder(...ownOrder));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(new RegExp(`^own_order_not_a_tie .* /ownOrder/${index}$`));
  });

  it('may not order those that may not be placed', () => {
    const out: Go = { ruling: { code: 'disqualified' } };
    const content = { goes: { a: out, b: out }, ownOrder: [['a', 'b']] };
    expect(faults({ going: 'ab', content })).toEqual(['own_order_not_a_tie a /ownOrder/0']);
  });

  it('left open carries the tie to the panel: places 1, 1, 1, 4', () => {
    const { lines } = panelCard({ judge: 'j' }, card(withOrder()));
    expect([...lines.values()].map(({ place }) => recordText(place))).toEqual(['1', '1', '1', '4']);
  });
});

describe('a card of a rail class that places three', () => {
  const rail = (going: string, ranking: string[][], goes: CardContent['goes'] = {}): Case => ({
    sheet: places,
    going,
    scratched: 's',
    content: { goes, ranking },
  });

  it('ranks the first three of five', () => {
    const checked = card(rail('abcde', [['c'], ['a'], ['e']]));
    expect(orderOf(checked)).toEqual(['kept-pattern - c', 'kept-pattern - a', 'kept-pattern - e']);
    const { lines } = panelCard({ judge: 'j' }, checked);
    expect([...lines.keys()]).toEqual(['c', 'a', 'e']);
  });

  it('ranks fewer only where fewer may be placed', () => {
    expect(faults(rail('ab', [['b'], ['a']]))).toEqual([]);
    expect(faults(rail('abc', [['b'], ['a']]))).toEqual(['ranking_too_short undefined /ranking']);
    expect(faults(rail('abc', [['b'], ['a']], { c: { ruling: { code: 'disqualified' } } }))).toEqual([]);
    expect(faults(rail('abc', []))).toEqual(['ranking_too_short undefined /ranking']);
  });

  it('ranks no more than three, but a tie for third may reach beyond', () => {
    expect(faults(rail('abcd', [['a'], ['b'], ['c'], ['d']]))).toEqual([
      'ranking_too_long undefined /ranking',
    ]);
    const checked = card(rail('abcd', [['a'], ['b'], ['c', 'd']]));
    expect(checked.openTies).toEqual([['c', 'd']]);
  });

  it('ranks nobody twice, nobody scratched, nobody strange, and nobody who was ruled out', () => {
    const goes: CardContent['goes'] = { d: { ruling: { code: 'disqualified' } } };
    expect(faults(rail('abcd', [['a'], ['a', 's'], ['x'], ['d']], goes))).toEqual([
      'ranked_twice a /ranking/1/0',
      'entry_not_going s /ranking/1/1',
      'entry_unknown x /ranking/2/0',
      'ranked_but_ruled_out d /ranking/3/0',
    ]);
  });

  it('has no empty place', () => {
    expect(faults(rail('abc', [['a'], [], ['b'], ['c']]))).toEqual(['ranking_too_long undefined /ranking']);
  });

  it('lets the judge put a shared place in her own order', () => {
    const content = { goes: {}, ranking: [['a', 'b'], ['c']], ownOrder: [['b', 'a']] };
    const checked = card({ sheet: places, going: 'abc', content });
    expect(checked.openTies).toEqual([]);
    const { lines } = panelCard({ judge: 'j' }, checked);
    expect([...lines].map(([entry, { place }]) => entry + recordText(place))).toEqual(['b1', 'a2', 'c3']);
  });

  it('carries rulings and flags to the panel', () => {
    const goes: CardContent['goes'] = {
      a: { ruling: { code: 'excused' } },
      d: { ruling: { code: 'disqualified' } },
    };
    const panel = panelCard({ judge: 'j' }, card(rail('abcd', [['a'], ['b'], ['c']], goes)));
    expect(panel.lines.get('a')?.flags).toEqual([{ kind: 'score-stands', ruling: 'excused' }]);
    expect([...panel.ruledOut]).toEqual([['d', 'disqualified']]);
  });
});
