/** A judge's card in order: status first, then score, or the ranking as she wrote it. */
import type { CardGroup } from './card-types.ts';
import { type JudgeScore, tiers } from './types.ts';

/** The tied groups, best first; at the end, as one group, the entries that may not be placed. */
export function cardOrder(
  ranking: readonly (readonly string[])[] | undefined,
  goes: ReadonlyMap<string, JudgeScore>,
): readonly CardGroup[] {
  const barred = [...goes].filter(([, { tier }]) => tier === 'not-placed').map(([entry]) => entry);
  const last: CardGroup[] =
    barred.length > 0 ? [{ tier: 'not-placed', score: undefined, entries: barred }] : [];
  return [...(ranking === undefined ? scoredGroups(goes) : rankedGroups(ranking)), ...last];
}

const rankedGroups = (ranking: readonly (readonly string[])[]): readonly CardGroup[] =>
  ranking.map((entries) => ({ tier: 'kept-pattern', score: undefined, entries }));

function scoredGroups(goes: ReadonlyMap<string, JudgeScore>): readonly CardGroup[] {
  const lines = [...goes].filter(([, { score }]) => score !== undefined);
  lines.sort(([, a], [, b]) => compareOnOneCard(a, b));
  const groups: {
    tier: CardGroup['tier'];
    score: CardGroup['score'];
    entries: string[];
    first: JudgeScore;
  }[] = [];
  for (const [entry, go] of lines) {
    const level = groups.at(-1);
    if (level !== undefined && compareOnOneCard(level.first, go) === 0) level.entries.push(entry);
    else groups.push({ tier: go.tier, score: go.score, entries: [entry], first: go });
  }
  return groups.map(({ tier, score, entries }) => ({ tier, score, entries }));
}

/** Below zero: `a` stands better. Status before score: an off-pattern 80 stands below a clean 62. */
function compareOnOneCard(a: JudgeScore, b: JudgeScore): number {
  const byStatus = tiers.indexOf(a.tier) - tiers.indexOf(b.tier);
  if (byStatus !== 0 || a.score === undefined || b.score === undefined) return byStatus;
  const byScore = a.score.compare(b.score);
  return a.better === 'lower' ? byScore : -byScore;
}

/** Ties that the judge has not put in an order of her own; who may not be placed is not in a tie. */
export function openTiesOf(
  order: readonly CardGroup[],
  ownOrder: readonly (readonly string[])[],
): readonly (readonly string[])[] {
  const broken = new Set(ownOrder.flat());
  return order
    .filter(({ tier, entries }) => tier !== 'not-placed' && entries.length > 1)
    .map(({ entries }) => entries)
    .filter((entries) => !entries.every((entry) => broken.has(entry)));
}
