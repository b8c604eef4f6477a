/** How a tie was split: one sentence with the numbers on both sides. */
import { fromRecordText } from '../numbers/number-text.ts';
import type { Basis, Compared, Reason } from '../placing/types.ts';
import { figure, list, placeFigure, series, type Teller } from './words.ts';

/** At most this many of the other entries are named; the rest are counted. */
const mostNamed = 3;

/** Where the split put the entry among those it was tied with. */
export type Side = 'ahead' | 'behind' | 'between';

/** `Tied with 105; ahead by the judges who had it third or better (118: 4, 105: 3).` */
export function tieSentence(
  reason: Reason,
  line: Compared,
  { side, teller }: { readonly side: Side; readonly teller: Teller },
): string {
  const { basis } = reason;
  const { speech, names } = teller;
  const others = tiedWith(reason, line, teller);
  if (basis.step === 'draw') {
    return speech.say('tie-by-lot', { others, ...rankAmong(reason, line), seed: basis.seed });
  }
  if (basis.step === 'decision') {
    const how = speech.say(`decided-${basis.kind}`);
    const decision = names.decision(basis.id);
    return speech.say('tie-decided', { others, ...rankAmong(reason, line), how, decision });
  }
  return speech.say(`tie-${side}`, {
    others,
    criterion: criterion(basis, teller),
    sides: sidesOf(reason, line, teller),
  });
}

/** Who was tied with `line` when the reason was found. */
function tiedWith(reason: Reason, line: Compared, teller: Teller): string {
  const named = nearest(reason, line).map((one) => teller.names.entry(one.entry));
  return list([...named, ...unnamed(reason, teller)], teller.speech);
}

/** `118: 4, 105: 3` */
function sidesOf(reason: Reason, line: Compared, teller: Teller): string {
  const sides = [line, ...nearest(reason, line)].map((one) => sideOf(reason.basis, one, teller));
  return series([...sides, ...unnamed(reason, teller)], teller.speech);
}

function unnamed({ compared }: Reason, { speech }: Teller): string[] {
  const n = compared.length - 1 - mostNamed;
  return n > 0 ? [speech.say('tie-more', { n })] : [];
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

function criterion(basis: Exclude<Basis, { step: 'draw' | 'decision' }>, { speech, names }: Teller): string {
  const { step } = basis;
  switch (step) {
    case 'majority-size':
    case 'majority-total':
      return speech.say(`criterion-${step}`, { column: basis.column });
    case 'next-places':
      return speech.say(`criterion-majority-${basis.compares === 'judges' ? 'size' : 'total'}`, {
        column: basis.column,
      });
    case 'maneuver':
      return speech.say('criterion-maneuver', { maneuver: names.maneuver(basis.position) });
    case 'count-back':
      return speech.say('criterion-count-back', { rank: basis.rank });
    case 'tie-judge':
      return speech.say('criterion-tie-judge', { judge: names.judge(basis.judge) });
    case 'most-places':
      return speech.say('criterion-most-places', { at: basis.at });
    case 'total-of-all':
    case 'judges-in-favor':
    case 'form':
    case 'penalty-points':
    case 'penalty-count':
    case 'head-to-head':
    case 'best-single-place':
    case 'discarded':
    case 'referee':
      return speech.say(`criterion-${step}`);
    case 'total':
    case 'mean':
    case 'rank-sum':
    case 'place-points':
      return speech.say('criterion-added-up');
    case 'status':
    case 'card-place':
    case 'pairwise-wins':
    case 'majority-place':
    case 'share':
      throw new Error(`"${step}" splits no tie`);
  }
}

function sideOf(basis: Basis, { entry: id, value }: Compared, { speech, names }: Teller): string {
  const entry = names.entry(id);
  if (value === null) return speech.say('tie-side-none', { entry });
  const isPlace =
    basis.step === 'tie-judge' || basis.step === 'best-single-place' || basis.step === 'referee';
  return speech.say('tie-side', {
    entry,
    value: isPlace ? placeFigure(value, speech) : figure(value, speech),
  });
}

/** Second of the three: by lots and decisions the least value comes first. */
function rankAmong({ compared }: Reason, line: Compared): { readonly rank: number; readonly of: number } {
  const value = ({ value: recorded }: Compared) => fromRecordText(recorded ?? '0');
  const ahead = compared.filter((one) => value(one).compare(value(line)) < 0).length;
  return { rank: ahead + 1, of: compared.length };
}
