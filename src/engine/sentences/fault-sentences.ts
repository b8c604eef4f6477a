/** What is wrong with a go or a card, and what to write instead, in words for the judge and the show office. */
import type { CardFault, CardFaultCode } from '../sheets/card-types.ts';
import type { Allowed, GoFault } from '../sheets/types.ts';
import type { Speech } from './speech.ts';
import { decimal, type Names, quoted, series } from './words.ts';

interface FaultTeller {
  readonly speech: Speech;
  readonly names: Pick<Names, 'maneuver' | 'entry'>;
}

/** One sentence, without its place in the go: `maneuver 2: "0.25" is between two steps; write −3 to 3 by 0.5`. */
export function goFaultSentence(fault: GoFault, { speech, names }: FaultTeller): string {
  const told = goFaultClause(fault, speech);
  if (fault.position === undefined) return told;
  return speech.say('fault-at-maneuver', { maneuver: names.maneuver(fault.position), fault: told });
}

function goFaultClause(fault: GoFault, speech: Speech): string {
  const { code, at, position } = fault;
  const written = quoted(fault.written ?? '');
  const allowed = allowedText(fault.allowed, speech);
  switch (code) {
    case 'mark_missing':
      if (position !== undefined) return speech.say('go-fault-mark_missing-maneuver', { allowed });
      return at.endsWith('/mark')
        ? speech.say('go-fault-mark_missing', { allowed })
        : speech.say('go-fault-nothing-marked');
    case 'extra_missing':
      return speech.say('go-fault-extra_missing', { part: lastOf(at), allowed });
    case 'not_on_this_sheet':
      return speech.say('go-fault-not_on_this_sheet', { part: partName(at, speech) });
    case 'total_out_of_range':
      return speech.say(`go-fault-${code}`, { written: decimal(fault.written ?? '', speech), allowed });
    case 'maneuver_twice':
    case 'measure_missing':
    case 'ruling_missing':
    case 'mark_not_a_number':
    case 'mark_out_of_range':
    case 'mark_off_step':
    case 'maneuver_unknown':
    case 'extra_unknown':
    case 'penalty_unknown':
    case 'ruling_unknown':
    case 'errors_not_a_count':
      return speech.say(`go-fault-${code}`, { written, allowed });
  }
}

/** `−3 to 3 by 0.5`, or the codes that the sheet knows; `none` where it knows none. */
function allowedText(allowed: Allowed | undefined, speech: Speech): string {
  if (allowed?.kind === 'codes' && allowed.codes.length > 0) return series(allowed.codes, speech);
  if (allowed?.kind !== 'range') return speech.say('allowed-none');
  const [low, high] = [decimal(allowed.low, speech), decimal(allowed.high, speech)];
  if (allowed.step === undefined) return speech.say('allowed-span', { low, high });
  return speech.say('allowed-range', { low, high, step: decimal(allowed.step, speech) });
}

/** The last name of a JSON pointer (RFC 6901). */
const lastOf = (at: string): string => at.replace(/^.*\//, '').replaceAll('~1', '/').replaceAll('~0', '~');

/** A part that no sheet has is called as it was written. */
const partName = (at: string, speech: Speech): string => speech.find(`part-${lastOf(at)}`) ?? lastOf(at);

/** The same for a fault of a card, with the entry in front: `214, maneuver 2: no mark yet; ...`. */
export function cardFaultSentence(fault: CardFault, teller: FaultTeller): string {
  const { code, entry: id } = fault;
  const { speech, names } = teller;
  const entry = id === undefined ? '' : names.entry(id);
  if (isCardFaultCode(code)) return cardFaultClause({ ...fault, code }, entry, teller);
  const told = goFaultSentence({ ...fault, code }, teller);
  return entry === '' ? told : speech.say('fault-of-entry', { entry, fault: told });
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
  { code, written = '', allowed }: CardFault & { readonly code: CardFaultCode },
  entry: string,
  { speech, names }: FaultTeller,
): string {
  switch (code) {
    case 'entry_missing':
    case 'entry_not_going':
    case 'entry_unknown':
    case 'ranked_twice':
    case 'ranked_but_ruled_out':
      return speech.say(`card-fault-${code}`, { entry });
    case 'ranking_too_short':
    case 'ranking_too_long':
      return speech.say(`card-fault-${code}`, {
        written,
        first: allowed?.kind === 'places' ? allowed.first : 0,
      });
    case 'own_order_not_a_tie': {
      const named = (entries: readonly string[]) => series(entries.map(names.entry), speech);
      const ordered = named(written.split(', ').filter(Boolean));
      const tie = allowed?.kind === 'tie' ? allowed.entries : [];
      return tie.length === 0
        ? speech.say('card-fault-own_order_no_tie', { written: ordered })
        : speech.say('card-fault-own_order_not_a_tie', { written: ordered, tie: named(tie) });
    }
  }
}

/** A tie that a card may not be signed with. */
export const openTieOnCard = (entries: readonly string[], { speech, names }: FaultTeller): string =>
  speech.say('card-fault-open_tie', { entries: series(entries.map(names.entry), speech) });
