/** Laws that hold for every go; sums are added again by decimal.js, which is not ours. */
import { Decimal as Independent } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordText } from '../../src/engine/numbers/number-text.ts';
import { checkCard } from '../../src/engine/sheets/check-card.ts';
import { draftFaults, runningScore, scoreGo } from '../../src/engine/sheets/score-go.ts';
import type { Go, PatternSheet } from '../../src/engine/sheets/types.ts';
import { maneuvers, marked, pattern, percentage, scored } from './sheets-examples.ts';

Independent.set({ precision: 60 });

/** -3 to 3 by halves, as text. */
const halfMark = fc.integer({ min: -6, max: 6 }).map((halves) => String(halves / 2));
const formMark = fc.integer({ min: 0, max: 10 }).map((halves) => String(halves / 2));
const penaltyCode = fc.constantFrom('minor', 'major', 'severe');
const coefficient = fc.constantFrom('1', '2', '0.5', '1.25', '0.333333333');
const points: Readonly<Record<string, number>> = { minor: 3, major: 5, severe: 10 };

const patternGo = fc.record({
  marks: fc.array(fc.option(halfMark, { freq: 8 }), { minLength: 1, maxLength: 12 }),
  coefficients: fc.array(coefficient, { minLength: 12, maxLength: 12 }),
  form: formMark,
  penalties: fc.array(penaltyCode, { maxLength: 15 }),
});
type PatternGo = typeof patternGo extends fc.Arbitrary<infer Value> ? Value : never;

const free: PatternSheet = { ...pattern, lowest: null };
const goOf = ({ marks, form, penalties }: PatternGo): Go => ({
  maneuvers: marked(...marks),
  extras: { form },
  penalties: penalties.map((code) => ({ code })),
});

describe('a score on a pattern sheet', () => {
  it('is always base + maneuvers + form - penalties (added again by decimal.js)', () => {
    fc.assert(
      fc.property(patternGo, (given) => {
        const { score } = scored(free, maneuvers(given.marks.length, given.coefficients), goOf(given));
        let expected = new Independent(70).add(given.form);
        for (const [index, mark] of given.marks.entries()) {
          expected = expected.add(new Independent(mark ?? 0).mul(given.coefficients[index] ?? 1));
        }
        for (const code of given.penalties) expected = expected.sub(points[code] ?? 0);
        expect(score && recordText(score)).toBe(expected.toFixed());
      }),
    );
  });

  it('is the sum of the parts that it shows', () => {
    fc.assert(
      fc.property(patternGo, (given) => {
        const { score, parts } = scored(free, maneuvers(given.marks.length, given.coefficients), goOf(given));
        const added = [...parts.maneuvers, ...parts.extras].flatMap(({ counts }) => (counts ? [counts] : []));
        const taken = parts.penalties.map((penalty) => penalty.points.neg());
        const again = [...added, ...taken].reduce((total, part) => total.add(part), parts.base);
        expect(score?.equals(again)).toBe(true);
      }),
    );
  });

  it('does not depend on the order of penalties or of marks', () => {
    fc.assert(
      fc.property(patternGo, fc.infiniteStream(fc.nat()), (given, lots) => {
        const shuffled = <Item>(items: readonly Item[]) =>
          items
            .map((item) => ({ item, lot: lots.next().value ?? 0 }))
            .sort((a, b) => a.lot - b.lot)
            .map(({ item }) => item);
        const go = goOf(given);
        const other = {
          ...go,
          maneuvers: shuffled(go.maneuvers ?? []),
          penalties: shuffled(go.penalties ?? []),
        };
        const test = maneuvers(given.marks.length, given.coefficients);
        expect(scored(free, test, other).score?.equals(scored(free, test, go).score ?? 0)).toBe(true);
      }),
    );
  });

  it('is what the running score shows once everything is written, and never a draft fault on the way', () => {
    fc.assert(
      fc.property(patternGo, fc.nat(12), (given, written) => {
        const test = maneuvers(given.marks.length);
        const go = goOf(given);
        expect(runningScore(pattern, test, go)).toMatchObject({ faults: [], ...scored(pattern, test, go) });
        const partly = { ...go, maneuvers: (go.maneuvers ?? []).slice(0, written) };
        expect(draftFaults(pattern, test, partly)).toEqual([]);
      }),
    );
  });

  it('rises by exactly one step times the coefficient when one mark rises by one step', () => {
    fc.assert(
      fc.property(fc.integer({ min: -6, max: 5 }), coefficient, (halves, times) => {
        const at = (mark: number) =>
          scored(free, maneuvers(1, [times]), { maneuvers: marked(String(mark / 2)), extras: { form: '0' } })
            .score;
        const rise = at(halves + 1)?.sub(at(halves) ?? 0);
        expect(rise && recordText(rise)).toBe(new Independent(times).div(2).toFixed());
      }),
    );
  });

  it('never drops what was written: every mark, penalty and note is a part or a flag', () => {
    fc.assert(
      fc.property(patternGo, (given) => {
        const { parts, flags } = scored(free, maneuvers(given.marks.length), goOf(given));
        expect(parts.maneuvers).toHaveLength(given.marks.length);
        expect(parts.penalties.map(({ code }) => code)).toEqual(given.penalties);
        expect(flags.filter(({ kind }) => kind === 'not-seen')).toHaveLength(
          given.marks.filter((mark) => mark === null).length,
        );
      }),
    );
  });
});

