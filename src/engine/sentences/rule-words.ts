/** The placing rule of a class in plain words, so that a family can read what was agreed before the first go. */
import type { MergeRule, PlacingRule, TieBreak, Unlisted } from '../placing/types.ts';
import type { Speech } from './speech.ts';
import { decimal, list, series, type Teller } from './words.ts';

/** One sentence for the merge, one for the chain of tie-breaks, one for the places given. */
export function ruleSentences(rule: PlacingRule, teller: Teller): string[] {
  const { merge, ties, placesGiven } = rule;
  const { speech } = teller;
  const given = placesGiven === null ? [] : [speech.say('rule-places', { given: placesGiven })];
  return [mergeSentence(merge, speech), tiesSentence(ties, teller), ...given];
}

function mergeSentence(merge: MergeRule, speech: Speech): string {
  switch (merge.method) {
    case 'total':
      return speech.say('rule-total', {
        discard: merge.discard,
        noScore: speech.say(`no-score-${merge.noScore}`),
      });
    case 'mean':
      return meanSentence(merge, speech);
    case 'rank-sum': {
      const unlisted = unlistedSentence(merge.unlisted, speech);
      return speech.say('rule-rank-sum', { discard: merge.discard, unlisted });
    }
    case 'place-points': {
      const points = series(
        merge.points.map((each) => decimal(each, speech)),
        speech,
      );
      return speech.say('rule-place-points', { points, discard: merge.discard });
    }
    case 'majority': {
      const equalMajorities = speech.say(`equal-majorities-${merge.equalMajorities}`);
      return speech.say('rule-majority', { equalMajorities });
    }
    case 'separate':
    case 'two-judges-and-referee':
    case 'pairwise':
      return speech.say(`rule-${merge.method}`);
  }
}

function meanSentence(
  { discard, round, noScore: counts }: Extract<MergeRule, { method: 'mean' }>,
  speech: Speech,
): string {
  const noScore = speech.say(`no-score-${counts}`);
  if (round === null) return speech.say('rule-mean', { discard, noScore });
  return speech.say('rule-mean-rounded', { discard, digits: round.places, noScore });
}

function unlistedSentence(unlisted: Unlisted, speech: Speech): string {
  if (unlisted === 'next' || unlisted === 'mean') return speech.say(`unlisted-${unlisted}`);
  return speech.say('unlisted-place', { place: decimal(unlisted, speech) });
}

function tiesSentence(ties: readonly TieBreak[], teller: Teller): string {
  const { speech } = teller;
  const told = ties.map((tie) => tieWords(tie, teller));
  const [first, ...rest] = told;
  if (first === undefined) return speech.say('rule-no-ties');
  const chain = rest.reduce((before, next) => speech.say('rule-ties-then', { first: before, next }), first);
  return speech.say('rule-ties', { ties: chain });
}

function tieWords(tie: TieBreak, { speech, names }: Teller): string {
  switch (tie.code) {
    case 'maneuvers':
      return speech.say('rule-tie-maneuvers', { maneuvers: list(tie.order.map(names.maneuver), speech) });
    case 'penalties':
      return speech.say(`rule-tie-penalties-${tie.count}`);
    case 'tie-judge': {
      const judges =
        tie.judges.length === 0
          ? speech.say('rule-tie-judges-of-panel')
          : list(tie.judges.map(names.judge), speech);
      return speech.say(tie.alternate ? 'rule-tie-judge-turning' : 'rule-tie-judge', { judges });
    }
    case 'count-back':
    case 'form':
    case 'head-to-head':
    case 'best-single-place':
    case 'most-firsts':
    case 'discarded':
    case 'run-off':
    case 'draw':
    case 'share':
      return speech.say(`rule-tie-${tie.code}`);
  }
}
