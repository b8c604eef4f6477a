import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DrawEntry, drawOrder, leastGapOf, widestGap } from '../../src/engine/order-of-go/draw.ts';

const field = (riders: readonly string[]): DrawEntry[] =>
  riders.map((rider, index) => ({ id: `entry ${index + 1}`, lotName: String(101 + index), rider }));

const ridersOf = (entries: readonly DrawEntry[], order: readonly string[]) =>
  order.map((id) => entries.find((entry) => entry.id === id)?.rider ?? 'nobody');

/** Every order of a small field: the widest least gap that any of them has. Deliberately plain. */
function widestByTrying(riders: readonly string[]): number | null {
  let widest: number | null = null;
  const go = (done: readonly string[], rest: readonly string[]): void => {
    if (rest.length === 0) {
      const gap = leastGapOf(done);
      if (gap !== null) widest = Math.max(widest ?? 0, gap);
      return;
    }
    for (const rider of new Set(rest)) {
      const without = [...rest];
      without.splice(rest.indexOf(rider), 1);
      go([...done, rider], without);
    }
  };
  go([], riders);
  return widest;
}

const someRiders = (max: number) =>
  fc.array(fc.constantFrom('ann', 'bea', 'cy', 'dot', 'eli', 'fay'), { maxLength: max });

describe('the draw of the order of go', () => {
  it('goes by the SHA-256 of seed and back number where nobody rides twice (SHA-256 by node:crypto)', () => {
    const entries = field(['ann', 'bea', 'cy', 'dot', 'eli']);
    const lot = (name: string) => createHash('sha256').update(`Friday seed:${name}`).digest('hex');
    const expected = [...entries]
      .sort((a, b) => (lot(a.lotName) < lot(b.lotName) ? -1 : 1))
      .map(({ id }) => id);
    expect(drawOrder({ seed: 'Friday seed', entries })).toEqual({ order: expected, leastGap: null });
  });

  it('puts a rider with two horses among ten first and last', () => {
    const entries = field(['ann', 'bea', 'cy', 'ann', 'dot', 'eli', 'fay', 'gus', 'hal', 'ivy']);
    const { order, leastGap } = drawOrder({ seed: 'a', entries });
    expect(leastGap).toBe(9);
    expect([ridersOf(entries, order)[0], ridersOf(entries, order)[9]]).toEqual(['ann', 'ann']);
  });

  it('is content with a gap that was said to be enough', () => {
    const entries = field(['ann', 'bea', 'cy', 'ann', 'dot', 'eli', 'fay', 'gus', 'hal', 'ivy']);
    const gaps = Array.from({ length: 40 }, (_, seed) =>
      drawOrder({ seed: String(seed), entries, enough: 3 }),
    );
    expect(gaps.every(({ leastGap }) => leastGap !== null && leastGap >= 3)).toBe(true);
    expect(new Set(gaps.map(({ leastGap }) => leastGap)).size).toBeGreaterThan(2);
  });

  it('places everyone once', () => {
    fc.assert(
      fc.property(someRiders(40), fc.string(), (riders, seed) => {
        const entries = field(riders);
        expect([...drawOrder({ seed, entries }).order].sort()).toEqual(entries.map(({ id }) => id).sort());
      }),
    );
  });

  it('has the widest gap that any order has, by trying all orders', () => {
    fc.assert(
      fc.property(someRiders(7), fc.string(), (riders, seed) => {
        const widest = widestByTrying(riders);
        expect(widestGap(riders)).toBe(widest);
        expect(drawOrder({ seed, entries: field(riders) }).leastGap).toBe(widest);
      }),
      { numRuns: 150 },
    );
  });

  it('has the gap of the formula in fields of any size', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 25 }),
        fc.string(),
        (horses, seed) => {
          const riders = horses.flatMap((count, rider) =>
            Array.from({ length: count }, () => `rider ${rider}`),
          );
          expect(drawOrder({ seed, entries: field(riders) }).leastGap).toBe(widestGap(riders));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('does not depend on the order in which entries came in, nor on what riders are called', () => {
    fc.assert(
      fc.property(someRiders(20), fc.string(), fc.integer({ min: 0, max: 19 }), (riders, seed, turn) => {
        const entries = field(riders);
        const turned = [...entries.slice(turn), ...entries.slice(0, turn)].map((entry) => ({
          ...entry,
          rider: `the rider ${entry.rider}`,
        }));
        expect(drawOrder({ seed, entries: turned })).toEqual(drawOrder({ seed, entries }));
      }),
    );
  });

  it('gives another order for another seed', () => {
    const entries = field(Array.from({ length: 12 }, (_, index) => `rider ${index}`));
    const orders = Array.from({ length: 50 }, (_, seed) =>
      drawOrder({ seed: String(seed), entries }).order.join(),
    );
    expect(new Set(orders).size).toBe(50);
  });

  it('lets every entry go first about as often as any other where nobody rides twice', () => {
    const entries = field(['ann', 'bea', 'cy', 'dot', 'eli']);
    const firsts = Array.from(
      { length: 2_000 },
      (_, seed) => drawOrder({ seed: String(seed), entries }).order[0],
    );
    // 400 each is expected; the standard deviation is 18, and 100 is more than five of them.
    for (const { id } of entries)
      expect(Math.abs(firsts.filter((first) => first === id).length - 400)).toBeLessThan(100);
  });

  it('draws 300 entries of 100 riders in good time', () => {
    const entries = field(Array.from({ length: 300 }, (_, index) => `rider ${index % 100}`));
    const began = performance.now();
    expect(drawOrder({ seed: 'large', entries }).leastGap).toBe(100);
    expect(performance.now() - began).toBeLessThan(3_000);
  });

  it('refuses two entries with one back number', () => {
    const entries = [...field(['ann']), ...field(['bea'])];
    expect(() => drawOrder({ seed: 'a', entries })).toThrow('same lot name');
  });
});
