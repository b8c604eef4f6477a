/** One class placed: status, merge, tie-breaks, and the places that come of it. */
import { mergeCards } from './merges/index.ts';
import { refine } from './refine.ts';
import { standing } from './status.ts';
import { tieSteps } from './ties/index.ts';
import type { JudgeId, Placed, Placing, PlacingInput, PlacingNote, Unplaced } from './types.ts';

/**
 * Places a class whose judges are merged; one card alone may be `separate`.
 * Throws a RangeError for a panel that the method cannot merge (see `checkPlacing`).
 */
export function placeClass(input: PlacingInput): Placing {
  const { cards, rule } = input;
  const { placeable, unplaced, step } = standing(input);
  if (cards.length === 0) return { placed: [], unplaced, reasons: [], notes: [], openTies: [] };
  const panel = { entries: placeable, cards };
  const merge = mergeCards(panel, rule.merge);
  const ties = tieSteps({ ...input, panel, merge: rule.merge }, rule.ties);
  const { groups, reasons, openTies } = refine(placeable, [step, ...merge.steps, ...ties], rule.afterSplit);

  const placed: Placed[] = [];
  const beyond: Unplaced[] = [];
  let place = 1;
  for (const group of groups) {
    for (const entry of group) {
      if (rule.placesGiven !== null && place > rule.placesGiven) {
        beyond.push({ entry, why: { code: 'beyond-places', placesGiven: rule.placesGiven } });
      } else placed.push({ entry, place, tied: group.length > 1, total: merge.total(entry) });
    }
    place += group.length;
  }
  const open = openTies.filter((tie) => rule.placesGiven === null || tie.place <= rule.placesGiven);
  return { placed, unplaced: [...beyond, ...unplaced], reasons, notes: notesOn(input), openTies: open };
}

function notesOn({ entries, cards }: PlacingInput): PlacingNote[] {
  return entries.flatMap((entry) =>
    cards.flatMap(({ judge, lines }) =>
      (lines.get(entry)?.flags ?? []).map((flag) => ({ entry, judge, flag })),
    ),
  );
}

/** Each judge's card as a result of its own, in the order of the cards. */
export function placeSeparately(
  input: PlacingInput,
): readonly { readonly judge: JudgeId; readonly placing: Placing }[] {
  return input.cards.map((card) => ({
    judge: card.judge,
    placing: placeClass({ ...input, cards: [card], rule: { ...input.rule, merge: { method: 'separate' } } }),
  }));
}
