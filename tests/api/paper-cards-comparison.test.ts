/** Two people type one paper card: when have they typed the same, and where do they differ? */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { entryDifferences } from '../../src/cards/paper/entry-differences.ts';
import { settledContent } from '../../src/cards/paper/settled-content.ts';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import { type Go, rulingCodes } from '../../src/engine/sheets/types.ts';
import { sameContent } from '../../src/platform/canonical-json.ts';

/** In the order of go. */
const backNumbers = new Map([
  ['a', 204],
  ['b', 101],
  ['c', 117],
]);
const differences = (mine: CardContent, other: CardContent) =>
  entryDifferences({ mine: settledContent(mine), other: settledContent(other), backNumbers });
const goOf = (go: Go): CardContent => ({ goes: { a: go } });

describe('two people have typed the same', () => {
  test.each<[string, Go, Go]>([
    ['a mark with or without a zero at its end', { mark: '71.50' }, { mark: '71.5' }],
    ['maneuvers in any order', marks('1', '0.5'), { maneuvers: [...marks('1', '0.5').maneuvers].reverse() }],
    ['what is empty, and what is left out', { mark: '70', penalties: [], maneuvers: [] }, { mark: '70' }],
    ['no errors of course, and none written', { errorsOfCourse: 0, mark: '60' }, { mark: '60' }],
    ['a remark with other spaces', { remark: ' late  lead\n' }, { remark: 'late lead' }],
    [
      'penalties in any order',
      { penalties: [{ code: 'break', position: 2 }, { code: 'late-lead' }] },
      { penalties: [{ code: 'late-lead' }, { code: 'break', position: 2 }] },
    ],
  ])('%s', (_what, one, other) => {
    expect(differences(goOf(one), goOf(other))).toEqual([]);
    expect(settledContent(goOf(one))).toEqual(settledContent(goOf(other)));
  });

  test('a place that two entries share, whichever is named first; the ties of a card in any order', () => {
    const shared = (first: string, second: string) => ({ goes: {}, ranking: [['c'], [first, second]] });
    expect(differences(shared('a', 'b'), shared('b', 'a'))).toEqual([]);
    const ties = [
      ['a', 'b'],
      ['d', 'c'],
    ];
    expect(differences({ goes: {}, ownOrder: ties }, { goes: {}, ownOrder: [...ties].reverse() })).toEqual(
      [],
    );
  });
});

describe('two people have typed', () => {
  const field = { classEntryId: 'a', position: null, code: null };

  test('two marks for one maneuver: both are shown, and nothing between them', () => {
    expect(differences(goOf(marks('1', '0.5')), goOf(marks('1', '-0.5')))).toEqual([
      { ...field, part: 'maneuver', position: 2, mine: '0.5', other: '-0.5' },
    ]);
  });

  test('a mark, where the other read "not seen" or read nothing', () => {
    const [seen, empty] = [goOf(marks('1')), goOf({ remark: 'x' })];
    const notSeen = goOf({ maneuvers: [{ position: 1, notSeen: true }] });
    expect(differences(seen, notSeen)).toEqual([
      { ...field, part: 'maneuver', position: 1, mine: '1', other: 'not seen' },
    ]);
    expect(differences(empty, seen)).toEqual([
      { ...field, part: 'maneuver', position: 1, mine: null, other: '1' },
      { ...field, part: 'remark', mine: 'x', other: null },
    ]);
  });

  test('a penalty twice, where the other saw it once, or in another maneuver', () => {
    const taken = (...positions: number[]) =>
      goOf({ penalties: positions.map((position) => ({ code: 'break', position })) });
    expect(differences(taken(2, 2, 3), taken(2, 4))).toEqual([
      { ...field, part: 'penalty', code: 'break', position: 2, mine: '2', other: '1' },
      { ...field, part: 'penalty', code: 'break', position: 3, mine: '1', other: null },
      { ...field, part: 'penalty', code: 'break', position: 4, mine: null, other: '1' },
    ]);
  });

  test('every other field of a go that differs, each by its own name', () => {
    const mine: Go = {
      ...{ mark: '70', measure: '31.2', errorsOfCourse: 1, remark: 'a' },
      ...{ extras: { form: '3' }, ruling: { code: 'off-pattern', remark: 'wrong side' } },
      maneuvers: [{ position: 1, mark: '0', remark: 'late' }],
    };
    const other: Go = {
      ...{ mark: '71', measure: '32.1', errorsOfCourse: 2, remark: 'b' },
      ...{ extras: { form: '2' }, ruling: { code: 'excused', remark: 'wrong rein' } },
      maneuvers: [{ position: 1, mark: '0', remark: 'lame' }],
    };
    expect(differences(goOf(mine), goOf(other)).map(({ part, mine: a, other: b }) => [part, a, b])).toEqual([
      ['maneuver-remark', 'late', 'lame'],
      ['extra', '3', '2'],
      ['errors-of-course', '1', '2'],
      ['mark', '70', '71'],
      ['measure', '31.2', '32.1'],
      ['ruling', 'off-pattern', 'excused'],
      ['ruling-remark', 'wrong side', 'wrong rein'],
      ['remark', 'a', 'b'],
    ]);
  });

  test('two places of a rail class that changed round: both entries are named, in the order of go', () => {
    const mine = { goes: {}, ranking: [['b'], ['a'], ['c']] };
    const other = { goes: {}, ranking: [['b'], ['c'], ['a']] };
    expect(differences(mine, other)).toEqual([
      { ...field, part: 'ranking', mine: '2', other: '3' },
      { ...field, classEntryId: 'c', part: 'ranking', mine: '3', other: '2' },
    ]);
    const shared = { goes: {}, ranking: [['b'], ['a', 'c']] };
    expect(differences(mine, shared)).toEqual([
      { ...field, classEntryId: 'c', part: 'ranking', mine: '3', other: '2' },
    ]);
  });

  test('the order of a tie the other way round', () => {
    const tie = (...ownOrder: string[]) => ({ goes: {}, ownOrder: [ownOrder] });
    expect(differences(tie('a', 'b'), tie('b', 'a'))).toEqual([
      { ...field, part: 'own-order', mine: '1 of 101, 204', other: '2 of 101, 204' },
      { ...field, classEntryId: 'b', part: 'own-order', mine: '2 of 101, 204', other: '1 of 101, 204' },
    ]);
  });
});

