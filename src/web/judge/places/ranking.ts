/** The ranking of a rail class as it is tapped together: best first; who stands level shares an inner list. Pure. */

export type Ranking = readonly (readonly string[])[];

export const isRanked = (ranking: Ranking, entry: string): boolean =>
  ranking.some((level) => level.includes(entry));

/** At the next place that is free; one who stands there already stays. */
export const placedNext = (ranking: Ranking, entry: string): Ranking =>
  isRanked(ranking, entry) ? ranking : [...ranking, [entry]];

export const takenOut = (ranking: Ranking, entry: string): Ranking =>
  ranking.map((level) => level.filter((one) => one !== entry)).filter((level) => level.length > 0);

/** Place of a level: two who share the second are followed by the fourth. */
export const placeOf = (ranking: Ranking, level: number): number =>
  1 + ranking.slice(0, level).reduce((before, { length }) => before + length, 0);

/** One place up or down: out of a level that it shares first, then past the next level. */
export function movedPlace(ranking: Ranking, entry: string, by: -1 | 1): Ranking {
  const at = ranking.findIndex((level) => level.includes(entry));
  const level = ranking[at];
  if (level === undefined) return ranking;
  if (level.length > 1) {
    const others = level.filter((one) => one !== entry);
    return ranking.toSpliced(at, 1, ...(by < 0 ? [[entry], others] : [others, [entry]]));
  }
  const to = at + by;
  if (to < 0 || to >= ranking.length) return ranking;
  return ranking.toSpliced(at, 1).toSpliced(to, 0, level);
}

/** To stand alone at the place of `before`, who moves down: a line that is dragged there. `null`: last. */
export function putBefore(ranking: Ranking, entry: string, before: string | null): Ranking {
  if (before === entry) return ranking;
  const rest = takenOut(ranking, entry);
  const at = before === null ? -1 : rest.findIndex((level) => level.includes(before));
  return at < 0 ? [...rest, [entry]] : rest.toSpliced(at, 0, [entry]);
}

/** Level with whoever stands above; the first stands level with nobody. */
export function leveled(ranking: Ranking, entry: string): Ranking {
  const at = ranking.findIndex((level) => level.includes(entry));
  const [above, level] = [ranking[at - 1], ranking[at]];
  if (above === undefined || level === undefined || level.length > 1) return ranking;
  return ranking.toSpliced(at - 1, 2, [...above, entry]);
}
