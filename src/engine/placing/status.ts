/** Status before score: who kept the pattern, who is placed below all who did, who may not be placed. */
import { exact } from '../numbers/exact.ts';
import { type Tier, tiers } from '../sheets/types.ts';
import { addsScores } from './merges/reads.ts';
import { judgesWithoutScore } from './merges/scores.ts';
import type { Step } from './refine.ts';
import type { EntryId, PanelCard, PlacingInput, Unplaced } from './types.ts';

export interface Standing {
  readonly placeable: readonly EntryId[];
  readonly unplaced: readonly Unplaced[];
  /** Splits those placed below from those who kept the pattern. */
  readonly step: Step;
}

export function standing({ entries, cards, rule }: PlacingInput): Standing {
  const holds = rule.rulingHolds ?? (addsScores(rule.merge) ? 'any' : 'all');
  const needed = { any: 1, majority: Math.floor(cards.length / 2) + 1, all: cards.length }[holds];
  const unplaced: Unplaced[] = [];
  const placeable: EntryId[] = [];
  const tier = new Map<EntryId, Tier>();
  for (const entry of entries) {
    const why = whyUnplaced(entry, cards, { rule, needed });
    if (why !== undefined) unplaced.push({ entry, why });
    else {
      placeable.push(entry);
      tier.set(entry, isBelow(entry, cards, needed) ? 'placed-below' : 'kept-pattern');
    }
  }
  const step: Step = {
    of: 'status',
    compare: (group) => {
      if (group.every((entry) => tier.get(entry) === tier.get(group[0] ?? entry))) return undefined;
      return {
        basis: { step: 'status' },
        better: 'lower',
        measure: (entry) => ({
          value: exact(tiers.indexOf(tier.get(entry) ?? 'kept-pattern')),
          parts: cards
            .filter((card) => speaksAgainst(card, entry))
            .map(({ judge }) => ({ judge, value: '1' })),
        }),
      };
    },
  };
  return { placeable, unplaced, step };
}

function whyUnplaced(
  entry: EntryId,
  cards: readonly PanelCard[],
  { rule, needed }: { readonly rule: PlacingInput['rule']; readonly needed: number },
): Unplaced['why'] | undefined {
  const out = cards.filter(({ ruledOut }) => ruledOut.has(entry));
  const rulings = [...new Set(out.flatMap(({ ruledOut }) => ruledOut.get(entry) ?? []))];
  const ruled = { code: 'ruled-out' as const, judges: out.map(({ judge }) => judge), rulings };
  if (out.length > 0 && out.length >= needed) return ruled;
  const placing =
    rule.merge.method === 'two-judges-and-referee' ? cards.filter(({ seat }) => seat === 'judge') : cards;
  if (!placing.some(({ lines }) => lines.has(entry))) return out.length > 0 ? ruled : { code: 'on-no-card' };
  const { merge } = rule;
  if (addsScores(merge) && merge.noScore === 'not-placed') {
    const without = judgesWithoutScore(cards, entry);
    if (without.length > 0) return { code: 'no-score', judges: without.map(({ judge }) => judge) };
  }
  return undefined;
}

/** A judge who ruled the entry out agrees that it is not among those who kept the pattern. */
const speaksAgainst = ({ lines, ruledOut }: PanelCard, entry: EntryId) =>
  lines.get(entry)?.tier === 'placed-below' || ruledOut.has(entry);

function isBelow(entry: EntryId, cards: readonly PanelCard[], needed: number): boolean {
  const against = cards.filter((card) => speaksAgainst(card, entry));
  const spoke = cards.filter(({ lines, ruledOut }) => lines.has(entry) || ruledOut.has(entry));
  return against.length > 0 && against.length >= Math.min(needed, spoke.length);
}
