/** 50,000 made-up classes judged by scores: the engine and a second, plain way of adding agree on every one. */
import { expect, test } from 'vitest';
import { naiveTotal } from './added-up.ts';
import { enginePlacesOfScores, mustAgree } from './agreement-of-both.ts';
import { chanceFrom, oneOf, scoredClass } from './generate-class.ts';

const classes = 50_000;

test('totals and means, with scores missing and the highest and lowest discarded', {
  timeout: 300_000,
}, () => {
  const chance = chanceFrom(70);
  let shared = 0;
  for (let made = 0; made < classes; made += 1) {
    const shown = scoredClass(chance);
    const noScore = oneOf<'zero' | 'not-placed' | 'mean'>(chance, ['zero', 'not-placed', 'mean']);
    const discard = chance() < 0.5 ? 'high-and-low' : 'none';
    const expected = naiveTotal(shown, { discard: discard !== 'none', noScore });
    const merge =
      chance() < 0.5
        ? ({ method: 'total', discard, noScore } as const)
        : ({ method: 'mean', discard, noScore, round: null } as const);
    const printed = () => ({ entries: shown.entries, cards: shown.cards.map((card) => [...card]), merge });
    mustAgree(enginePlacesOfScores(shown, merge), expected, printed);
    if (new Set(expected.values()).size < expected.size) shared += 1;
  }
  expect(shared).toBeGreaterThan(classes / 10);
});
