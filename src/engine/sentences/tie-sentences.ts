/** How a tie was split, or stood: one clause with the numbers on both sides. */
import { fromRecordText } from '../numbers/number-text.ts';
import type { Basis, Compared, Reason } from '../placing/types.ts';
import { count, figure, list, type Names, ordinal, placeFigure } from './words.ts';

/** At most this many of the other entries are named; the rest are counted. */
const mostNamed = 3;

/** `the judges who had it third or better (118: 4, 105: 3)` */
export function tieClause(reason: Reason, line: Compared, names: Names): string {
  const { basis, compared } = reason;
  if (basis.step === 'draw') {
    return `placed ${rankAmong(reason, line)} by lot from the announced seed "${basis.seed}"`;
  }
  if (basis.step === 'decision') {
    return `placed ${rankAmong(reason, line)} ${decisionWords[basis.kind]}, ${names.decision(basis.id)}`;
  }
  const others = nearest(reason, line);
  const unnamed = compared.length - 1 - others.length;
  const sides = [line, ...others].map((one) => `${names.entry(one.entry)}: ${sideValue(basis, one)}`);
  return `${criterion(basis, names)} (${[...sides, ...(unnamed > 0 ? [`${unnamed} more`] : [])].join(', ')})`;
}

/** Who was tied with `line` when the reason was found. */
export function tiedWith(reason: Reason, line: Compared, names: Names): string {
  const others = nearest(reason, line);
  const unnamed = reason.compared.length - 1 - others.length;
  const named = others.map((one) => names.entry(one.entry));
  return list(unnamed > 0 ? [...named, `${unnamed} more`] : named);
}

function nearest({ compared }: Reason, line: Compared): Compared[] {
  const at = compared.indexOf(line);
  return compared
    .map((one, index) => ({ one, away: Math.abs(index - at) }))
    .filter(({ one }) => one !== line)
    .sort((a, b) => a.away - b.away)
    .slice(0, mostNamed)
    .map(({ one }) => one);
}

function criterion(basis: Basis, names: Names): string {
  switch (basis.step) {
    case 'majority-size':
      return `the judges who had it ${ordinal(basis.column)} or better`;
    case 'majority-total':
      return `the total of the places ${ordinal(basis.column)} or better, the least first`;
    case 'total-of-all':
      return 'the total of the places of all judges, the least first';
    case 'next-places':
      return basis.compares === 'judges'
        ? `the judges who had it ${ordinal(basis.column)} or better`
        : `the total of the places ${ordinal(basis.column)} or better, the least first`;
    case 'judges-in-favor':
      return 'the judges in favor over all pairs';
    case 'maneuver':
      return `the marks on ${names.maneuver(basis.position)}`;
    case 'count-back':
      return basis.rank === 1
        ? 'the highest maneuver mark'
        : `the ${ordinal(basis.rank)} highest maneuver mark`;
    case 'form':
      return 'form and effectiveness';
    case 'penalty-points':
      return 'points in penalties, the fewest first';
    case 'penalty-count':
      return 'the number of penalties, the fewest first';
    case 'tie-judge':
      return `the card of ${names.judge(basis.judge)}, tie judge`;
    case 'head-to-head':
      return 'the number of tied entries that more judges had it ahead of';
    case 'best-single-place':
      return 'the best place with any judge';
    case 'most-places':
      return `the number of ${ordinal(basis.at)} places`;
    case 'discarded':
      return 'all judges added, the discarded ones too';
    case 'referee':
      return "the place on the referee's card";
    case 'total':
    case 'mean':
    case 'rank-sum':
    case 'place-points':
      return 'added up';
    case 'status':
    case 'card-place':
    case 'pairwise-wins':
    case 'majority-place':
    case 'share':
    case 'draw':
    case 'decision':
      return basis.step;
  }
}

function sideValue(basis: Basis, { value }: Compared): string {
  if (value === null) return 'none';
  const isPlace =
    basis.step === 'tie-judge' || basis.step === 'best-single-place' || basis.step === 'referee';
  return isPlace ? placeFigure(value) : figure(value);
}

/** `second of the three`: by lots and decisions the least value comes first. */
function rankAmong({ compared }: Reason, line: Compared): string {
  const value = ({ value: recorded }: Compared) => fromRecordText(recorded ?? '0');
  const ahead = compared.filter((one) => value(one).compare(value(line)) < 0).length;
  return `${ordinal(ahead + 1)} of the ${count(compared.length)}`;
}

const decisionWords = {
  'run-off': 'by a run-off',
  're-work': 'by a re-work',
  judge: "by a judge's ruling",
  coin: 'by the toss of a coin',
  share: 'by agreement',
  declined: 'after a run-off was declined',
} as const;