describe('any text as a mark', () => {
  const strange = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom(...'0123456789.-+eE /½∞') }),
    fc.double().map(String),
    halfMark,
  );

  it('is a mark on the scale or a fault, never an exception (read again by decimal.js)', () => {
    fc.assert(
      fc.property(strange, (text) => {
        const result = scoreGo(free, maneuvers(1), { maneuvers: marked(text), extras: { form: '0' } });
        if (!result.ok) {
          expect(result.faults).toHaveLength(1);
          expect(result.faults[0]).toMatchObject({ at: '/maneuvers/0/mark', position: 1 });
          return;
        }
        const mark = new Independent(text);
        expect(mark.abs().lte(3) && mark.mul(2).isInteger()).toBe(true);
        expect(result.score.score && recordText(result.score.score)).toBe(mark.add(70).toFixed());
      }),
      { numRuns: 2_000 },
    );
  });

  it('that is on the scale is never refused', () => {
    fc.assert(
      fc.property(halfMark, (mark) => {
        expect(scoreGo(free, maneuvers(1), { maneuvers: marked(mark), extras: { form: '0' } }).ok).toBe(true);
      }),
    );
  });
});

describe('a percentage', () => {
  const test = fc.array(
    fc.record({
      mark: fc.integer({ min: 0, max: 20 }).map((halves) => String(halves / 2)),
      coefficient: fc.constantFrom('1', '2', '3'),
    }),
    { minLength: 1, maxLength: 20 },
  );

  it('is (marks x coefficients - errors) / highest possible x 100, rounded half up to 3 (decimal.js)', () => {
    fc.assert(
      fc.property(test, formMark, fc.integer({ min: 0, max: 2 }), (lines, gaits, errorsOfCourse) => {
        const pattern = maneuvers(
          lines.length,
          lines.map((line) => line.coefficient),
        );
        const go: Go = {
          maneuvers: marked(...lines.map(({ mark }) => mark)),
          extras: { gaits },
          errorsOfCourse,
        };
        const added = lines.reduce(
          (total, line) => total.add(new Independent(line.mark).mul(line.coefficient)),
          new Independent(gaits).mul(2),
        );
        const most = lines.reduce(
          (total, line) => total.add(new Independent(10).mul(line.coefficient)),
          new Independent(20),
        );
        const percent = added
          .sub([0, 2, 6][errorsOfCourse] ?? 0)
          .div(most)
          .mul(100);
        const { score } = scored({ ...percentage, roundJudge: { places: 3, mode: 'half-up' } }, pattern, go);
        expect(
          score &&
            new Independent(recordText(score)).equals(percent.toDecimalPlaces(3, Independent.ROUND_HALF_UP)),
        ).toBe(true);
      }),
    );
  });

  it('is 100 where every mark is the highest and 0 where every mark is zero', () => {
    fc.assert(
      fc.property(test, (lines) => {
        const pattern = maneuvers(
          lines.length,
          lines.map((line) => line.coefficient),
        );
        const all = (mark: string) =>
          scored(percentage, pattern, {
            maneuvers: marked(...lines.map(() => mark)),
            extras: { gaits: mark },
          }).score;
        expect([all('10'), all('0')].map((score) => score && recordText(score))).toEqual(['100', '0']);
      }),
    );
  });
});

