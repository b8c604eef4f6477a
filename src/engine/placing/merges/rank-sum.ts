/**
 * The places on all cards added up; the least total is first.
 *
 * Source: plain ordinal total, lowest wins (CMU Buggy rule 11.5.2,
 * https://cmubuggy.org/reference/Rule_11.5.2_Final_Judging); a tie on a judge's card is carried as tied, and
 * each entry's best and worst place may be discarded, all counting when there are three judges (Surf Life
 * Saving Australia 7.4.9 and 7.4.10). Two phases: 0.5 x place in the first + 1.0 x place in the second
 * (http://www.sports-reference.com/olympics/winter/1998/FSK/mixed-pairs.html).
 *
 *     places 2, 1, 4 -> 7
 */
import { mergeByAdding } from './added-up.ts';
import type { Merge, Panel, RuleOf } from './merge.ts';
import { placesOf } from './ordinals.ts';

export function mergeRankSum(panel: Panel, rule: RuleOf<'rank-sum'>): Merge {
  return mergeByAdding({
    basis: { step: 'rank-sum', discard: rule.discard },
    better: 'lower',
    given: placesOf(panel, rule),
  });
}
