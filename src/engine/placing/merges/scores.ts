/**
 * Scores added over the judges, or their mean.
 *
 * Source: one cumulative score of all judges on a panel of one to five; highest and lowest disregarded and
 * the rest meaned (FEIF ranking shows, at least five judges, http://lettleikiicelandics.com/tag/feif/); of
 * several equal extremes one goes (http://www.arabianbreedersworldcup.com/scoring-system). Percentages: the
 * judges' mean, rounded as the rule says (http://www.rk3de.org/eventing_dressage.php).
 *
 *     total = sum of weight x score        mean = total / sum of weights        (discarded ones left out)
 */
import { type Exact, mean, zero } from '../../numbers/exact.ts';
import { round } from '../../numbers/rounding.ts';
import type { EntryId, PanelCard } from '../types.ts';
import { mergeByAdding } from './added-up.ts';
import { type Contribution, totalOf, weightOf } from './contributions.ts';
import type { Merge, Panel, RuleOf } from './merge.ts';

type ScoreRule = RuleOf<'total' | 'mean'>;

export function mergeScores({ cards }: Panel, rule: ScoreRule): Merge {
  return mergeByAdding({
    basis: { step: rule.method, discard: rule.discard },
    better: cards[0]?.better ?? 'higher',
    given: (entry) => scoresOf(cards, entry, rule.noScore),
    value: (contributions) => scoreOf(contributions, rule),
  });
}

/** The judges who gave this entry no score, although its class is merged by score. */
export function judgesWithoutScore(cards: readonly PanelCard[], entry: EntryId): PanelCard[] {
  return cards.filter((card) => card.lines.get(entry)?.score === undefined);
}

function scoresOf(
  cards: readonly PanelCard[],
  entry: EntryId,
  noScore: ScoreRule['noScore'],
): Contribution[] {
  const given = cards.flatMap((card) => card.lines.get(entry)?.score ?? []);
  const missing = noScore === 'mean' && given.length > 0 ? mean(given) : zero;
  return cards.map(({ judge, weight, lines }) => {
    const score = lines.get(entry)?.score;
    return score === undefined
      ? { judge, weight, value: missing, note: 'no-score' }
      : { judge, weight, value: score };
  });
}

function scoreOf(contributions: readonly Contribution[], rule: ScoreRule): Exact {
  const total = totalOf(contributions);
  if (rule.method === 'total') return total;
  const exactMean = total.div(weightOf(contributions));
  return rule.round === null ? exactMean : round(exactMean, rule.round);
}