describe('a card', () => {
  const rulings = fc.constantFrom(undefined, 'off-pattern', 'disqualified', 'retired');
  const someGoes = fc.array(fc.record({ mark: halfMark, ruling: rulings }), { maxLength: 25 });
  const cardOf = (
    lines: readonly { mark: string; ruling: 'off-pattern' | 'disqualified' | 'retired' | undefined }[],
    backwards: boolean,
  ) => {
    const named = lines.map(({ mark, ruling }, index) => {
      const go: Go = {
        maneuvers: marked(mark),
        extras: { form: '0' },
        ...(ruling ? { ruling: { code: ruling } } : {}),
      };
      return [`entry ${index}`, go] as const;
    });
    const goes = Object.fromEntries(backwards ? [...named].reverse() : named);
    const entries = lines.map((_, index) => ({ id: `entry ${index}`, going: true }));
    const checked = checkCard({ sheet: pattern, maneuvers: maneuvers(1), entries, content: { goes } });
    if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
    return checked.card;
  };

  it('holds every entry once, in groups that fall in status, then in score', () => {
    fc.assert(
      fc.property(someGoes, (lines) => {
        const { order, openTies } = cardOf(lines, false);
        expect(order.flatMap(({ entries }) => entries).sort()).toEqual(
          lines.map((_, index) => `entry ${index}`).sort(),
        );
        for (const [index, group] of order.entries()) {
          const next = order[index + 1];
          if (next?.tier !== group.tier || !next.score || !group.score) continue;
          expect(group.score.compare(next.score)).toBeGreaterThan(0);
        }
        const tied = order.filter(({ tier, entries }) => tier !== 'not-placed' && entries.length > 1);
        expect(openTies).toEqual(tied.map(({ entries }) => entries));
      }),
    );
  });

  it('does not depend on the order in which the goes were written', () => {
    fc.assert(
      fc.property(someGoes, (lines) => {
        const groups = (backwards: boolean) =>
          cardOf(lines, backwards).order.map(({ entries }) => [...entries].sort());
        expect(groups(true)).toEqual(groups(false));
      }),
    );
  });

  it('once its open ties are ordered as they stand has none, and every place is held by one', () => {
    fc.assert(
      fc.property(someGoes, (lines) => {
        const { openTies } = cardOf(lines, false);
        const goes = Object.fromEntries(
          lines.map(({ mark, ruling }, index) => [
            `entry ${index}`,
            {
              maneuvers: marked(mark),
              extras: { form: '0' },
              ...(ruling ? { ruling: { code: ruling } } : {}),
            },
          ]),
        );
        const entries = lines.map((_, index) => ({ id: `entry ${index}`, going: true }));
        const again = checkCard({
          sheet: pattern,
          maneuvers: maneuvers(1),
          entries,
          content: { goes, ownOrder: openTies },
        });
        expect(again).toMatchObject({ ok: true, card: { openTies: [] } });
      }),
    );
  });
});
