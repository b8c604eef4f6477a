/** Classes made up from a fixed seed: every run sees the same ones. Nothing here knows the engine. */

/** A class judged by places: each card is a ranking, best first; an inner list is tied on that card. */
export interface RankedClass {
  readonly entries: readonly string[];
  readonly cards: readonly (readonly (readonly string[])[])[];
}

/** A class judged by scores, in half points (143 is 71.5); an entry that is missing has no score from that judge. */
export interface ScoredClass {
  readonly entries: readonly string[];
  readonly cards: readonly ReadonlyMap<string, number>[];
}

/** From 0 (included) to 1 (excluded). */
export type Chance = () => number;

/** Mulberry32, a small public-domain generator; good enough to make classes up, no more. */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export const wholeUpTo = (chance: Chance, limit: number): number => Math.floor(chance() * limit);

export function oneOf<T>(chance: Chance, choices: readonly [T, ...T[]]): T {
  return choices[wholeUpTo(chance, choices.length)] ?? choices[0];
}

/** 1 to 14 entries before 1 to 9 judges; some judges tie entries, some leave entries off. */
export function rankedClass(chance: Chance): RankedClass {
  const entries = backNumbers(1 + wholeUpTo(chance, 14));
  const judges = 1 + wholeUpTo(chance, 9);
  const tieChance = oneOf(chance, [0, 0.1, 0.4]);
  const leftOffChance = oneOf(chance, [0, 0.3, 1]);
  // Judges who agree a little: equal majorities and equal sums are then common, as in real panels.
  const agreement = oneOf(chance, [0, 1, 3]);
  const cards = Array.from({ length: judges }, () => {
    const order = nearOrder(chance, entries, agreement);
    const length = chance() < leftOffChance ? wholeUpTo(chance, order.length + 1) : order.length;
    return tiedAtTimes(chance, order.slice(0, length), tieChance);
  });
  return { entries, cards };
}

/** Scores in a narrow band, so that totals tie; some judges give some entries none. */
export function scoredClass(chance: Chance): ScoredClass {
  const entries = backNumbers(1 + wholeUpTo(chance, 14));
  const judges = 1 + wholeUpTo(chance, 9);
  const band = oneOf(chance, [4, 10, 60]);
  const missingChance = oneOf(chance, [0, 0.1, 0.4]);
  const cards = Array.from({ length: judges }, () => {
    const scored = entries.filter(() => chance() >= missingChance);
    return new Map(scored.map((entry) => [entry, 130 + wholeUpTo(chance, band)] as const));
  });
  return { entries, cards };
}

const backNumbers = (count: number) => Array.from({ length: count }, (_, index) => String(101 + index * 7));

function nearOrder(chance: Chance, entries: readonly string[], agreement: number): string[] {
  return entries
    .map((entry, index) => ({ entry, at: index * agreement + chance() * entries.length }))
    .sort((a, b) => a.at - b.at)
    .map(({ entry }) => entry);
}

function tiedAtTimes(chance: Chance, order: readonly string[], tieChance: number): string[][] {
  const groups: string[][] = [];
  for (const entry of order) {
    const last = groups.at(-1);
    if (last !== undefined && chance() < tieChance) last.push(entry);
    else groups.push([entry]);
  }
  return groups;
}
