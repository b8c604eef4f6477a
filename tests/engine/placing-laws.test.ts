/** Laws that hold for every class: all methods, tie-breaks, options, statuses and recorded decisions mixed at will. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import { replay } from '../../src/engine/placing/replay.ts';
import type { MergeRule, Placing, PlacingRule, Reason } from '../../src/engine/placing/types.ts';
import { anyClass, byPlace, byScore, discard, grouped, names, ruleFor, scoredLine } from './any-class.ts';

const runs = { numRuns: 1_000 };
const placesOf = ({ placed }: Placing) =>
  Object.fromEntries(placed.map(({ entry, place }) => [entry, place]));
const beyond = ({ unplaced }: Placing) =>
  unplaced.filter(({ why }) => why.code === 'beyond-places').map(({ entry }) => entry);

describe('for every class', () => {
  test('every entry is placed once, or is named once with why it is not', () => {
    fc.assert(
      fc.property(anyClass, (input) => {
        const { placed, unplaced } = placeClass(input);
        const named = [...placed, ...unplaced].map(({ entry }) => entry);
        expect(named.toSorted()).toEqual(names);
      }),
      runs,
    );
  });

  test('places run 1, 2, 2, 4: each is one more than the entries before it, and shared exactly where it says tied', () => {
    fc.assert(
      fc.property(anyClass, (input) => {
        const { placed } = placeClass(input);
        placed.forEach(({ place, tied }) => {
          expect(place).toBe(1 + placed.filter((other) => other.place < place).length);
          expect(tied).toBe(placed.filter((other) => other.place === place).length > 1);
        });
      }),
      runs,
    );
  });

  test('the reasons alone, through JSON, give the placing again', () => {
    fc.assert(
      fc.property(anyClass, (input) => {
        const placing = placeClass(input);
        const order = [...placing.placed.map(({ entry }) => entry), ...beyond(placing)];
        const kept: Reason[] = JSON.parse(JSON.stringify(placing.reasons));
        const groups = replay(order.toSorted(), kept);
        expect(groups.flat().toSorted()).toEqual(order.toSorted());
        let place = 1;
        for (const group of groups) {
          for (const entry of group) {
            const found = placing.placed.find((one) => one.entry === entry);
            if (found !== undefined) expect([entry, found.place]).toEqual([entry, place]);
            else expect(place).toBeGreaterThan(input.rule.placesGiven ?? 0);
          }
          place += group.length;
        }
      }),
      runs,
    );
  });

  test('the order of entries and of cards does not matter', () => {
    fc.assert(
      fc.property(anyClass, fc.infiniteStream(fc.nat()), (input, shuffle) => {
        const mixed = <T>(items: readonly T[]) =>
          items
            .map((item) => ({ item, at: shuffle.next().value ?? 0 }))
            .sort((a, b) => a.at - b.at)
            .map(({ item }) => item);
        const again = placeClass({ ...input, entries: mixed(input.entries), cards: mixed(input.cards) });
        expect(placesOf(again)).toEqual(placesOf(placeClass(input)));
      }),
      runs,
    );
  });

  test('renaming entries changes nothing but names (a lot aside, which is drawn from the name)', () => {
    const renamed = (entry: string) => `horse ${entry.charCodeAt(0) * 7}`;
    fc.assert(
      fc.property(anyClass, (input) => {
        const rule = { ...input.rule, ties: input.rule.ties.filter(({ code }) => code !== 'draw') };
        const cards = input.cards.map((card) => ({
          ...card,
          lines: new Map([...card.lines].map(([entry, line]) => [renamed(entry), line] as const)),
          ruledOut: new Map([...card.ruledOut].map(([entry, code]) => [renamed(entry), code] as const)),
        }));
        const decisions = input.decisions.map((one) => ({
          ...one,
          order: one.order.map((group) => group.map(renamed)),
        }));
        const again = placeClass({ ...input, rule, cards, decisions, entries: input.entries.map(renamed) });
        const before = placesOf(placeClass({ ...input, rule }));
        expect(placesOf(again)).toEqual(
          Object.fromEntries(Object.entries(before).map(([entry, place]) => [renamed(entry), place])),
        );
      }),
      runs,
    );
  });

  test('an open tie is a tie that stands in the result', () => {
    fc.assert(
      fc.property(anyClass, (input) => {
        const { placed, openTies } = placeClass(input);
        for (const { entries, place } of openTies) {
          expect(
            placed
              .filter((one) => one.place === place)
              .map(({ entry }) => entry)
              .toSorted(),
          ).toEqual([...entries].sort());
        }
      }),
      runs,
    );
  });
});

describe('status before score', () => {
  test('where every judge says so, no mark lifts an entry that is placed below above one that kept the pattern', () => {
    const below = fc.subarray(names, { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(
        below,
        fc.array(fc.array(scoredLine, { minLength: 7, maxLength: 7 }), { minLength: 1, maxLength: 5 }),
        ruleFor(fc.oneof(byScore, byPlace)),
        (lowered, lines, rule) => {
          const cards = lines.map((card, index) =>
            cardFromScores(
              { judge: `judge ${index + 1}` },
              new Map(
                names.map((entry, at) => {
                  const line = card[at];
                  const tier = lowered.includes(entry) ? 'placed-below' : 'kept-pattern';
                  return [entry, { ...line, score: line?.score ?? exact(70), tier }] as const;
                }),
              ),
            ),
          );
          const { placed } = placeClass({
            entries: names,
            cards,
            rule: { ...rule, placesGiven: null },
            decisions: [],
            classNumber: 1,
          });
          const placesWhere = (isLowered: boolean) =>
            placed.filter(({ entry }) => lowered.includes(entry) === isLowered).map(({ place }) => place);
          expect(Math.max(0, ...placesWhere(false))).toBeLessThan(Math.min(...placesWhere(true)));
        },
      ),
      runs,
    );
  });
});

describe('monotony', () => {
  const fullRanked = fc
    .array(fc.shuffledSubarray(names, { minLength: 7 }).chain(grouped), { minLength: 1, maxLength: 6 })
    .map((cards) => cards.map((ranking, index) => cardFromRanking({ judge: `judge ${index + 1}` }, ranking)));

  test('one more judge who has the result on the card leaves the order by the sum of places as it is', () => {
    const merges = fc.constantFrom<MergeRule>(
      { method: 'rank-sum', cardTies: 'better', unlisted: 'next', discard: 'none' },
      { method: 'rank-sum', cardTies: 'mean', unlisted: 'next', discard: 'none' },
    );
    fc.assert(
      fc.property(fullRanked, merges, (cards, merge) => {
        const rule: PlacingRule = {
          merge,
          ties: [],
          afterSplit: 'go-on',
          placesGiven: null,
          rulingHolds: null,
        };
        const input = { entries: names, cards, rule, decisions: [], classNumber: 1 };
        const before = placeClass(input);
        const places = [...new Set(before.placed.map(({ place }) => place))];
        const groups = places.map((place) =>
          before.placed.filter((one) => one.place === place).map(({ entry }) => entry),
        );
        const agreeing = cardFromRanking({ judge: 'one more' }, groups);
        expect(placesOf(placeClass({ ...input, cards: [...cards, agreeing] }))).toEqual(placesOf(before));
      }),
      runs,
    );
  });

  test('a better mark from one judge never makes a total worse, nor the place by it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 120, max: 150 }), { minLength: 7, maxLength: 7 }), {
          minLength: 1,
          maxLength: 7,
        }),
        byScore,
        fc.nat({ max: 6 }),
        fc.nat({ max: 6 }),
        fc.integer({ min: 1, max: 40 }),
        (halves, merge, judge, who, more) => {
          const place = (marks: number[][]) => {
            const cards = marks.map((card, index) =>
              cardFromScores(
                { judge: `judge ${index + 1}` },
                new Map(
                  card.map((half, at) => [
                    names[at] ?? '',
                    { tier: 'kept-pattern', score: exact(half).div(2) },
                  ]),
                ),
              ),
            );
            const rule: PlacingRule = {
              merge,
              ties: [],
              afterSplit: 'go-on',
              placesGiven: null,
              rulingHolds: null,
            };
            const { placed } = placeClass({ entries: names, cards, rule, decisions: [], classNumber: 1 });
            return placed.find(({ entry }) => entry === names[who]);
          };
          const better = halves.map((card, index) =>
            card.map((half, at) => (index === judge % halves.length && at === who ? half + more : half)),
          );
          const before = place(halves);
          const after = place(better);
          expect(after?.total?.compare(before?.total ?? 0)).toBeGreaterThanOrEqual(0);
          expect(after?.place).toBeLessThanOrEqual(before?.place ?? 0);
        },
      ),
      runs,
    );
  });

  test('an entry that one judge moves up is placed no worse by sum, majority and pairwise', () => {
    const merges = fc.oneof(
      fc.constant({ method: 'pairwise' as const }),
      fc.record({
        method: fc.constant('rank-sum' as const),
        cardTies: fc.constant('better' as const),
        unlisted: fc.constant('next'),
        discard,
      }),
      fc.record({
        method: fc.constant('majority' as const),
        cardTies: fc.constant('better' as const),
        unlisted: fc.constant('next'),
        equalMajorities: fc.constantFrom('totals' as const, 'next-places' as const, 'average' as const),
      }),
    );
    const strict = fc.array(fc.shuffledSubarray(names, { minLength: 7 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(
        strict,
        merges,
        fc.nat({ max: 6 }),
        fc.integer({ min: 1, max: 6 }),
        (orders, merge, judge, up) => {
          const place = (cards: string[][], entry: string) => {
            const panel = cards.map((order, index) =>
              cardFromRanking(
                { judge: `judge ${index + 1}` },
                order.map((one) => [one]),
              ),
            );
            const rule: PlacingRule = {
              merge,
              ties: [],
              afterSplit: 'go-on',
              placesGiven: null,
              rulingHolds: null,
            };
            return placeClass({
              entries: names,
              cards: panel,
              rule,
              decisions: [],
              classNumber: 1,
            }).placed.find((one) => one.entry === entry)?.place;
          };
          const at = judge % orders.length;
          const order = orders[at] ?? [];
          const entry = order[up] ?? '';
          const moved = order.filter((one) => one !== entry).toSpliced(0, 0, entry);
          expect(place(orders.with(at, moved), entry)).toBeLessThanOrEqual(place(orders, entry) ?? 0);
        },
      ),
      runs,
    );
  });
});
