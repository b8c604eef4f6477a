/** 150,000 made-up classes judged by places: the engine and a second, plain way of counting agree on every one. */
import { expect, test } from 'vitest';
import type { Unlisted } from '../../../src/engine/placing/types.ts';
import { naiveRankSum } from './added-up.ts';
import { enginePlacesOfRanks, mustAgree } from './agreement-of-both.ts';
import type { PlaceOptions } from './counted-places.ts';
import { chanceFrom, oneOf, rankedClass, wholeUpTo } from './generate-class.ts';
import { type EqualMajorities, naiveMajority } from './majority.ts';
import { naivePairwise } from './pairwise.ts';

const classes = 50_000;
const allowedMs = 300_000;

function options(chance: () => number): {
  readonly naive: PlaceOptions;
  readonly engine: { cardTies: 'better' | 'mean'; unlisted: Unlisted };
} {
  const cardTies = oneOf<'better' | 'mean'>(chance, ['better', 'mean']);
  const unlisted = oneOf<'next' | 'mean' | number>(chance, ['next', 'mean', 1 + wholeUpTo(chance, 31) / 2]);
  return {
    naive: { cardTies, unlisted },
    engine: { cardTies, unlisted: typeof unlisted === 'number' ? String(unlisted) : unlisted },
  };
}

test('the sum of places, with ties on cards, entries left off, and the best and worst place discarded', {
  timeout: allowedMs,
}, () => {
  const chance = chanceFrom(11_071_969);
  let shared = 0;
  for (let made = 0; made < classes; made += 1) {
    const shown = rankedClass(chance);
    const { naive, engine } = options(chance);
    const discard = chance() < 0.5;
    const expected = naiveRankSum(shown, { ...naive, discard });
    const places = enginePlacesOfRanks(shown, {
      method: 'rank-sum',
      ...engine,
      discard: discard ? 'high-and-low' : 'none',
    });
    mustAgree(places, expected, () => ({ ...shown, ...naive, discard }));
    if (new Set(expected.values()).size < expected.size) shared += 1;
  }
  expect(shared).toBeGreaterThan(classes / 10);
});

test('the majority of places, in all three ways of splitting equal majorities', {
  timeout: allowedMs,
}, () => {
  const chance = chanceFrom(23_021_980);
  let shared = 0;
  for (let made = 0; made < classes; made += 1) {
    const shown = rankedClass(chance);
    const { naive, engine } = options(chance);
    const equalMajorities = oneOf<EqualMajorities>(chance, ['totals', 'next-places', 'average']);
    const expected = naiveMajority(shown, { ...naive, equalMajorities });
    const places = enginePlacesOfRanks(shown, { method: 'majority', ...engine, equalMajorities });
    mustAgree(places, expected, () => ({ ...shown, ...naive, equalMajorities }));
    if (new Set(expected.values()).size < expected.size) shared += 1;
  }
  expect(shared).toBeGreaterThan(classes / 20);
});

test('pairwise majorities', { timeout: allowedMs }, () => {
  const chance = chanceFrom(1_998);
  for (let made = 0; made < classes; made += 1) {
    const shown = rankedClass(chance);
    mustAgree(enginePlacesOfRanks(shown, { method: 'pairwise' }), naivePairwise(shown), () => shown);
  }
});
