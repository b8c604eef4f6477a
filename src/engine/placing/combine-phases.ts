/**
 * Two or more phases (or classes) combined: each entry's places, each times the weight of its phase, added; the
 * least total is first, and a tie goes to the entry that was placed better in the last phase.
 *
 * Source: figure skating to 1998, 0.5 x place in the first phase + 1.0 x place in the second, tie -> second phase
 * (http://www.sports-reference.com/olympics/winter/1998/FSK/mixed-pairs.html).
 *
 *     2nd in the first and 1st in the second: 0.5 x 2 + 1 x 1 = 2
 */
import { type Decimal, exact } from '../numbers/exact.ts';
import type { RulingCode } from '../sheets/types.ts';
import { cardFromPlaces } from './panel-card.ts';
import type { EntryId, JudgeId, PanelCard, Placing, PlacingInput, Unlisted } from './types.ts';

/** An earlier placing that counts toward the combined one. */
export interface Phase {
  /** Stands where a judge stands in the reasons, e.g. `phase 1`; different for each phase. */
  readonly phase: JudgeId;
  /** What a place in this phase counts; more than 0, `"0.5"`. */
  readonly weight: Decimal;
  readonly placing: Pick<Placing, 'placed' | 'unplaced'>;
}

/**
 * What an entry without a place in one of the phases counts as there; `not-placed`: it may not be placed in the
 * combination either. No source states it, so whoever combines must say.
 */
export type WithoutPlace = 'not-placed' | Unlisted;

/** The combination as a panel whose cards are the phases; `placeClass` places it. In the order of the phases. */
export function combinePhases(phases: readonly Phase[], withoutPlace: WithoutPlace): PlacingInput {
  const entries = [...new Set(phases.flatMap(({ placing }) => everyone(placing)))];
  const last = phases.at(-1)?.phase;
  return {
    entries,
    cards: phases.map((phase) => phaseCard(phase, withoutPlace === 'not-placed' ? entries : [])),
    decisions: [],
    classNumber: 1,
    rule: {
      merge: {
        method: 'rank-sum',
        cardTies: 'better',
        unlisted: withoutPlace === 'not-placed' ? 'next' : withoutPlace,
        discard: 'none',
      },
      ties: last === undefined ? [] : [{ code: 'tie-judge', judges: [last], alternate: false }],
      afterSplit: 'go-on',
      placesGiven: null,
      rulingHolds: withoutPlace === 'not-placed' ? 'any' : 'all',
    },
  };
}

const everyone = ({ placed, unplaced }: Phase['placing']): EntryId[] =>
  [...placed, ...unplaced].map(({ entry }) => entry);

/** `needed`: the entries that the phase rules out where it gave them no place. */
function phaseCard({ phase, weight, placing }: Phase, needed: readonly EntryId[]): PanelCard {
  const places = new Map(placing.placed.map(({ entry, place }) => [entry, exact(place)]));
  const rulings = new Map<EntryId, RulingCode | undefined>(
    placing.unplaced.map(({ entry, why }) => [entry, why.code === 'ruled-out' ? why.rulings[0] : undefined]),
  );
  const ruledOut = new Map(
    needed.filter((entry) => !places.has(entry)).map((entry) => [entry, rulings.get(entry)]),
  );
  return cardFromPlaces({ judge: phase, weight: exact(weight), ruledOut }, places);
}
