/** What is wrong with a go or a card, and what to write instead, in words for the judge and the show office. */
import type { CardFault, CardFaultCode } from '../sheets/card-types.ts';
import type { GoFault } from '../sheets/types.ts';
import { type Names, plainNames } from './words.ts';

type FaultNames = Pick<Names, 'maneuver' | 'entry'>;

/** One sentence, without its place in the go: `maneuver 2: "0.25" is between two steps; write -3 to 3 by 0.5`. */
export function goFaultSentence(fault: GoFault, names: Pick<Names, 'maneuver'> = plainNames): string {
  const where = fault.position === undefined ? '' : `${names.maneuver(fault.position)}: `;
  return where + goFaultClause(fault);
}

function goFaultClause({ code, written = '', allowed = '', at, position }: GoFault): string {
  const text = JSON.stringify(written);
  switch (code) {
    case 'mark_missing':
      return position === undefined && !at.endsWith('/mark')
        ? 'no mark counts: mark at least one maneuver, or give a ruling'
        : `no mark yet; write ${allowed}${position === undefined ? '' : ', or say that it was not seen'}`;
    case 'mark_not_a_number':
      return `${text} is no mark; write a plain decimal, ${allowed}`;
    case 'mark_out_of_range':
      return `${text} is outside the range; write ${allowed}`;
    case 'mark_off_step':
      return `${text} is between two steps; write ${allowed}`;
    case 'maneuver_unknown':
      return `the pattern has no maneuver ${text}; its maneuvers are ${allowed}`;
    case 'maneuver_twice':
      return 'it is marked twice; keep one mark';
    case 'extra_missing':
      return `${extraOf(at)} has no mark yet; write ${allowed}`;
    case 'extra_unknown':
      return `the sheet has no mark called ${text}; it has ${allowed}`;
    case 'penalty_unknown':
      return `the sheet has no penalty ${text}; it has ${allowed}`;
    case 'ruling_unknown':
      return `the ruling ${text} may not be given on this sheet; it has ${allowed}`;
    case 'ruling_missing':
      return `it was not seen and counts as not shown, so the judge must rule on the pattern; write one of ${allowed}`;
    case 'measure_missing':
      return `no time yet; write seconds, ${allowed}`;
    case 'errors_not_a_count':
      return `${text} is no number of errors of course; write ${allowed}`;
    case 'total_out_of_range':
      return `the total of ${written} is outside the range of the sheet, ${allowed}; check the marks`;
    case 'not_on_this_sheet':
      return `the sheet of this class has no ${partName(at)}; take it out`;
  }
}

const extraOf = (at: string): string => at.replace(/^.*\//, '').replaceAll('~1', '/').replaceAll('~0', '~');

const partNames: Readonly<Record<string, string>> = {
  maneuvers: 'marks for maneuvers',
  extras: 'marks beside the maneuvers',
  penalties: 'penalties',
  errorsOfCourse: 'errors of course',
  mark: 'single mark',
  measure: 'time',
  ranking: 'ranking: the scores are the ranking',
};

const partName = (at: string): string => {
  const part = extraOf(at);
  return partNames[part] ?? part;
};

/** The same for a fault of a card, with the entry in front: `214, maneuver 2: no mark yet; ...`. */
export function cardFaultSentence(fault: CardFault, names: FaultNames = plainNames): string {
  const { code, entry } = fault;
  const who = entry === undefined ? '' : names.entry(entry);
  if (isCardFaultCode(code)) return cardFaultClause({ ...fault, code }, who, names);
  const sentence = goFaultSentence({ ...fault, code }, names);
  return who === '' ? sentence : `${who}, ${sentence}`;
}

const cardFaultCodes: Readonly<Record<CardFaultCode, true>> = {
  entry_missing: true,
  entry_not_going: true,
  entry_unknown: true,
  ranked_twice: true,
  ranked_but_ruled_out: true,
  ranking_too_short: true,
  ranking_too_long: true,
  own_order_not_a_tie: true,
};

const isCardFaultCode = (code: CardFault['code']): code is CardFaultCode =>
  Object.hasOwn(cardFaultCodes, code);

function cardFaultClause(
  { code, written = '', allowed = '' }: CardFault & { readonly code: CardFaultCode },
  who: string,
  names: FaultNames,
): string {
  switch (code) {
    case 'entry_missing':
      return `${who} is not on the card; mark the go, or give a ruling`;
    case 'entry_not_going':
      return `${who} does not go in this class; take it off the card`;
    case 'entry_unknown':
      return `${who} is not entered in this class; take it off the card`;
    case 'ranked_twice':
      return `${who} is ranked twice; keep one place`;
    case 'ranked_but_ruled_out':
      return `${who} is ranked, and ruled out on the same card; take away one of the two`;
    case 'ranking_too_short':
      return `${written} ranked; rank the first ${allowed}`;
    case 'ranking_too_long':
      return `${written} ranked; rank the first ${allowed} only, each place once`;
    case 'own_order_not_a_tie':
      return allowed === 'no tie'
        ? `${named(written, names)}: not tied on this card; an own order is for ties only`
        : `${named(written, names)}: order the whole tie and nothing else: ${named(allowed, names)}`;
  }
}

const named = (entries: string, names: FaultNames): string =>
  entries.split(', ').filter(Boolean).map(names.entry).join(', ');