describe('for any two cards', () => {
  test('there is no difference exactly where the settled cards are the same', () => {
    fc.assert(
      fc.property(card, card, (one, other) => {
        const same = sameContent(settledContent(one), settledContent(other));
        expect(differences(one, other).length === 0).toBe(same);
        expect(differences(one, structuredClone(one))).toEqual([]);
      }),
      { numRuns: 2_000 },
    );
  });

  test('one field that is changed is the one difference that is shown', () => {
    fc.assert(
      fc.property(card, fc.constantFrom('a', 'b', 'c'), (one, id) => {
        const before = { ...one, goes: { ...one.goes, [id]: { ...one.goes[id], mark: '70' } } };
        const after = { ...one, goes: { ...one.goes, [id]: { ...one.goes[id], mark: '70.5' } } };
        const field = { classEntryId: id, part: 'mark', position: null, code: null };
        expect(differences(before, after)).toEqual([{ ...field, mine: '70', other: '70.5' }]);
      }),
    );
  });

  test('what one sees as hers the other sees as the other, field by field', () => {
    fc.assert(
      fc.property(card, card, (one, other) => {
        const turned = differences(other, one).map((field) => {
          return { ...field, mine: field.other, other: field.mine };
        });
        const order = (a: object, b: object) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1);
        expect(differences(one, other).sort(order)).toEqual(turned.sort(order));
      }),
    );
  });

  test('settled once is settled', () => {
    fc.assert(
      fc.property(card, (one) => {
        expect(settledContent(settledContent(one))).toEqual(settledContent(one));
      }),
    );
  });
});

function marks(...given: string[]) {
  return { maneuvers: given.map((mark, index) => ({ position: index + 1, mark })) };
}

const text = fc.constantFrom('0', '1', '1.0', '-0.5', '70', '½');
const remark = fc.option(fc.constantFrom('', 'late', ' late ', 'lame'), { nil: undefined });
const position = fc.integer({ min: 1, max: 4 });
const withoutNothing = <T extends object>(of: T): T =>
  Object.fromEntries(Object.entries(of).filter(([, value]) => value !== undefined)) as T;

const maneuvers = fc.uniqueArray(
  fc.oneof(
    fc.record({ position, mark: text, remark }),
    fc.record({ position, notSeen: fc.constant(true as const), remark }),
  ),
  { selector: (one) => one.position, maxLength: 4 },
);

const go = fc
  .record(
    {
      maneuvers: maneuvers.map((all) => all.map(withoutNothing)),
      extras: fc.dictionary(fc.constantFrom('form', 'gaits'), text, { noNullPrototype: true }),
      penalties: fc.array(
        fc
          .record({
            code: fc.constantFrom('break', 'late-lead'),
            position: fc.option(position, { nil: undefined }),
          })
          .map(withoutNothing),
        { maxLength: 4 },
      ),
      errorsOfCourse: fc.nat(2),
      mark: text,
      measure: text,
      ruling: fc.record({ code: fc.constantFrom(...rulingCodes), remark }).map(withoutNothing),
      remark: fc.constantFrom('', 'late', 'lame'),
    },
    { requiredKeys: [] },
  )
  .map((one) => one as Go);

/** Groups of the three entries in some order. */
const groups = fc
  .tuple(fc.shuffledSubarray(['a', 'b', 'c']), fc.constantFrom(1, 2, 3))
  .map(([ids, size]) => [ids.slice(0, size), ids.slice(size)].filter((group) => group.length > 0));

const card: fc.Arbitrary<CardContent> = fc
  .record(
    {
      goes: fc.dictionary(fc.constantFrom('a', 'b', 'c'), go, { noNullPrototype: true }),
      ownOrder: groups,
      ranking: groups,
    },
    { requiredKeys: ['goes'] },
  )
  .map((one) => one as CardContent);
