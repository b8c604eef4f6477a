/** The placing rule of a class in plain words, so that a family can read what was agreed before the first go. */
import type { Discard, MergeRule, NoScore, PlacingRule, TieBreak } from '../placing/types.ts';
import { capital, count, list, type Names } from './words.ts';

/** One sentence for the merge, one for the chain of tie-breaks, one for the places given. */
export function ruleSentences(rule: PlacingRule, names: Names): string[] {
  const { merge, ties, placesGiven } = rule;
  const given = placesGiven === null ? [] : [`${capital(count(placesGiven))} places are given.`];
  return [mergeSentence(merge), tiesSentence(ties, names), ...given];
}

function mergeSentence(merge: MergeRule): string {
  switch (merge.method) {
    case 'separate':
      return "Each judge's card is a result of its own.";
    case 'total':
      return `The judges' scores are added${discardWords(merge.discard)}; the best total is first. ${noScoreWords[merge.noScore]}`;
    case 'mean': {
      const rounded = merge.round === null ? '' : `, rounded to ${count(merge.round.places)} decimals`;
      return `The mean of the judges' scores counts${discardWords(merge.discard)}${rounded}. ${noScoreWords[merge.noScore]}`;
    }
    case 'rank-sum':
      return `The places on all cards are added${discardWords(merge.discard)}; the least total is first. ${unlistedWords(merge.unlisted)}`;
    case 'place-points':
      return `Each place earns points (${merge.points.join(', ')}), added over the judges${discardWords(merge.discard)}; the most points are first.`;
    case 'majority':
      return `An entry takes the best place that more than half of the judges give it or better; ${majorityWords[merge.equalMajorities]}.`;
    case 'two-judges-and-referee':
      return "Where the two judges agree on the next entry it is placed; where they differ, the referee's card decides between the two.";
    case 'pairwise':
      return 'Every entry is compared with every other, judge by judge; the one with the most pairs won or level is first, then the one with the most judges in favor.';
  }
}

const discardWords = (discard: Discard) =>
  discard === 'none' ? '' : ', one highest and one lowest left out where there are four judges or more';

const noScoreWords: Readonly<Record<NoScore, string>> = {
  zero: 'A missing score counts as zero.',
  'not-placed': 'Without a score from every judge an entry is not placed.',
  mean: 'A missing score counts as the mean of those given.',
};

function unlistedWords(unlisted: string): string {
  if (unlisted === 'next') return 'Left off a card counts as one place behind the last on that card.';
  if (unlisted === 'mean') return 'Left off a card counts as the mean of the places left.';
  return `Left off a card counts as place ${unlisted}.`;
}

const majorityWords = {
  totals: 'then the larger majority, the lower total of its places, and the lower total of all places decide',
  'next-places':
    'then the larger majority, the lower total of its places, and the next lower places in turn decide',
  average: 'then the larger majority and the lower total of all places decide',
} as const;

function tiesSentence(ties: readonly TieBreak[], names: Names): string {
  if (ties.length === 0) return 'Ties that are left wait for a ruling.';
  return `Ties are broken by ${ties.map((tie) => tieWords(tie, names)).join(', then ')}.`;
}

function tieWords(tie: TieBreak, names: Names): string {
  switch (tie.code) {
    case 'maneuvers':
      return `the marks on ${list(tie.order.map(names.maneuver))}, in that order`;
    case 'count-back':
      return 'counting back from the highest maneuver marks';
    case 'form':
      return 'form and effectiveness';
    case 'penalties':
      return tie.count === 'points' ? 'the fewest points in penalties' : 'the fewest penalties';
    case 'tie-judge': {
      const judges = tie.judges.length === 0 ? 'the tie judges' : list(tie.judges.map(names.judge));
      return `the card of ${judges}, in that order${tie.alternate ? ', turning by one with each class' : ''}`;
    }
    case 'head-to-head':
      return 'the majority of the judges between the tied';
    case 'best-single-place':
      return 'the best place with any judge';
    case 'most-firsts':
      return 'the most firsts, then seconds, and so on';
    case 'discarded':
      return 'the total with the discarded ones brought back';
    case 'run-off':
      return 'a run-off';
    case 'draw':
      return 'a draw by lot from the announced seed';
    case 'share':
      return 'nothing more: the place is shared';
  }
}
