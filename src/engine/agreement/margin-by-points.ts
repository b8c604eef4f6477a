/** The smallest change of one judge's score that swaps two neighbours. */
import { type Exact, exact, sum } from '../numbers/exact.ts';
import { recordText } from '../numbers/number-text.ts';
import type { EntryId, MergeRule, PanelCard } from '../placing/types.ts';
import { rescored } from './card-changes.ts';
import { compareByMerge, leastOf, swaps, withCard } from './changed-class.ts';
import { leastChange } from './least-change.ts';
import type { CardChange, MarginChange, MarginSetting, Pair } from './margins.ts';

export function marginByPoints(pair: Pair, setting: MarginSetting): MarginChange {
  const found: { size: number; on: CardChange }[] = [];
  for (const on of changesOf(pair)) {
    const most = Math.min(...found.map(({ size }) => size), stepsWorthTrying(pair, on, setting));
    const size = leastSteps(pair, on, { ...setting, most });
    if (size !== undefined) found.push({ size, on });
  }
  const smallest = leastOf(found);
  if (smallest === undefined) return { by: 'none', why: 'no-single-change' };
  return { by: 'points', size: recordText(exact(setting.step).mul(smallest.size)), on: smallest.on };
}

/** The score of the one behind can be better, or of the one ahead worse, on each card that has it. */
function changesOf({ input, ahead, behind }: Pair): CardChange[] {
  return input.cards.flatMap(({ judge, lines }) => [
    ...(lines.get(behind)?.score === undefined ? [] : [{ judge, entry: behind, direction: 'up' as const }]),
    ...(lines.get(ahead)?.score === undefined ? [] : [{ judge, entry: ahead, direction: 'down' as const }]),
  ]);
}

function leastSteps(
  pair: Pair,
  on: CardChange,
  { step, most }: Pick<MarginSetting, 'step'> & { readonly most: number },
): number | undefined {
  const { cards, rule } = pair.input;
  const own = cards.find(({ judge }) => judge === on.judge);
  const score = own?.lines.get(on.entry)?.score;
  if (own === undefined || score === undefined) return undefined;
  const by = exact(step).mul(signOf(own, on));
  const changed = (panel: readonly PanelCard[], card: PanelCard, steps: number) => {
    const next = rescored(card, on.entry, score.add(by.mul(steps)));
    return next === undefined ? panel : withCard(panel, next);
  };
  // Sums look at the two entries only; a card of its own is looked at whole, since its places are compared.
  const looked =
    rule.merge.method === 'separate' ? cards : cards.map((card) => only(card, [pair.ahead, pair.behind]));
  const lookedOwn = looked.find(({ judge }) => judge === on.judge) ?? own;
  const compare = compareByMerge(pair);
  return leastChange({
    count: most,
    compare: (steps) => compare(changed(looked, lookedOwn, steps)),
    swaps: (steps) => swaps(pair, changed(cards, own, steps)),
  });
}

/** Up is better: more where more is better, less for times. */
const signOf = ({ better }: PanelCard, { direction }: CardChange) =>
  (better === 'higher') === (direction === 'up') ? 1 : -1;

function only(card: PanelCard, entries: readonly EntryId[]): PanelCard {
  return { ...card, lines: new Map([...card.lines].filter(([entry]) => entries.includes(entry))) };
}

/**
 * Beyond this many steps nothing can change any more: the score has passed all others (a missing one may count as
 * zero) by as much as all judges together could part two entries, whatever the weights. Where the highest and the
 * lowest are discarded passing all others is enough. Or the score has come to the end of what a score may be.
 */
function stepsWorthTrying(
  { input: { cards, rule } }: Pair,
  on: CardChange,
  { step, range }: MarginSetting,
): number {
  const scores = [
    exact(0),
    ...cards.flatMap(({ lines }) => [...lines.values()].flatMap(({ score }) => score ?? [])),
  ];
  const weights = cards.map(({ weight }) => weight);
  const apart = greatest(scores).sub(least(scores));
  const far = settlesWhenDiscarded(rule.merge) ? apart : apart.mul(sum(weights)).div(least(weights));
  const steps = Number(far.div(exact(step)).ceil().n) + 2;
  const own = cards.find(({ judge }) => judge === on.judge);
  const score = own?.lines.get(on.entry)?.score;
  if (range === null || own === undefined || score === undefined) return steps;
  const room = signOf(own, on) > 0 ? exact(range.high).sub(score) : score.sub(exact(range.low));
  return Math.max(0, Math.min(steps, Number(room.div(exact(step)).floor())));
}

/** Once discarded, a score moves the sum no more; unless a missing one counts as the mean of those given. */
const settlesWhenDiscarded = (merge: MergeRule) =>
  'noScore' in merge && merge.discard !== 'none' && merge.noScore !== 'mean';

const greatest = (values: readonly Exact[]) =>
  values.reduce((most, one) => (one.compare(most) > 0 ? one : most));
const least = (values: readonly Exact[]) =>
  values.reduce((lowest, one) => (one.compare(lowest) < 0 ? one : lowest));
